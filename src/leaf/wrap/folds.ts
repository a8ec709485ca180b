import type { Mm } from '../../measure/units.ts';
import type { Section } from '../../space/section.ts';

/** The stations of the lines to fold on: the beginning and the end of each corner, once where they are one. */
export function foldStations({ corners }: Section): readonly number[] {
  return corners.flatMap(({ from, to }) => (to - from < ONE_LINE ? [(from + to) / 2] : [from, to]));
}

/** Two lines nearer than this could not be told apart, mm. */
const ONE_LINE: Mm = 0.6;
