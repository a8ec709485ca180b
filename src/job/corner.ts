import type { Length } from '../measure/units.ts';
import type { Language } from '../words/language.ts';

/**
 * The outside corner radius of a cold-formed hollow section where none is given: the middle of the standard's range,
 * 2 t for walls to 6 mm and 2.5 t above (EN 10219-2, secondary).
 */
export function usualCorner(wall: Length, { tubes }: Language): Length {
  const times = wall.mm <= 6 ? 2 : 2.5;
  return { mm: times * wall.mm, wrote: tubes.usualCorner(times), unit: wall.unit, byName: true };
}
