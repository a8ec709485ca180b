import type { Fill, Path, Point, Purpose, Stroke } from './drawing.ts';
import type { Segment } from './path.ts';

/** A line through points, in straight pieces. */
export function line(purpose: Purpose, first: Point, ...others: Point[]): Stroke {
  return { kind: 'stroke', purpose, path: through(first, others, false) };
}

/** Each straight piece as a line of its own. */
export function linesAlong(purpose: Purpose, segments: readonly Segment[]): Stroke[] {
  return segments.map(({ from, to }) => line(purpose, from, to));
}

/** An outline through corners, back to the first. */
export function outline(purpose: Purpose, first: Point, ...others: Point[]): Stroke {
  return { kind: 'stroke', purpose, path: through(first, others, true) };
}

/** A solid shape with corners. */
export function solid(purpose: Purpose, first: Point, ...others: Point[]): Fill {
  return { kind: 'fill', purpose, path: through(first, others, true) };
}

function through(start: Point, others: readonly Point[], closed: boolean): Path {
  return { start, pieces: others.map((to) => ({ kind: 'line' as const, to })), closed };
}
