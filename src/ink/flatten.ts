import type { Path, Point } from '../draw/drawing.ts';
import type { Mm } from '../measure/units.ts';

/** Halving so often leaves a piece a 65536th as long: only a curve beyond any tube is not flat by then. */
const DEPTH = 16;

/**
 * The corners of straight pieces that stray from a path by no more than `stray` mm, its start among them. A curve lies within
 * the hull of its control points, so where these are that near to its chord it is too; where not, it is halved (de Casteljau).
 */
export function flattened({ start, pieces }: Path, stray: Mm): Point[] {
  const corners = [start];
  let from = start;
  for (const piece of pieces) {
    if (piece.kind === 'cubic') halve([from, piece.c1, piece.c2, piece.to], stray, DEPTH, corners);
    else corners.push(piece.to);
    from = piece.to;
  }
  return corners;
}

type Cubic = readonly [Point, Point, Point, Point];

function halve([a, b, c, d]: Cubic, stray: Mm, depth: number, corners: Point[]): void {
  if (depth === 0 || Math.max(offChord(b, a, d), offChord(c, a, d)) <= stray) {
    corners.push(d);
    return;
  }
  const [ab, bc, cd] = [middle(a, b), middle(b, c), middle(c, d)];
  const [abc, bcd] = [middle(ab, bc), middle(bc, cd)];
  const half = middle(abc, bcd);
  halve([a, ab, abc, half], stray, depth - 1, corners);
  halve([half, bcd, cd, d], stray, depth - 1, corners);
}

/** How far a point is from the straight piece between two others, its ends included. */
function offChord(p: Point, from: Point, to: Point): Mm {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const square = dx * dx + dy * dy;
  const along = square === 0 ? 0 : ((p.x - from.x) * dx + (p.y - from.y) * dy) / square;
  const t = Math.min(1, Math.max(0, along));
  return Math.hypot(p.x - from.x - t * dx, p.y - from.y - t * dy);
}

function middle(a: Point, b: Point): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}
