import { MM_PER_INCH, type Mm } from '../units.ts';

/** One size of pipe by its nominal name, which measures nothing on it up to NPS 12. */
export interface NpsSize {
  readonly name: string;
  /** The number in the name, by which its spellings are compared. */
  readonly inches: number;
  readonly od: InBoth;
  /** Walls by schedule. */
  readonly walls: Readonly<Record<Schedule, InBoth>>;
}

/** As the standard's column of either unit has it, both in mm; they differ by what the other one was rounded by. */
export type InBoth = Readonly<Record<'mm' | 'in', Mm>>;

/** Named by a number, but for double extra strong. */
export type Schedule = '40' | '80' | '160' | 'XXS';

export const SCHEDULES: readonly Schedule[] = ['40', '80', '160', 'XXS'];

/**
 * ASME B36.10M, its columns in millimetres and in inches: outside diameter, walls of schedule 40, 80 and 160 and of XXS. In millimetres
 * 40 and 80 of the rows to NPS 2, 3 and 4 were taken from open data that cites the standard; all else is from memory.
 */
export const NPS_SIZES: readonly NpsSize[] = [
  nps('1/2', 0.5, [21.3, 2.77, 3.73, 4.78, 7.47], [0.84, 0.109, 0.147, 0.188, 0.294]),
  nps('3/4', 0.75, [26.7, 2.87, 3.91, 5.56, 7.82], [1.05, 0.113, 0.154, 0.219, 0.308]),
  nps('1', 1, [33.4, 3.38, 4.55, 6.35, 9.09], [1.315, 0.133, 0.179, 0.25, 0.358]),
  nps('1-1/4', 1.25, [42.2, 3.56, 4.85, 6.35, 9.7], [1.66, 0.14, 0.191, 0.25, 0.382]),
  nps('1-1/2', 1.5, [48.3, 3.68, 5.08, 7.14, 10.15], [1.9, 0.145, 0.2, 0.281, 0.4]),
  nps('2', 2, [60.3, 3.91, 5.54, 8.74, 11.07], [2.375, 0.154, 0.218, 0.344, 0.436]),
  nps('2-1/2', 2.5, [73, 5.16, 7.01, 9.53, 14.02], [2.875, 0.203, 0.276, 0.375, 0.552]),
  nps('3', 3, [88.9, 5.49, 7.62, 11.13, 15.24], [3.5, 0.216, 0.3, 0.438, 0.6]),
  nps('4', 4, [114.3, 6.02, 8.56, 13.49, 17.12], [4.5, 0.237, 0.337, 0.531, 0.674]),
  nps('5', 5, [141.3, 6.55, 9.53, 15.88, 19.05], [5.563, 0.258, 0.375, 0.625, 0.75]),
  nps('6', 6, [168.3, 7.11, 10.97, 18.26, 21.95], [6.625, 0.28, 0.432, 0.719, 0.864]),
  nps('8', 8, [219.1, 8.18, 12.7, 23.01, 22.23], [8.625, 0.322, 0.5, 0.906, 0.875]),
  nps('10', 10, [273, 9.27, 15.09, 28.58, 25.4], [10.75, 0.365, 0.594, 1.125, 1]),
  nps('12', 12, [323.8, 10.31, 17.48, 33.32, 25.4], [12.75, 0.406, 0.688, 1.312, 1]),
];

/** Outside diameter and the walls in the order of the schedules. */
type Row = readonly [od: number, sch40: number, sch80: number, sch160: number, xxs: number];

function nps(name: string, inches: number, mm: Row, inch: Row): NpsSize {
  const inBoth = (column: 0 | 1 | 2 | 3 | 4): InBoth => ({ mm: mm[column], in: inch[column] * MM_PER_INCH });
  const walls = { '40': inBoth(1), '80': inBoth(2), '160': inBoth(3), XXS: inBoth(4) };
  return { name, inches, od: inBoth(0), walls };
}

/**
 * EN 10220 and ISO 4200, series 1: outside diameters. 26.9, 33.7, 42.4, 76.1 and 139.7 were seen cited; the others
 * are from memory.
 */
export const EN_DIAMETERS: readonly Mm[] = [
  10.2, 13.5, 17.2, 21.3, 26.9, 33.7, 42.4, 48.3, 60.3, 76.1, 88.9, 114.3, 139.7, 168.3, 219.1, 273, 323.9,
];

/** Outside diameters of EN 10255 and EN 10220, series 1, by their nominal size DN (ISO 6708): from memory. */
export const DN_DIAMETERS: ReadonlyMap<number, Mm> = new Map([
  [15, 21.3],
  [20, 26.9],
  [25, 33.7],
  [32, 42.4],
  [40, 48.3],
  [50, 60.3],
  [65, 76.1],
  [80, 88.9],
  [100, 114.3],
]);
