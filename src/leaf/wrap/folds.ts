import type { Section } from '../../space/section.ts';

/** The stations of the lines to crease on: the middle of each corner, however round it is, so that nobody creases twice. */
export function foldStations({ corners }: Section): readonly number[] {
  return corners.map(({ from, to }) => (from + to) / 2);
}
