import type { Mm } from '../units.ts';

/** One size of pipe by its nominal name, which measures nothing on it up to NPS 12. */
export interface NpsSize {
  readonly name: string;
  /** The number in the name, by which its spellings are compared. */
  readonly inches: number;
  readonly od: Mm;
  /** Walls by schedule. */
  readonly walls: Readonly<Record<Schedule, Mm>>;
}

export type Schedule = '40' | '80';

export const SCHEDULES: readonly Schedule[] = ['40', '80'];

/**
 * ASME B36.10M, its millimetre columns: outside diameter, walls of schedule 40 and 80. The rows to NPS 2, 3 and 4
 * were taken from open data that cites the standard; 2-1/2, 5, 6, 8, 10 and 12 are from memory.
 */
export const NPS_SIZES: readonly NpsSize[] = [
  nps('1/2', 0.5, 21.3, 2.77, 3.73),
  nps('3/4', 0.75, 26.7, 2.87, 3.91),
  nps('1', 1, 33.4, 3.38, 4.55),
  nps('1-1/4', 1.25, 42.2, 3.56, 4.85),
  nps('1-1/2', 1.5, 48.3, 3.68, 5.08),
  nps('2', 2, 60.3, 3.91, 5.54),
  nps('2-1/2', 2.5, 73, 5.16, 7.01),
  nps('3', 3, 88.9, 5.49, 7.62),
  nps('4', 4, 114.3, 6.02, 8.56),
  nps('5', 5, 141.3, 6.55, 9.53),
  nps('6', 6, 168.3, 7.11, 10.97),
  nps('8', 8, 219.1, 8.18, 12.7),
  nps('10', 10, 273, 9.27, 15.09),
  nps('12', 12, 323.8, 10.31, 17.48),
];

function nps(name: string, inches: number, od: Mm, wall40: Mm, wall80: Mm): NpsSize {
  return { name, inches, od, walls: { '40': wall40, '80': wall80 } };
}

/**
 * EN 10220 and ISO 4200, series 1: outside diameters. 26.9, 33.7, 42.4, 76.1 and 139.7 were seen cited; the others
 * are from memory.
 */
export const EN_DIAMETERS: readonly Mm[] = [
  10.2, 13.5, 17.2, 21.3, 26.9, 33.7, 42.4, 48.3, 60.3, 76.1, 88.9, 114.3, 139.7, 168.3, 219.1, 273, 323.9,
];
