import type { Said } from '../../measure/said.ts';
import { degrees } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import { dihedralAt } from '../../saddle/dihedral.ts';
import type { Language } from '../../words/language.ts';
import { sideNames } from '../wrap/sides.ts';
import { type Fact, factOf } from './fact.ts';

/**
 * A quarter of the way round a joint: about the heel, about the toe, or one of the sides between, as AWS D1.1 uses the
 * words, and what angles the tube's and the header's surface make across the weld there.
 */
export interface Zone {
  readonly name: Said;
  readonly from: number;
  /** Beyond `from`, less than a turn. */
  readonly to: number;
  /** In degrees; undefined where the tube passes beside the header all along. */
  readonly angles?: { readonly least: number; readonly most: number };
}

const LOOKS = 45;

/** The four zones in order round the tube; a union has none, for it has no heel. */
export function zonesOf(cope: Cope, words: Language): readonly Zone[] {
  const { heel, joint, end } = cope;
  if (heel === undefined) return [];
  const { section } = joint;
  const names = sideNames(end.parts[0], words);
  return [names.heel, words.leaf.side, names.toe, words.leaf.side].map((name, i) => {
    const at = (turned: number): number => section.towards(heel + (i + turned) * (Math.PI / 2));
    const [from, to] = [at(-0.5), at(0.5)];
    const angles = Array.from({ length: LOOKS + 1 }, (_, k) => from + ((to - from) * k) / LOOKS)
      .filter((station) => cope.touching(station).contact)
      .map((station) => degrees(dihedralAt(joint, station)));
    if (angles.length === 0) return { name, from, to };
    return { name, from, to, angles: { least: Math.min(...angles), most: Math.max(...angles) } };
  });
}

/** The angles across the weld, zone by zone: `heel 48–61°`; nothing of a union. */
export function weldFacts(cope: Cope, words: Language): Fact[] {
  const { leaf, card } = words;
  const zones = zonesOf(cope, words).map(({ name, angles }) =>
    angles ? leaf.zone(name, Math.round(angles.least), Math.round(angles.most)) : leaf.passesBeside(name),
  );
  if (zones.length === 0) return [];
  return [factOf('weld-angle', card.labels.weld, leaf.zones([...new Set(zones)]))];
}
