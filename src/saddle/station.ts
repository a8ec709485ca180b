import type { Said } from '../measure/said.ts';
import type { Section } from '../space/section.ts';
import type { Language } from '../words/language.ts';

/** A station of a section as people say it. */
export function stationSaid(station: number, { stations }: Section, { quantities }: Language): Said {
  return quantities.station(station, stations);
}
