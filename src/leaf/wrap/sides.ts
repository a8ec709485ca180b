import type { Part } from '../../job/job.ts';
import type { Said } from '../../measure/said.ts';
import type { Cope } from '../../saddle/cope.ts';
import { towardsClock } from '../../space/landing.ts';
import { wrapStation } from '../../space/section.ts';
import type { Language } from '../../words/language.ts';

/** The two sides of a joint that have a name, as stations: the acute one and the obtuse one. */
export interface Sides {
  readonly heel: number;
  readonly toe: number;
}

/** Where heel and toe are; undefined for a union, which has none. */
export function sidesOf({ heel, joint: { section } }: Pick<Cope, 'heel' | 'joint'>): Sides | undefined {
  if (heel === undefined) return undefined;
  const at = (turned: number): number => wrapStation(section.towards(heel + turned), section.turn);
  return { heel: at(0), toe: at(Math.PI) };
}

/** A side of a tube on which a header lies: 1 for its clock's, -1 for the other. */
export type HeaderSide = 1 | -1;

/**
 * On which side of the tube one of an end's headers is told and drawn, so that its stretch of the cut is found by it: where it stands that
 * ends at the joint, and where the cut meets it that goes on. Undefined of a header alone, and of one that is met on both sides alike.
 */
export function sideOfPart(cope: Cope, part: number): HeaderSide | undefined {
  const { parts } = cope.end;
  return parts.length > 1 ? (parts[part]?.stops?.ahead ?? sideMet(cope, part)) : undefined;
}

const LOOKS = 90;

/** The middle of a stretch that lies nearer to the tube's axis than this part of its reach is on neither side. */
const EVEN = 0.2;

function sideMet({ joint: { section, landings }, touching }: Cope, part: number): HeaderSide | undefined {
  const landing = landings[part];
  const stations = Array.from({ length: LOOKS }, (_, i) => ((i + 0.5) * section.turn) / LOOKS);
  const heights = stations.flatMap((station) => {
    const met = touching(station);
    if (!landing || !met.contact || met.part !== part) return [];
    const { x, y } = section.at(station);
    return [towardsClock(landing, x, y)];
  });
  const middle = heights.reduce((sum, height) => sum + height, 0) / Math.max(1, heights.length);
  if (Math.abs(middle) < EVEN * section.reach) return undefined;
  return middle > 0 ? 1 : -1;
}

/** What the side is called that lies at the clock. */
export function sideAtClock(part: Part, words: Language): Said {
  const { heel, toe } = sideNames(part, words);
  return part.angle.rad <= Math.PI / 2 ? heel : toe;
}

export interface SideNames {
  readonly heel: Said;
  readonly toe: Said;
}

/** What the acute and the obtuse side are called: at a mitre they are those of the corner. */
export function sideNames({ onto }: Part, { picture }: Language): SideNames {
  return onto.kind === 'mitre'
    ? { heel: picture.inside, toe: picture.outside }
    : { heel: picture.heel, toe: picture.toe };
}
