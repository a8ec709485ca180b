import type { Raster } from '../ink/raster.ts';

/** A plot's greys lie this far apart: few greys make small files. */
const GREY_STEP = 17;

/**
 * A raster of the mean of each `times` by `times` pixels, in 16 greys. A renderer draws the thinnest line a whole pixel wide, so
 * in a small picture all lines would be as heavy; drawn large and then shrunk, each keeps its weight as its grey.
 */
export function shrunk({ width, height, data, across, up }: Raster, times: number): Raster {
  const [columns, rows] = [Math.floor(width / times), Math.floor(height / times)];
  const small = new Uint8Array(columns * rows);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      let sum = 0;
      for (let y = row * times; y < (row + 1) * times; y++) {
        for (let x = column * times; x < (column + 1) * times; x++) sum += data[y * width + x] ?? 255;
      }
      small[row * columns + column] = Math.round(sum / times ** 2 / GREY_STEP) * GREY_STEP;
    }
  }
  return { width: columns, height: rows, data: small, across: across / times, up: up / times };
}
