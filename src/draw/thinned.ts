import type { Mm } from '../measure/units.ts';
import type { Point } from './drawing.ts';

/** The points of a line, in order. */
type Points = readonly [Point, ...Point[]];

/** A line without the points that it runs past no further off than `hair` mm (D. Douglas and T. Peucker, 1973; from memory). */
export function thinned(line: Points, hair: Mm): Points {
  const [first] = line;
  const kept: [Point, ...Point[]] = [first];
  keepBetween(line, 0, line.length - 1, hair, kept);
  return kept;
}

/** Keeps the point that lies furthest off the chord from `from` to `to`, where it lies too far off, and the last. */
function keepBetween(line: Points, from: number, to: number, hair: Mm, kept: Point[]): void {
  const [start, end] = [line[from], line[to]];
  if (to <= from || !start || !end) return;
  let furthest = 0;
  let most = hair;
  for (let at = from + 1; at < to; at++) {
    const off = offChord(start, end, line[at] ?? end);
    // Of two that lie off alike the first: sines differ in their last bits from one machine to the next.
    if (off > most + ALIKE) [furthest, most] = [at, off];
  }
  if (most > hair) {
    keepBetween(line, from, furthest, hair, kept);
    keepBetween(line, furthest, to, hair, kept);
  } else {
    kept.push(end);
  }
}

const ALIKE: Mm = 1e-6;

/** How far a point lies off a chord; off its start where it has no length. */
function offChord(start: Point, end: Point, { x, y }: Point): Mm {
  const [dx, dy] = [end.x - start.x, end.y - start.y];
  const [px, py] = [x - start.x, y - start.y];
  const long = Math.hypot(dx, dy);
  if (long === 0) return Math.hypot(px, py);
  return Math.abs(dx * py - dy * px) / long;
}
