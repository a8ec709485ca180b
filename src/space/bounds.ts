import type { Mm } from '../measure/units.ts';
import type { Vector } from './vector.ts';

/** A box in space, along its axes: a quick look tells what is nowhere near it. */
export interface Bounds {
  readonly low: Vector;
  readonly high: Vector;
}

/** The bounds of a straight piece between two places, and `by` mm more on every side. */
export function boundsRound(a: Vector, b: Vector, by: Mm): Bounds {
  const { min, max } = Math;
  return {
    low: [min(a[0], b[0]) - by, min(a[1], b[1]) - by, min(a[2], b[2]) - by],
    high: [max(a[0], b[0]) + by, max(a[1], b[1]) + by, max(a[2], b[2]) + by],
  };
}

/** Whether both bounds have a place in common, edges included. */
export function boundsMeet(a: Bounds, b: Bounds): boolean {
  const along = (i: 0 | 1 | 2): boolean => a.low[i] <= b.high[i] && b.low[i] <= a.high[i];
  return along(0) && along(1) && along(2);
}

/** Whether a place is within bounds, edges included. */
export function isInBounds({ low, high }: Bounds, place: Vector): boolean {
  const along = (i: 0 | 1 | 2): boolean => place[i] >= low[i] && place[i] <= high[i];
  return along(0) && along(1) && along(2);
}

/** Every two of these that meet, by their places, the one that begins first along x before the other. */
export function* meetingPairs(all: readonly Bounds[]): Generator<readonly [number, number]> {
  const byStart = all.map((bounds, i) => ({ bounds, i })).sort((a, b) => a.bounds.low[0] - b.bounds.low[0]);
  for (const [place, { bounds, i }] of byStart.entries()) {
    for (let next = place + 1; next < byStart.length; next++) {
      const other = byStart[next];
      if (!other || other.bounds.low[0] > bounds.high[0]) break;
      if (boundsMeet(bounds, other.bounds)) yield [i, other.i];
    }
  }
}
