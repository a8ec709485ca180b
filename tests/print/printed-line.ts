import type { Point } from '../../src/draw/drawing.ts';
import { inkAt, type Raster } from '../ink/raster.ts';

/** One dot of a 1200 dpi printer, mm. */
export const PIXEL = 25.4 / 1200;

/** No other ink may lie this near to a line where it is measured, mm. */
const CLEAR = 0.6;

/** Widths of the lines as drawn, mm (ISO 128-2). */
export const CUT_WIDTH = 0.35;
export const THIN_WIDTH = 0.18;

/**
 * How far the middle of a printed line lies from `at`, measured along `square`, a unit vector square to it. Undefined where
 * there is not exactly one line of this width within reach: then other ink is too near to tell them apart.
 */
export function strayAt(raster: Raster, at: Point, square: Point, width: number): number | undefined {
  const step = PIXEL / 4;
  const half = Math.round(CLEAR / step);
  let sum = 0;
  let moment = 0;
  let runs = 0;
  let inked = false;
  for (let i = -half; i <= half; i++) {
    const ink = smoothInk(raster, at.x + i * step * square.x, at.y + i * step * square.y);
    sum += ink * step;
    moment += ink * i * step * step;
    const here = ink > 0.02;
    if (here && !inked) runs += 1;
    if (here && Math.abs(i) === half) return undefined;
    inked = here;
  }
  return runs === 1 && Math.abs(sum - width) < PIXEL ? moment / sum : undefined;
}

/** Ink at a place in mm from the page's lower left corner, interpolated between the middles of the four pixels round it. */
function smoothInk(raster: Raster, x: number, y: number): number {
  const column = x * raster.across - 0.5;
  const row = raster.height - y * raster.up - 0.5;
  const [left, top] = [Math.floor(column), Math.floor(row)];
  const [right, low] = [column - left, row - top];
  const level = (r: number) => (1 - right) * inkAt(raster, left, r) + right * inkAt(raster, left + 1, r);
  return (1 - low) * level(top) + low * level(top + 1);
}

/**
 * Where an upright thin line stands (`across`), or how high a level one lies (`up`): the median of what is measured at these
 * places along it. Throws where fewer than three of them are clear of other ink.
 */
export function placeOfLine(
  raster: Raster,
  axis: 'across' | 'up',
  rough: number,
  along: readonly number[],
): number {
  const strays = along.flatMap((place) => {
    const at = axis === 'across' ? { x: rough, y: place } : { x: place, y: rough };
    const square = axis === 'across' ? { x: 1, y: 0 } : { x: 0, y: 1 };
    return strayAt(raster, at, square, THIN_WIDTH) ?? [];
  });
  strays.sort((a, b) => a - b);
  const median = strays[Math.floor(strays.length / 2)];
  if (median === undefined || strays.length < 3) {
    throw new Error(`No clear line ${axis} near ${rough} mm: ${strays.length} of ${along.length} places.`);
  }
  return rough + median;
}

/** Equal steps from one place to another, ends included. */
export function steps(from: number, to: number, count: number): number[] {
  return Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));
}
