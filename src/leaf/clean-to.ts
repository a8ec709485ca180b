import type { Mm } from '../measure/units.ts';
import type { Box, Point } from './drawing.ts';
import { point } from './path.ts';

/** How far outside a footprint paint, zinc and scale are taken off before welding, mm. */
export const CLEAN: Mm = 25;

/** The same in words: a round figure in either unit, for nobody measures it. */
export const CLEAN_IN_WORDS = '25 mm (1 in)';

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
export function middleOf(points: readonly Point[]): Point {
  if (points.length === 0) return point(0, 0);
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  return point((Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2);
}

/** The parts of a line through points that lie inside a box. */
export function partsWithin(line: readonly Point[], bounds: Box): [Point, ...Point[]][] {
  const parts: [Point, ...Point[]][] = [];
  let open: [Point, ...Point[]] | undefined;
  for (const at of line) {
    if (!isWithin(at, bounds)) {
      open = undefined;
    } else if (open) {
      open.push(at);
    } else {
      open = [at];
      parts.push(open);
    }
  }
  return parts.filter((part) => part.length > 1);
}

/** Whether a point is in a box. */
export function isWithin({ x, y }: Point, { left, right, bottom, top }: Box): boolean {
  return x >= left && x <= right && y >= bottom && y <= top;
}
