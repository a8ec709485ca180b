import type { Mm } from '../measure/units.ts';
import type { Mark, Point } from './drawing.ts';
import { type Block, extentOf, lettered, type Turn } from './lettering.ts';
import { point, type Segment } from './path.ts';
import type { Candidate } from './placer.ts';

/** What is to be placed, words or a sign: the room that it takes, and its marks with its lower left corner at (left, bottom). */
export interface Label {
  readonly width: Mm;
  readonly height: Mm;
  readonly draw: (left: Mm, bottom: Mm) => readonly Mark[];
}

/** A block of words as it runs. */
export function labelOf(block: Block, turn: Turn = 0): Label {
  const { width, height } = extentOf(block);
  const draw: Label['draw'] = (left, bottom) => lettered(block, left, bottom, turn);
  return turn === 0 ? { width, height, draw } : { width: height, height: width, draw };
}

/** A label with its lower left corner at (left, bottom). So many are tried that each is made at once, all of one shape. */
export function standingAt(
  { width, height, draw }: Label,
  left: Mm,
  bottom: Mm,
  overGuides = false,
  leader?: Segment,
): Candidate {
  return { box: { left, bottom, right: left + width, top: bottom + height }, leader, overGuides, draw };
}

/** Places for one of several things, all of the first before those of the next. */
export function* inTurn<Thing>(
  things: Iterable<Thing>,
  placesOf: (thing: Thing) => Iterable<Candidate>,
): Iterable<Candidate> {
  for (const thing of things) yield* placesOf(thing);
}

/** One way of trying a label: how it runs, how far off its line it stands in turn, and whether over guide lines. */
export interface Standing {
  readonly turn: 0 | 1;
  readonly lifts: readonly Mm[];
  readonly overGuides?: boolean;
}

/** Level before upright, between guide lines before over them. */
export function waysAt(lifts: readonly Mm[], over: readonly boolean[] = [false, true]): Standing[] {
  return over.flatMap((overGuides) => ([0, 1] as const).map((turn) => ({ turn, lifts, overGuides })));
}

/** Distances from `first` on in steps, all of them less than `end`, mm. */
export function liftSteps(first: Mm, end: Mm, step: Mm): Mm[] {
  const distances: Mm[] = [];
  for (let distance = first; distance < end; distance += step) distances.push(distance);
  return distances;
}

/** A level line that labels stand over, 1, or under, -1. */
export interface Level {
  readonly y: Mm;
  readonly up: 1 | -1;
}

/** A label, and where its left may lie, the better first. */
export interface Tried {
  readonly label: Label;
  readonly lefts: readonly Mm[];
}

/**
 * Places off a level line for a label that may run in more ways than one: one way after the other, in each at growing lifts. With `foot`
 * a line leads from there to the label's far side.
 */
export function* offLevel(
  { y, up }: Level,
  ways: readonly Standing[],
  turned: (turn: 0 | 1) => Tried,
  foot?: Point,
): Iterable<Candidate> {
  for (const { turn, lifts, overGuides = false } of ways) {
    const { label, lefts } = turned(turn);
    for (const lift of lifts) {
      const bottom = up === 1 ? y + lift : y - lift - label.height;
      const leader = foot && { from: foot, to: point(foot.x, y + up * (lift + label.height)) };
      for (const left of lefts) yield standingAt(label, left, bottom, overGuides, leader);
    }
  }
}

export type Side = 'left' | 'right';

/** Between words and the upright line that they stand beside. */
export const BESIDE: Mm = 0.8;

/** Words beside an upright line: on these sides of it, at each of these distances. */
export function wordsBeside(
  block: Block,
  x: Mm,
  sides: readonly Side[] = ['right', 'left'],
  distances: readonly Mm[] = [BESIDE],
): (turn: 0 | 1) => Tried {
  return (turn) => {
    const label = labelOf(block, turn);
    const left = (side: Side, away: Mm): Mm => (side === 'right' ? x + away : x - away - label.width);
    return { label, lefts: distances.flatMap((away) => sides.map((side) => left(side, away))) };
  };
}
