import { boundsOf } from '../../draw/boxes.ts';
import type { Point } from '../../draw/drawing.ts';
import { point } from '../../draw/path.ts';
import type { Mm } from '../../measure/units.ts';

/** How far outside a footprint paint, zinc and scale are taken off before welding, mm: common practice, no source. */
export const CLEAN: Mm = 25;

const RAYS = 180;

/**
 * The line so far outside an outline: seen from its middle, the furthest that any circle of that radius about a point of the
 * outline reaches.
 */
export function cleanTo(outline: readonly Point[]): Point[] {
  const middle = middleOf(outline);
  return Array.from({ length: RAYS + 1 }, (_, i) => {
    const turn = (2 * Math.PI * i) / RAYS;
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    const reaches = outline.map(({ x, y }) => {
      const [dx, dy] = [x - middle.x, y - middle.y];
      const across = dy * c - dx * s;
      return Math.abs(across) > CLEAN ? 0 : dx * c + dy * s + Math.sqrt(CLEAN ** 2 - across ** 2);
    });
    const reach = Math.max(...reaches);
    return point(middle.x + reach * c, middle.y + reach * s);
  });
}

/** The middle of the box round some points; the origin where there are none. */
function middleOf(points: readonly Point[]): Point {
  if (points.length === 0) return point(0, 0);
  const { left, right, bottom, top } = boundsOf(points);
  return point((left + right) / 2, (bottom + top) / 2);
}
