import { PNG } from 'pngjs';
import type { Raster } from '../ink/raster.ts';

/** A grey raster as an opaque picture. */
export function pictureOf({ width, height, data }: Raster): PNG {
  const png = new PNG({ width, height });
  const pixels = new Uint32Array(png.data.buffer, png.data.byteOffset, data.length);
  // The same read from either end but for the opaque byte, which is set apart.
  for (const [i, grey] of data.entries()) pixels[i] = grey * 0x01010101;
  for (let i = 3; i < png.data.length; i += 4) png.data[i] = 255;
  return png;
}

/** A grey raster as a PNG file with one byte a pixel. */
export function pngOf(raster: Raster): Buffer {
  return PNG.sync.write(pictureOf(raster), { colorType: 0, deflateLevel: 9 });
}

/** A picture set at the top left of a larger one, which is else of a blue that no plot has. */
export function padded(picture: PNG, width: number, height: number): PNG {
  if (picture.width === width && picture.height === height) return picture;
  const larger = new PNG({ width, height });
  for (let i = 0; i < larger.data.length; i += 4) larger.data.set([160, 180, 255, 255], i);
  PNG.bitblt(picture, larger, 0, 0, picture.width, picture.height, 0, 0);
  return larger;
}

/** Pictures of one height in a row, as a file. */
export function rowOf(pictures: readonly PNG[]): Buffer {
  const width = pictures.reduce((sum, picture) => sum + picture.width + GAP, -GAP);
  const height = Math.max(...pictures.map((picture) => picture.height));
  const row = padded(new PNG({ width: 1, height: 1 }), width, height);
  let left = 0;
  for (const picture of pictures) {
    PNG.bitblt(picture, row, 0, 0, picture.width, picture.height, left, 0);
    left += picture.width + GAP;
  }
  return PNG.sync.write(row);
}

const GAP = 8;
