import type { Drawing, Mark, Stroke } from '../draw/drawing.ts';
import { SMALL, words } from '../draw/lettering.ts';
import { line } from '../draw/strokes.ts';
import type { Said } from '../measure/said.ts';
import { MM_PER_INCH, type Mm } from '../measure/units.ts';
import type { Language } from '../words/language.ts';

/** The directions a printer may stretch differently. */
export type Direction = 'across' | 'up';

/** Half the length of an end tick, of a tick within, and from the bar up to its words. */
const END_TICK: Mm = 1.2;
const INNER_TICK: Mm = 0.8;
const WORDS_ABOVE: Mm = 0.7;

/** From a bar to the next one over it, at the least. */
export const BAR_PITCH: Mm = 3.9;
/** What a bar and its words take below and above the bar's own line. */
export const BELOW_BAR: Mm = 1.3;
export const ABOVE_BAR: Mm = 2.8;
/** What two bars over one another take, at the least. */
export const BARS_HEIGHT: Mm = BELOW_BAR + BAR_PITCH + ABOVE_BAR;
/** What a bar takes along itself: 4 in and the width of its line. */
export const BARS_LENGTH: Mm = 4 * MM_PER_INCH + 0.2;

/** How long a pair of bars is, as its words say it. */
export interface BarLengths {
  readonly mm: number;
  readonly inches: number;
}

/** The bars on every sheet. */
export const SHORT: BarLengths = { mm: 100, inches: 4 };

/** The two calibration bars of one direction on every sheet, 100 mm over 4 in. */
export function bars(direction: Direction, words: Language, pitch: Mm): Drawing {
  return pairOfBars(`bars ${direction}`, direction, SHORT, words, pitch);
}

/**
 * Two bars of one direction, the metric one over the other, as one drawing that lies level; the ones to read upwards are
 * turned when they are placed. Both start at x = 0, where the middle of their end tick is; the lower one lies at y = 0,
 * the upper one at y = `pitch` mm.
 */
export function pairOfBars(
  name: string,
  direction: Direction,
  { mm, inches }: BarLengths,
  { sheets }: Language,
  pitch: Mm,
): Drawing {
  return {
    name,
    box: {
      left: 0,
      bottom: -BELOW_BAR,
      right: Math.max(mm, inches * MM_PER_INCH),
      top: pitch + ABOVE_BAR,
    },
    marks: [
      ...bar(pitch, mm, 10, sheets.metricBar(mm, direction)),
      ...bar(0, inches * MM_PER_INCH, MM_PER_INCH / 2, sheets.inchBar(inches, direction)),
    ],
  };
}

function bar(y: Mm, length: Mm, step: Mm, name: Said): Mark[] {
  const tick = (x: Mm, above: Mm, below: Mm): Stroke => line('bar', { x, y: y - below }, { x, y: y + above });
  const steps = Math.round(length / step) - 1;
  return [
    line('bar', { x: 0, y }, { x: length, y }),
    tick(0, END_TICK, END_TICK),
    tick(length, END_TICK, END_TICK),
    ...Array.from({ length: steps }, (_, index) => tick((index + 1) * step, 0, INNER_TICK)),
    words(name, 'sheet', SMALL, { x: 1, y: y + WORDS_ABOVE }),
  ];
}
