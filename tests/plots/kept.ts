import { existsSync, readFileSync } from 'node:fs';
import pixelmatch from 'pixelmatch';
import { PNG } from 'pngjs';
import type { Raster } from '../ink/raster.ts';
import { padded, pictureOf } from './png.ts';

/** All three of one size: what a picture lacks of it differs. */
export interface Comparison {
  readonly before: PNG;
  readonly after: PNG;
  readonly difference: PNG;
  /** Pixels that differ. */
  readonly apart: number;
}

export function keptFile(name: string): URL {
  return new URL(`../../reference-plots/${name}.png`, import.meta.url);
}

/** How a fresh plot differs from the kept one; undefined where none is kept. */
export function compareWithKept(name: string, fresh: Raster): Comparison | undefined {
  const file = keptFile(name);
  return existsSync(file) ? compare(PNG.sync.read(readFileSync(file)), pictureOf(fresh)) : undefined;
}

/**
 * Pixels at the rim of a line count like any other: the same renderer draws before and after, so its smoothing is no noise, and
 * a line's weight shows nowhere else.
 */
export function compare(kept: PNG, fresh: PNG): Comparison {
  const width = Math.max(kept.width, fresh.width);
  const height = Math.max(kept.height, fresh.height);
  const before = padded(kept, width, height);
  const after = padded(fresh, width, height);
  const difference = new PNG({ width, height });
  const apart = pixelmatch(before.data, after.data, difference.data, width, height, {
    threshold: 0.1,
    includeAA: true,
  });
  return { before, after, difference, apart };
}
