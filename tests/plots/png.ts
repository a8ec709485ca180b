import { PNG } from 'pngjs';
import type { Raster } from '../ink/raster.ts';

/** A grey raster as a PNG with one byte a pixel. */
export function pngOf({ width, height, data }: Raster): Buffer {
  const png = new PNG({ width, height });
  data.forEach((grey, i) => {
    png.data.set([grey, grey, grey, 255], 4 * i);
  });
  return PNG.sync.write(png, { colorType: 0, deflateLevel: 9 });
}
