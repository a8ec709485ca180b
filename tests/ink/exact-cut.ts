import type { Point } from '../../src/draw/drawing.ts';
import { baseEdgeOf } from '../../src/leaf/wrap/base-edge.ts';
import { type Case, PAPER } from '../leaf/random-tubes.ts';
import { spineOf } from '../print/laid-wraps.ts';

/** A brace of the kayak trailer, cut at both ends: oblique, the second end offset and turned. Its name is not all Latin. */
export const BRACE = {
  name: 'поперечина Ø 1 %%c ° 漢',
  od: 31.75,
  wall: 2.4,
  between: 619,
  A: { header: 38.1, angle: 62 },
  B: { header: 38.1, angle: 48, offset: 3, clock: 35 },
};

/** Where a file shows an end's seam edges and base edge, mm, y running up. */
export interface Edges {
  readonly left: number;
  readonly right: number;
  readonly baseEdge: number;
}

/**
 * Points of the exact line that an end is cut to: the solved line itself, no drawing of it, laid by the edges that a file shows.
 * The base edge's setback and the spine's place between the edges are the leaf's; the bent paper is pi (D + paper) round.
 */
export function exactCut({ cope, end, ask, leaf, solution }: Case, { left, baseEdge }: Edges): Point[] {
  const width = Math.PI * (ask.od + PAPER);
  const seam = (-spineOf(leaf.wrap) / width) * 2 * Math.PI;
  const base = baseEdgeOf(solution, end).setback;
  return Array.from({ length: STEPS + 1 }, (_, i) => ({
    x: left + (width * i) / STEPS,
    y: baseEdge + (end === 'A' ? 1 : -1) * (cope.cut(seam + (2 * Math.PI * i) / STEPS).setback - base),
  }));
}

const STEPS = 720;

/** The furthest that any of some points lies from a line through others, square to its straight pieces. */
export function worstStray(points: readonly Point[], line: readonly Point[]): number {
  return Math.max(
    ...points.map((point) => Math.min(...line.slice(1).map((to, i) => away(point, line[i] ?? to, to)))),
  );
}

function away(p: Point, from: Point, to: Point): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const square = dx * dx + dy * dy;
  const t = square === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - from.x) * dx + (p.y - from.y) * dy) / square));
  return Math.hypot(p.x - from.x - t * dx, p.y - from.y - t * dy);
}
