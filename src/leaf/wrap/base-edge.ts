import { type EndName, otherEnd } from '../../job/job.ts';
import { unitsOfTube } from '../../job/sections.ts';
import { MM_PER_INCH, type Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import { sawnAt } from '../../saddle/sawn.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
import { endPieceLength, wholeBend } from '../bend-pieces.ts';

/** Where a leaf's base edge is, and the one distance that it is laid by, along the spine. */
export interface BaseEdge {
  /** From the work point towards the body, mm. */
  readonly setback: Mm;
  /** To what it is measured to, mm: a whole number of millimetres, of sixteenths in a job in inches; below nought it lies back. */
  readonly distance: Mm;
  readonly to: 'work-point' | 'length-mark' | 'square-end' | 'other-base' | 'same-base' | 'first-cut';
}

/**
 * The base edge of one end's leaf: beyond the deepest point of both lines by the room that its words take, and on from there until
 * its distance is round. Where both ends have a leaf it is end B's edge that takes up the rest; where one leaf serves both ends of
 * a bend's pieces each takes half, and where it is longer than such a piece it stands past the inside of the first cut. Throws a RangeError where the end is not coped.
 */
export function baseEdgeOf(solution: TubeSolution, end: EndName): BaseEdge {
  const { tube, ends, lengths } = solution;
  const cope = ends[end];
  const across = otherEnd(end);
  const other = ends[across];
  if (cope?.kind !== 'coped') throw new RangeError(`End ${end} of ${tube.name} is not coped.`);
  const step = stepOf(solution);
  const least = leastOf(cope);
  const mark = cope.fitUp?.lengthSetback;
  if (mark !== undefined) return from(mark, least, step, 'length-mark');
  const bend = wholeBend(tube);
  if (bend && bend.segments.pieces > 2) {
    const half = endPieceLength(bend);
    const distance = down(2 * (half - least), step);
    const setback = half - distance / 2;
    const inside = 2 * half - cope.throat.setback;
    return setback < inside ? { setback, distance, to: 'same-base' } : from(inside, least, step, 'first-cut');
  }
  if (!lengths || !other || sawnAt(solution, end) !== undefined) return from(0, least, step, 'work-point');
  const { between } = lengths;
  const sawn = sawnAt(solution, across);
  if (sawn !== undefined || other.kind === 'plain') {
    const toSawn = between - (sawn ?? 0);
    const distance = down(toSawn - least, step);
    return { setback: toSawn - distance, distance, to: 'square-end' };
  }
  const [a, b] = end === 'A' ? [least, leastOf(other)] : [leastOf(other), least];
  const first = up(a, step);
  const distance = down(between - first - b, step);
  return { setback: end === 'A' ? first : between - first - distance, distance, to: 'other-base' };
}

function from(datum: Mm, least: Mm, step: Mm, to: BaseEdge['to']): BaseEdge {
  const distance = up(least - datum, step);
  return { setback: datum + distance, distance, to };
}

function stepOf({ tube }: TubeSolution): Mm {
  return unitsOfTube(tube) === 'mm' ? 1 : MM_PER_INCH / 16;
}

/** Twins differ in the last bits only, and round alike. */
const HAIR = 1e-6;

function up(mm: Mm, step: Mm): Mm {
  return Math.ceil(mm / step - HAIR) * step;
}

function down(mm: Mm, step: Mm): Mm {
  return Math.floor(mm / step + HAIR) * step;
}

/** The least setback of a base edge: more on a narrow leaf, where words stand above one another. */
function leastOf(cope: Cope): Mm {
  const { girth } = cope.joint.section;
  const [, room] = ROOM.find(([most]) => girth < most) ?? [0, WIDE];
  return deepestOf(cope) + room;
}

const STATIONS = 72;

/** How deep the cut or the dashed line goes; of the latter as far as every fifth degree shows, which the room covers. */
function deepestOf({ throat, other, joint }: Cope): Mm {
  let deepest = throat.setback;
  if (!other) return deepest;
  for (let i = 0; i < STATIONS; i++) {
    deepest = Math.max(deepest, other((i * joint.section.turn) / STATIONS).setback);
  }
  return deepest;
}

/** Under this girth, so much room. */
const ROOM: readonly (readonly [Mm, Mm])[] = [
  [45, 62],
  [60, 56],
  [85, 52],
  [110, 44],
  [180, 40],
];
const WIDE: Mm = 34;
