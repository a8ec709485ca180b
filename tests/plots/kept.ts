import { existsSync, readFileSync } from 'node:fs';
import pixelmatch from 'pixelmatch';
import { PNG } from 'pngjs';
import type { Raster } from '../ink/raster.ts';
import { pngOf } from './png.ts';

export interface Comparison {
  /** Pixels that differ; all of them where the sizes do. */
  readonly apart: number;
  readonly difference?: Buffer;
}

export function keptFile(name: string): URL {
  return new URL(`../../reference-plots/${name}.png`, import.meta.url);
}

/** How a fresh plot differs from the kept one; undefined where none is kept. */
export function compareWithKept(name: string, fresh: Raster): Comparison | undefined {
  const file = keptFile(name);
  if (!existsSync(file)) return undefined;
  const before = PNG.sync.read(readFileSync(file));
  const { width, height } = fresh;
  if (before.width !== width || before.height !== height) return { apart: Math.max(1, width * height) };
  const after = PNG.sync.read(pngOf(fresh));
  const difference = new PNG({ width, height });
  const apart = pixelmatch(before.data, after.data, difference.data, width, height, { threshold: 0.2 });
  return { apart, difference: PNG.sync.write(difference) };
}
