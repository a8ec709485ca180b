import type { Said } from '../measure/said.ts';
import { degrees } from '../measure/units.ts';
import { millimetres } from '../measure/write.ts';
import type { Section } from '../space/section.ts';
import type { Language } from '../words/language.ts';

/** A station of a section as people say it. */
export function stationSaid(station: number, { stations }: Section, { quantities }: Language): Said {
  return quantities.station(station, stations);
}

/** A station as people say it: `118°`, or where stations are mm round the outside `46.5 mm`. */
export function stationInWords(station: number, section: Section): string {
  if (section.stations === 'angles') return `${Math.round(degrees(station))}°`;
  return `${millimetres(Math.round(station * 10) / 10)} mm`;
}
