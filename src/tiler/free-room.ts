import { across, holds, overlapping, upright } from '../draw/boxes.ts';
import type { Box } from '../draw/drawing.ts';
import type { Mm } from '../measure/units.ts';

/**
 * The free room of a sheet is kept as the list of all largest free rectangles; they overlap one another ("maximal
 * rectangles", J. Jylänki, A Thousand Ways to Pack the Bin, 2010; from memory).
 */
export type FreeRoom = readonly Box[];

export interface Size {
  readonly width: Mm;
  readonly height: Mm;
}

/** What is left of the free room when `used` is taken from it. */
export function without(room: FreeRoom, used: Box): FreeRoom {
  const pieces = room.flatMap((free) => (overlapping(free, used) ? rest(free, used) : [free]));
  return pieces.filter(
    (piece, index) =>
      !pieces.some(
        (other, at) => at !== index && holds(other, piece) && (at < index || !holds(piece, other)),
      ),
  );
}

function rest(free: Box, used: Box): Box[] {
  const pieces: Box[] = [];
  if (used.left > free.left) pieces.push({ ...free, right: used.left });
  if (used.right < free.right) pieces.push({ ...free, left: used.right });
  if (used.bottom > free.bottom) pieces.push({ ...free, top: used.bottom });
  if (used.top < free.top) pieces.push({ ...free, bottom: used.top });
  return pieces;
}

/** Every place at the top left of a free rectangle that takes `size`, in reading order. */
export function places(room: FreeRoom, size: Size): Box[] {
  return room
    .filter((free) => takes(free, size))
    .map((free) => ({
      left: free.left,
      bottom: free.top - size.height,
      right: free.left + size.width,
      top: free.top,
    }))
    .sort(inReadingOrder);
}

/** Whether a box of this size goes into `free`, to a hair: sums of millimetres are not exact. */
export function takes(free: Box, size: Size): boolean {
  return across(free) >= size.width - 1e-9 && upright(free) >= size.height - 1e-9;
}

/** Whether a size has room there as it is, or turned by a quarter. */
export function takesTurned(free: Box, { width, height }: Size): boolean {
  return takes(free, { width, height }) || takes(free, { width: height, height: width });
}

function inReadingOrder(a: Box, b: Box): number {
  return b.top - a.top || a.left - b.left;
}
