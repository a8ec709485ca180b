import type { Mm } from '../measure/units.ts';
import type { Box, Fill, Path, Piece, Point, Purpose, Stroke } from './drawing.ts';

/** A straight piece between two points. */
export interface Segment {
  readonly from: Point;
  readonly to: Point;
}

/** A stroke through points, in straight pieces. */
export function strokeOf(purpose: Purpose, points: readonly [Point, ...Point[]], closed = false): Stroke {
  return { kind: 'stroke', purpose, path: polyline(points, closed) };
}

/** A solid shape through points. */
export function fillOf(purpose: Purpose, points: readonly [Point, ...Point[]]): Fill {
  return { kind: 'fill', purpose, path: polyline(points, true) };
}

function polyline([start, ...rest]: readonly [Point, ...Point[]], closed: boolean): Path {
  return { start, pieces: rest.map((to) => ({ kind: 'line', to })), closed };
}

export function point(x: Mm, y: Mm): Point {
  return { x, y };
}

/** A path as straight pieces no longer than about `grain` mm on its curves. */
export function segmentsOf(path: Path, grain: Mm): Segment[] {
  const segments: Segment[] = [];
  let from = path.start;
  for (const piece of path.pieces) {
    for (const to of pointsOf(from, piece, grain)) {
      segments.push({ from, to });
      from = to;
    }
  }
  if (path.closed) segments.push({ from, to: path.start });
  return segments;
}

function pointsOf(from: Point, piece: Piece, grain: Mm): Point[] {
  if (piece.kind === 'line') return [piece.to];
  const { c1, c2, to } = piece;
  const length = distance(from, c1) + distance(c1, c2) + distance(c2, to);
  const count = Math.min(64, Math.max(3, Math.ceil(length / grain)));
  return Array.from({ length: count }, (_, i) => {
    const t = (i + 1) / count;
    const u = 1 - t;
    const [a, b, c, d] = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t];
    return {
      x: a * from.x + b * c1.x + c * c2.x + d * to.x,
      y: a * from.y + b * c1.y + c * c2.y + d * to.y,
    };
  });
}

export function distance(a: Point, b: Point): Mm {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** The same box with `by` mm more on every side. */
export function grown(box: Box, by: Mm): Box {
  return { left: box.left - by, bottom: box.bottom - by, right: box.right + by, top: box.top + by };
}

export function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top;
}

/** Whether two boxes overlap or are less than `by` mm apart. */
export function areNear(a: Box, b: Box, by: Mm): boolean {
  return a.left - by < b.right && b.left < a.right + by && a.bottom - by < b.top && b.bottom < a.top + by;
}

export function within(inner: Box, outer: Box): boolean {
  return (
    inner.left >= outer.left &&
    inner.right <= outer.right &&
    inner.bottom >= outer.bottom &&
    inner.top <= outer.top
  );
}

/** Whether a point is in a box, or on its rim. */
export function isWithin({ x, y }: Point, { left, right, bottom, top }: Box): boolean {
  return x >= left && x <= right && y >= bottom && y <= top;
}

/** The smallest box round both. */
export function joined(a: Box, b: Box): Box {
  return {
    left: Math.min(a.left, b.left),
    bottom: Math.min(a.bottom, b.bottom),
    right: Math.max(a.right, b.right),
    top: Math.max(a.top, b.top),
  };
}

/** Whether a straight piece has a point inside a box (Liang and Barsky's clipping). */
export function meetsBox({ from, to }: Segment, box: Box): boolean {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  // The parts of the piece, from 0 to 1, that lie between the box's left and right and between its foot and top.
  const acrossIn = dx === 0 ? Number.NEGATIVE_INFINITY : ((dx > 0 ? box.left : box.right) - from.x) / dx;
  const acrossOut = dx === 0 ? Number.POSITIVE_INFINITY : ((dx > 0 ? box.right : box.left) - from.x) / dx;
  const upIn = dy === 0 ? Number.NEGATIVE_INFINITY : ((dy > 0 ? box.bottom : box.top) - from.y) / dy;
  const upOut = dy === 0 ? Number.POSITIVE_INFINITY : ((dy > 0 ? box.top : box.bottom) - from.y) / dy;
  if (dx === 0 && (from.x < box.left || from.x > box.right)) return false;
  if (dy === 0 && (from.y < box.bottom || from.y > box.top)) return false;
  return Math.max(0, acrossIn, upIn) <= Math.min(1, acrossOut, upOut);
}

/** Whether two straight pieces cross. */
export function cross(a: Segment, b: Segment): boolean {
  return side(a, b.from) * side(a, b.to) <= 0 && side(b, a.from) * side(b, a.to) <= 0 && overlapLoosely(a, b);
}

function side({ from, to }: Segment, p: Point): number {
  return (to.x - from.x) * (p.y - from.y) - (to.y - from.y) * (p.x - from.x);
}

function overlapLoosely(a: Segment, b: Segment): boolean {
  return overlap(grown(boxOf(a), 1e-9), grown(boxOf(b), 1e-9));
}

/** The box that points span; flat or empty where they are in line or none. */
export function boundsOf(points: readonly Point[]): Box {
  let [left, right] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  let [bottom, top] = [left, right];
  for (const { x, y } of points) {
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < bottom) bottom = y;
    if (y > top) top = y;
  }
  return { left, bottom, right, top };
}

/** The box that a straight piece spans; flat where it is upright or level. */
export function boxOf({ from, to }: Segment): Box {
  return {
    left: Math.min(from.x, to.x),
    bottom: Math.min(from.y, to.y),
    right: Math.max(from.x, to.x),
    top: Math.max(from.y, to.y),
  };
}
