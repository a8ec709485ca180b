/**
 * Birmingham (Stubs' iron wire) gauge, by which tube walls are named: thousandths of an inch. Neither the standard
 * wire gauge nor a sheet gauge, whose 16 is another thickness each. From the tables that tube makers publish (seen; no standard read).
 */
export const BIRMINGHAM_THOUSANDTHS: ReadonlyMap<number, number> = new Map([
  [7, 180],
  [8, 165],
  [9, 148],
  [10, 134],
  [11, 120],
  [12, 109],
  [13, 95],
  [14, 83],
  [15, 72],
  [16, 65],
  [17, 58],
  [18, 49],
  [19, 42],
  [20, 35],
]);
