import type { Mm } from '../measure/units.ts';
import { overlapping } from './boxes.ts';
import type { Box } from './drawing.ts';

const STEP: Mm = 0.5;

/**
 * Where a mark on a line is clear of words: at `wish`, or as little from there to `last` as it takes. `inked` is what the mark
 * inks when it lies so many mm along. Undefined where there is no such place.
 */
export function offWords(
  words: readonly Box[],
  inked: (along: Mm) => Box,
  wish: Mm,
  last: Mm,
): Mm | undefined {
  const way = last < wish ? -STEP : STEP;
  const places = Array.from({ length: Math.floor((last - wish) / way) + 1 }, (_, i) => wish + i * way);
  return places.find((along) => {
    const box = inked(along);
    return !words.some((each) => overlapping(each, box));
  });
}
