import type { Drawing, Mark } from '../draw/drawing.ts';
import { FOOT, words } from '../draw/lettering.ts';
import { ASCENT, DESCENT, widthOf } from '../draw/letters.ts';
import { line } from '../draw/strokes.ts';
import type { Said } from '../measure/said.ts';
import { MM_PER_INCH, type Mm } from '../measure/units.ts';
import type { Language } from '../words/language.ts';

/** The directions a printer may stretch differently. */
export type Direction = 'across' | 'up';

/** How far an end tick and a tick within stand out from the bar, and white between the bar and its words. */
const END_TICK: Mm = 2.8;
const INNER_TICK: Mm = 0.8;
const CLEAR: Mm = 0.2;

/** What the bars take to either side of their line. */
export const HALF_BARS: Mm = CLEAR + (ASCENT + DESCENT) * FOOT;
/** What two bars on one line take square to it. */
export const BARS_HEIGHT: Mm = 2 * HALF_BARS;
/** What a bar takes along itself: 4 in and the width of its line. */
export const BARS_LENGTH: Mm = 4 * MM_PER_INCH + 0.2;

/** How long a pair of bars is, as its words say it. */
export interface BarLengths {
  readonly mm: number;
  readonly inches: number;
}

/** The bars on every sheet. */
export const SHORT: BarLengths = { mm: 100, inches: 4 };

/**
 * Two calibration bars of one direction on one line, as one drawing that lies level; the ones to read upwards are turned when they
 * are placed. Both start at the origin, where the middle of their first tick is; the metric one has its ticks and its number over
 * the line, the other one under it. Their ends lie near to one another: each number stands at its own bar's last tick, as high as that.
 */
export function bars(
  direction: Direction,
  { sheets }: Language,
  { mm, inches }: BarLengths = SHORT,
  name = `bars ${direction}`,
): Drawing {
  const right = Math.max(mm, inches * MM_PER_INCH);
  return {
    name,
    box: { left: 0, bottom: -HALF_BARS, right, top: HALF_BARS },
    marks: [
      ...bar(mm, 10, sheets.metricBar(mm, direction), 1),
      ...bar(inches * MM_PER_INCH, MM_PER_INCH / 2, sheets.inchBar(inches, direction), -1),
    ],
  };
}

/** Where its number stands, a bar has no ticks but the last. */
function bar(length: Mm, step: Mm, name: Said, side: 1 | -1): Mark[] {
  const tick = (x: Mm, long: Mm) => line('bar', { x, y: 0 }, { x, y: side * long });
  const named = length - 1 - widthOf(name, FOOT);
  const within = Array.from({ length: Math.round(length / step) - 1 }, (_, index) => (index + 1) * step);
  const base = side > 0 ? CLEAR + DESCENT * FOOT : -CLEAR - ASCENT * FOOT;
  return [
    line('bar', { x: 0, y: 0 }, { x: length, y: 0 }),
    ...[0, length].map((x) => tick(x, END_TICK)),
    ...within.filter((x) => x < named - CLEAR).map((x) => tick(x, INNER_TICK)),
    words(name, 'sheet', FOOT, { x: named, y: base }),
  ];
}
