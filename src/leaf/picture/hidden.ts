import { boundsOf, isWithin, overlapping } from '../../draw/boxes.ts';
import type { Point } from '../../draw/drawing.ts';
import { partsWhere } from '../../draw/parts.ts';
import { onWay } from '../../draw/path.ts';
import type { PictureLine } from './picture.ts';

const STEPS = 24;

/** The parts of a line that lie outside a closed shape, which hides the rest. */
export function visibleParts(line: PictureLine, shape: readonly Point[]): PictureLine[] {
  const bounds = boundsOf(shape);
  if (!overlapping(boundsOf(line), bounds)) return [line];
  // Most points of a header lie beside the tube altogether, and need no closer look.
  return partsWhere(fine(line), (at) => !(isWithin(at, bounds) && pointInPolygon(at, shape)));
}

function fine(line: PictureLine): Point[] {
  const [first, ...rest] = line;
  return [
    first,
    ...rest.flatMap((to, i) => {
      const from = line[i] ?? first;
      const count = line.length > STEPS ? 1 : Math.ceil((4 * STEPS) / line.length);
      return Array.from({ length: count }, (_, k) => onWay(from, to, (k + 1) / count));
    }),
  ];
}

/** Nearer than this to the outline, mm, a point is on it: sines differ in their last bits from one machine to the next. */
const RIM = 1e-6;

/** Whether a ray to the right crosses the shape's outline an odd number of times. What lies on the outline shows. */
export function pointInPolygon({ x, y }: Point, shape: readonly Point[]): boolean {
  let inside = false;
  let last = shape.at(-1);
  for (const to of shape) {
    const from = last ?? to;
    last = to;
    if (from.y > y !== to.y > y) {
      const past = from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x) - x;
      if (Math.abs(past) < RIM) return false;
      if (past > 0) inside = !inside;
    } else if (Math.abs(from.y - y) < RIM && Math.abs(to.y - y) < RIM) {
      if (x > Math.min(from.x, to.x) - RIM && x < Math.max(from.x, to.x) + RIM) return false;
    }
  }
  return inside;
}
