import type { Mm } from '../measure/units.ts';
import type { BoxSize } from './box.ts';
import { exactCosine } from './round.ts';

/** A point of a header's cross-section: off its axis towards the body, and beside it, along w. */
export type OffAxis = readonly [off: Mm, beside: Mm];

/** A straight header's cross-section as a closed ring of points, for pictures. */
export type Ring = readonly OffAxis[];

export function circleRing(radius: Mm): Ring {
  return arcOf([0, 0], radius, 0, 2 * Math.PI, ROUND);
}

const ROUND = 48;

export function rectangleRing(size: BoxSize): Ring {
  const ring = coresOf(size).flatMap((core, i) => {
    const from = size.roll + (i * Math.PI) / 2;
    return arcOf(core, size.corner, from, from + Math.PI / 2, CORNER);
  });
  return [...ring, ...ring.slice(0, 1)];
}

const CORNER = 6;

/** A corner of a rectangle as it is walked from the body's side towards w: where it begins, its middle, where it ends. */
export interface RingCorner {
  readonly from: OffAxis;
  readonly middle: OffAxis;
  readonly to: OffAxis;
}

export function cornersOf(size: BoxSize): readonly RingCorner[] {
  return coresOf(size).map(([off, beside], i) => {
    const at = (quarters: number): OffAxis => {
      const turn = size.roll + ((i + quarters) * Math.PI) / 2;
      return [off + size.corner * Math.cos(turn), beside + size.corner * Math.sin(turn)];
    };
    return { from: at(0), middle: at(0.5), to: at(1) };
  });
}

/** Where the corners have their centres, beginning between the body's side and the w side. */
function coresOf({ wide, deep, corner, roll }: BoxSize): readonly OffAxis[] {
  const [out, side] = [deep / 2 - corner, wide / 2 - corner];
  const [sin, cos] = [Math.sin(roll), exactCosine(roll)];
  const cores: readonly OffAxis[] = [
    [out, side],
    [-out, side],
    [-out, -side],
    [out, -side],
  ];
  return cores.map(([a, b]) => [a * cos - b * sin, a * sin + b * cos]);
}

function arcOf([off, side]: OffAxis, radius: Mm, from: number, to: number, steps: number): OffAxis[] {
  return Array.from({ length: steps + 1 }, (_, i) => {
    const t = from + ((to - from) * i) / steps;
    return [off + radius * Math.cos(t), side + radius * Math.sin(t)];
  });
}
