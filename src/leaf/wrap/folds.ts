import type { Mm } from '../../measure/units.ts';
import type { Section } from '../../space/section.ts';

/** A corner of a rectangular tube, from the station where one face ends to that where the next begins. */
export interface Bend {
  readonly from: number;
  readonly to: number;
}

/** The corners of a tube in order from the spine; a round one has none. Sharp corners begin and end at one station. */
export function bendsOf({ cornersAt }: Section): readonly Bend[] {
  const corners = cornersAt(0);
  const sharp = corners.length === CORNERS;
  return Array.from({ length: corners.length === 0 ? 0 : CORNERS }, (_, i) => {
    const from = corners[sharp ? i : 2 * i] ?? 0;
    return { from, to: sharp ? from : (corners[2 * i + 1] ?? from) };
  });
}

const CORNERS = 4;

/** The stations of the lines to fold on: the beginning and the end of each corner, once where they are one. */
export function foldStations(section: Section): readonly number[] {
  return bendsOf(section).flatMap(({ from, to }) => (to - from < ONE_LINE ? [(from + to) / 2] : [from, to]));
}

/** Two lines nearer than this could not be told apart, mm. */
const ONE_LINE: Mm = 0.6;
