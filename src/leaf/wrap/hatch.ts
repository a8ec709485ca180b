import type { Point, Stroke } from '../../draw/drawing.ts';
import { distance, point, type Segment } from '../../draw/path.ts';
import { type Field, isOpen } from '../../draw/placer.ts';
import { line } from '../../draw/strokes.ts';
import type { Mm } from '../../measure/units.ts';
import type { Flat } from './flat.ts';

/** How far the band of strokes reaches from the cut line into the waste. */
export const BAND: Mm = 5.5;

const EVERY: Mm = 2.4;

/** One long and two short, over and over. */
const LENGTHS: readonly Mm[] = [4, 2, 2];

/** How far from the cut a stroke starts and how long it may be: what is tried in turn beside the dashed line. */
const SHORTER: readonly (readonly [start: Mm, most: Mm])[] = [
  [1.1, 4],
  [1.1, 2],
  [1.1, 1.2],
  [2.2, 2],
  [3.5, 2],
];

/** How far strokes lean from square to the line. */
const LEAN = Math.PI / 6;

/** Short open strokes along the waste side of the cut, left out or cut short where words stand, at the dashed line, and where the cut comes back on itself. */
export function hatch(flat: Flat, cut: readonly Segment[], field: Field): Stroke[] {
  const strokes: Stroke[] = [];
  let walked = 0;
  let next = EVERY;
  let count = 0;
  for (const segment of cut) {
    const length = distance(segment.from, segment.to);
    for (; next <= walked + length; next += EVERY) {
      const t = (next - walked) / length;
      const long = LENGTHS[count++ % LENGTHS.length] ?? 2;
      for (const [start, most] of SHORTER) {
        const stroke = strokeAt(flat, segment, t, start, Math.min(long, most));
        if (!fits(flat, stroke, field)) continue;
        strokes.push(line('waste', stroke.from, stroke.to));
        break;
      }
    }
    walked += length;
  }
  return strokes;
}

function strokeAt(flat: Flat, { from, to }: Segment, t: number, away: Mm, length: Mm): Segment {
  const size = distance(from, to);
  const nx = (flat.bodyWay * (to.y - from.y)) / size;
  const ny = (-flat.bodyWay * (to.x - from.x)) / size;
  const start = point(from.x + t * (to.x - from.x) + away * nx, from.y + t * (to.y - from.y) + away * ny);
  const [c, s] = [Math.cos(LEAN), Math.sin(LEAN)];
  return {
    from: start,
    to: point(start.x + length * (c * nx - s * ny), start.y + length * (s * nx + c * ny)),
  };
}

function fits(flat: Flat, stroke: Segment, field: Field): boolean {
  return isInside(flat, stroke.from, field) && isInside(flat, stroke.to, field) && isOpen(field, stroke);
}

function isInside(flat: Flat, { x, y }: Point, { bounds }: Field): boolean {
  return x > 0.3 && x < flat.width - 0.3 && y > bounds.bottom && y < bounds.top;
}
