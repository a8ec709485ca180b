import type { Mm } from './units.ts';

/** The diameter that a tape reads as this girth: the tape bends about its middle, so girth = pi (diameter + tape). */
export function diameterOfGirth(girth: Mm, tape: Mm): Mm {
  return girth / Math.PI - tape;
}
