import type { Mm } from '../measure/units.ts';

/** A sheet of paper in its portrait orientation. */
export interface Paper {
  readonly name: string;
  readonly width: Mm;
  readonly height: Mm;
}

/** ISO 216 and ANSI/ASME Y14.1 sizes. */
export const PAPERS: readonly Paper[] = [
  { name: 'letter', width: 215.9, height: 279.4 },
  { name: 'A4', width: 210, height: 297 },
];
