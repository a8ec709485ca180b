import type { Fill, Path, Point, Purpose, Stroke } from './drawing.ts';

/** A straight line. */
export function line(purpose: Purpose, start: Point, to: Point): Stroke {
  return { kind: 'stroke', purpose, path: { start, pieces: [{ kind: 'line', to }], closed: false } };
}

/** An outline through corners, back to the first. */
export function outline(purpose: Purpose, first: Point, ...others: Point[]): Stroke {
  return { kind: 'stroke', purpose, path: around(first, others) };
}

/** A solid shape with corners. */
export function solid(purpose: Purpose, first: Point, ...others: Point[]): Fill {
  return { kind: 'fill', purpose, path: around(first, others) };
}

function around(start: Point, others: readonly Point[]): Path {
  return { start, pieces: others.map((to) => ({ kind: 'line' as const, to })), closed: true };
}
