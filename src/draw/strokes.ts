import type { Box, Fill, Path, Point, Purpose, Stroke } from './drawing.ts';
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

/** A box's outline as a frame. */
export function framed(box: Box): Stroke {
  const [first, ...others] = cornersOf(box);
  return outline('frame', first, ...others);
}

/** A box filled as part of a frame. */
export function filled(box: Box): Fill {
  const [first, ...others] = cornersOf(box);
  return solid('frame', first, ...others);
}

function cornersOf({ left, right, bottom, top }: Box): readonly [Point, Point, Point, Point] {
  return [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ];
}

function through(start: Point, others: readonly Point[], closed: boolean): Path {
  return { start, pieces: others.map((to) => ({ kind: 'line' as const, to })), closed };
}
