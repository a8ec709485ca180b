import { degrees } from '../measure/units.ts';
import { millimetres } from '../measure/write.ts';
import type { Section } from '../space/section.ts';

/** Whether the section's stations are angles; on a rectangular tube they are mm round it. */
export function countsInAngles(section: Section): boolean {
  return section.turn !== section.girth;
}

/** A station as people say it: `118°`, or on a rectangular tube `46.5 mm`. */
export function stationInWords(station: number, section: Section): string {
  if (countsInAngles(section)) return `${Math.round(degrees(station))}°`;
  return `${millimetres(Math.round(station * 10) / 10)} mm`;
}
