import type { Mm } from '../measure/units.ts';
import { boundsOf, grown, overlapping } from './boxes.ts';
import type { Box, Path, PathPiece, Point } from './drawing.ts';

/** A straight piece between two points. */
export interface Segment {
  readonly from: Point;
  readonly to: Point;
}

/** The point at (x, y). */
export function point(x: Mm, y: Mm): Point {
  return { x, y };
}

/** The point so much of the way from one to another: 0 at the first, 1 at the second. */
export function onWay(from: Point, to: Point, part: number): Point {
  return point(from.x + part * (to.x - from.x), from.y + part * (to.y - from.y));
}

/** The straight pieces between points, in order. */
export function legsOf(points: readonly Point[]): Segment[] {
  return points.slice(1).map((to, i) => ({ from: points[i] ?? to, to }));
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

function pointsOf(from: Point, piece: PathPiece, grain: Mm): Point[] {
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
  return overlapping(grown(boxOf(a), 1e-9), grown(boxOf(b), 1e-9));
}

/** The box that a straight piece spans; flat where it is upright or level. */
export function boxOf({ from, to }: Segment): Box {
  return boundsOf([from, to]);
}
