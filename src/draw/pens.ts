import type { Mm } from '../measure/units.ts';
import type { Purpose } from './drawing.ts';

export interface Pen {
  /** Line width, of the ISO 128-2 series (0.13 0.18 0.25 0.35 0.5 0.7 1, from memory). */
  readonly width: Mm;
  /** Lengths of dash and space in turn; empty for a solid line. */
  readonly dash: readonly Mm[];
}

/** Half the widest line's width and a little more: a box that much larger than what is drawn holds its ink. */
export const HALF_LINE: Mm = 0.2;

const THIN: Pen = { width: 0.18, dash: [] };

/**
 * 0.35 solid is the line to cut to and nothing else; 0.25 dashed is the other edge's line; the rest is 0.18. Folds are long dashes and two
 * dots (ISO 128-2, line type 05, from memory), so that none is taken for an edge.
 */
export const PENS: Readonly<Record<Purpose, Pen>> = {
  cut: { width: 0.35, dash: [] },
  'other-edge': { width: 0.25, dash: [3, 1.5] },
  waste: THIN,
  guide: THIN,
  fold: { width: 0.18, dash: [6, 1.2, 0.6, 1.2, 0.6, 1.2] },
  clean: { width: 0.18, dash: [9, 3] },
  outline: THIN,
  seam: THIN,
  bar: THIN,
  registration: THIN,
  picture: THIN,
  frame: THIN,
  words: THIN,
};
