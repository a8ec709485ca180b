import { labelOf, liftSteps, offLevel } from '../../draw/candidates.ts';
import type { Mark } from '../../draw/drawing.ts';
import { extentOf, SMALL } from '../../draw/lettering.ts';
import { point, type Segment } from '../../draw/path.ts';
import { addBarrier, type Candidate, isClear, isFree } from '../../draw/placer.ts';
import { linesAlong } from '../../draw/strokes.ts';
import type { Said } from '../../measure/said.ts';
import { degrees, type Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import { dihedralAt } from '../../saddle/dihedral.ts';
import { wrapStation } from '../../saddle/peaks.ts';
import type { Language } from '../../words/language.ts';
import { type Body, inFromBase } from './body.ts';
import { xAt } from './flat.ts';
import { sideNames } from './sides.ts';

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

/** `heel 48–61°`. */
export function zoneWords({ name, angles }: Zone, { leaf }: Language): Said {
  if (!angles) return leaf.passesBeside(name);
  return leaf.zone(name, Math.round(angles.least), Math.round(angles.most));
}

/** A stretch of a zone on the leaf: the seam may cut one in two. */
interface Stretch {
  readonly left: Mm;
  readonly right: Mm;
  /** What may stand in it, the best first; none on the shorter half of a zone that the seam cuts. */
  readonly words: readonly Said[];
}

/**
 * A bar round the leaf, as near the base edge as is free, that names the zones and says their weld angles; undefined
 * where there is no room for all of it. One stretch at least says what its angles are: bare, they read as stations.
 */
export function zoneBar(body: Body, zones: readonly Zone[]): readonly Mark[] | undefined {
  if (body.flat.section.girth < BAR_GIRTH) return undefined;
  const { words } = body;
  const stretches = zones.flatMap((zone) => stretchesOf(body, zone));
  const high = extentOf({ lines: [words.leaf.weld], size: SMALL }).height;
  const { y, up } = inFromBase(body);
  for (const lift of liftSteps(1, DEEPEST, 1.2)) {
    const middle = y + up * (lift + high / 2);
    const bar = stretches.flatMap((stretch) => barAt(body, stretch, middle) ?? []);
    const told = bar.some(({ telling }) => telling);
    if (told && bar.length === stretches.length) return drawnBar(body, bar);
  }
  return undefined;
}

/** Further from the base edge it is in the way of what matters more. */
const DEEPEST: Mm = 12;

/** A leaf narrower than this has no room for the bar; the base edge leaves room for it from here on. */
export const BAR_GIRTH: Mm = 110;

function stretchesOf({ flat, words: language }: Body, zone: Zone): Stretch[] {
  const left = xAt(flat, wrapStation(zone.from, flat.turn));
  const right = xAt(flat, wrapStation(zone.to, flat.turn));
  const { leaf } = language;
  const bare = zoneWords(zone, language);
  const words = zone.angles
    ? [leaf.labelled(leaf.weldAngle, bare), leaf.labelled(leaf.weld, bare), bare]
    : [bare];
  if (left < right) return [{ left, right, words }];
  const longer = flat.width - left > right;
  return [
    { left, right: flat.width, words: longer ? words : [] },
    { left: 0, right, words: longer ? [] : words },
  ];
}

/** A stretch of the bar: its lines, and its words where it has any. */
interface Bar {
  readonly lines: readonly Segment[];
  readonly words?: Candidate;
  /** Whether the words say that these are weld angles. */
  readonly telling?: boolean;
}

/** One stretch at this height; undefined where something is in its way. */
function barAt(body: Body, { left, right, words }: Stretch, y: Mm): Bar | undefined {
  const { field, flat } = body;
  const [from, to] = [Math.max(left, OFF_SEAM), Math.min(right, flat.width - OFF_SEAM)];
  if (!isClear(field, { left: from + AT_ENDS, right: to - AT_ENDS, bottom: y - TICK, top: y + TICK }))
    return undefined;
  const ticks = [left, right]
    .filter((x) => x > OFF_SEAM && x < flat.width - OFF_SEAM)
    .map((x) => ({ from: point(x, y - TICK), to: point(x, y + TICK) }));
  if (words.length === 0) return { lines: [...ticks, { from: point(from, y), to: point(to, y) }] };
  for (const text of words) {
    const bar = interrupted(body, text, from, to, y);
    if (bar) return { ...bar, lines: [...ticks, ...bar.lines], telling: text !== words.at(-1) };
  }
  return undefined;
}

/** A level line with words in it, as near its middle as they are free; undefined where they are nowhere. */
function interrupted({ field }: Body, text: Said, from: Mm, to: Mm, y: Mm): Bar | undefined {
  const label = labelOf({ fact: 'weld-angle', lines: [text], size: SMALL });
  const middle = (from + to - label.width) / 2;
  const room = (to - from - label.width) / 2 - ROUND;
  const lefts = liftSteps(0, room, 0.5).flatMap((aside) => [middle + aside, middle - aside]);
  const onLine = [{ turn: 0, lifts: [-label.height / 2], overGuides: true }] as const;
  for (const words of offLevel({ y, up: 1 }, onLine, () => ({ label, lefts }))) {
    const { left, right } = words.box;
    if (!isFree(field, words.box, true)) continue;
    const before = { from: point(from, y), to: point(left - ROUND, y) };
    const after = { from: point(right + ROUND, y), to: point(to, y) };
    return { lines: [before, after], words };
  }
  return undefined;
}

/** At its ends a stretch may touch what ends there too. */
const AT_ENDS: Mm = 0.2;

/** The bar ends this far from the seam's edges. */
const OFF_SEAM: Mm = 1;

/** Half of how high an end of a stretch is. */
const TICK: Mm = 1;

/** Between words and the line on both sides of them. */
const ROUND: Mm = 1;

function drawnBar({ field }: Body, bar: readonly Bar[]): Mark[] {
  return bar.flatMap(({ lines, words }) => {
    addBarrier(field, lines, 0.6);
    if (words) field.taken.push(words.box);
    const marks = words ? words.draw(words.box.left, words.box.bottom) : [];
    return [...linesAlong('guide', lines), ...marks];
  });
}
