import type { Mm } from '../measure/units.ts';

/**
 * The top of a single hill, by golden section: needs no slope, so a kink or a cliff is no trouble. Each round leaves
 * 0.618 of the stretch; a smooth top can't be told nearer than by the square root of the last bit anyway.
 */
export function goldenSectionMaximum(
  height: (place: number) => number,
  from: number,
  to: number,
  rounds = 42,
): number {
  const ratio = (Math.sqrt(5) - 1) / 2;
  const narrow = 1e-5 * (to - from);
  let low = from;
  let high = to;
  let left = high - ratio * (high - low);
  let right = low + ratio * (high - low);
  let atLeft = height(left);
  let atRight = height(right);
  for (let i = 0; i < rounds; i++) {
    if (high - low < narrow && Math.abs(atLeft - atRight) < LEVEL) break;
    if (atLeft >= atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - ratio * (high - low);
      atLeft = height(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + ratio * (high - low);
      atRight = height(right);
    }
  }
  return atLeft >= atRight ? left : right;
}

/** The greatest height once round, of a function that may be -Infinity where it does not count: the highest of `looks` samples, climbed. */
export function greatestRound(height: (place: number) => number, turn: number, looks: number): number {
  const step = turn / looks;
  const heights = Array.from({ length: looks }, (_, i) => height(i * step));
  return greatestNear(height, heights, step);
}

/** The same from samples that are at hand, each a `step` after the one before it. */
export function greatestNear(
  height: (place: number) => number,
  heights: readonly number[],
  step: number,
): number {
  const highest = Math.max(...heights);
  const best = heights.indexOf(highest);
  const top = goldenSectionMaximum(height, (best - 1) * step, (best + 1) * step);
  return Math.max(highest, height(top));
}

/** A narrow top whose sides are this level, in mm, is as high as it gets. */
const LEVEL: Mm = 1e-14;
