import type { Mm } from '../measure/units.ts';
import type { Point } from './drawing.ts';
import { distance } from './path.ts';

/** The points of a line, in order. */
type Points = readonly [Point, ...Point[]];

/**
 * A line without the points that it runs past no further off than `tolerance` mm (D. Douglas and T. Peucker, 1973; from memory). By hand,
 * not from the registry: of two points that lie off alike a library keeps the one that is further off in the last bit, and sines differ
 * in that from one machine to the next.
 */
export function simplified(line: Points, tolerance: Mm): Points {
  const [first] = line;
  const kept: [Point, ...Point[]] = [first];
  keepBetween(line, 0, line.length - 1, tolerance, kept);
  return kept;
}

/** Keeps the point that lies furthest off the chord from `from` to `to`, where it lies too far off, and the last. */
function keepBetween(line: Points, from: number, to: number, tolerance: Mm, kept: Point[]): void {
  const [start, end] = [line[from], line[to]];
  if (to <= from || !start || !end) return;
  const offChord = fromChord(start, end);
  let furthest = 0;
  let most = tolerance;
  for (let at = from + 1; at < to; at++) {
    const off = offChord(line[at] ?? end);
    if (off > most + ALIKE) [furthest, most] = [at, off];
  }
  if (most > tolerance) {
    keepBetween(line, from, furthest, tolerance, kept);
    keepBetween(line, furthest, to, tolerance, kept);
  } else {
    kept.push(end);
  }
}

/** Of two points that lie off no more unlike than this, mm, the first is kept. */
const ALIKE: Mm = 1e-6;

/** How far a point lies off a chord; off its start where it has no length. */
function fromChord(start: Point, end: Point): (at: Point) => Mm {
  const [dx, dy] = [end.x - start.x, end.y - start.y];
  const long = Math.hypot(dx, dy);
  if (long === 0) return (at) => distance(start, at);
  return ({ x, y }) => Math.abs(dx * (y - start.y) - dy * (x - start.x)) / long;
}
