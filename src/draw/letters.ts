import { partOf, type Said } from '../measure/said.ts';
import type { Mm } from '../measure/units.ts';
import {
  ADVANCES,
  ASCENT_UNITS,
  CAP_HEIGHT_UNITS,
  CODE_POINTS,
  DESCENT_UNITS,
  GLYPHS,
  UNITS_PER_EM,
} from './metrics.generated.ts';

/** Heights above and below the base line, as parts of the em. `DESCENT` is positive. */
export const ASCENT = ASCENT_UNITS / UNITS_PER_EM;
export const DESCENT = DESCENT_UNITS / UNITS_PER_EM;
export const CAP_HEIGHT = CAP_HEIGHT_UNITS / UNITS_PER_EM;

/** One sign as the font holds it. */
export interface Letter {
  /** Its number in the font that ink/ embeds. */
  readonly glyph: number;
  /** How far the next sign stands from it, as a part of the em; whole thousandths, as a PDF states it. */
  readonly advance: number;
}

const LETTERS: ReadonlyMap<number, Letter> = new Map(
  CODE_POINTS.map((codePoint, index) => [
    codePoint,
    { glyph: GLYPHS[index] ?? 0, advance: (ADVANCES[index] ?? 0) / 1000 },
  ]),
);

/** The font's letter for a sign (one code point). Throws where the font lacks it: `spelled` was not asked first. */
export function letterOf(sign: string): Letter {
  const letter = LETTERS.get(sign.codePointAt(0) ?? 0);
  if (letter === undefined)
    throw new RangeError(`The font lacks ${spelledSign(sign)}; spell the words first.`);
  return letter;
}

/** Width of a run of text at an em of `size` mm, unkerned. Throws where the font lacks a sign of it. */
export function widthOf(text: string, size: Mm): Mm {
  let ems = 0;
  for (const sign of text) ems += letterOf(sign).advance;
  return ems * size;
}

/** The signs of a text, composed (NFC), that the font lacks; each once, in the order they come. */
export function missingSigns(text: string): string[] {
  const signs = Array.from(text.normalize('NFC'));
  return [...new Set(signs.filter((sign) => !has(sign)))];
}

/**
 * A text composed (NFC), with each sign that the font lacks written out as `[U+6F22]`: an embedded font draws what
 * it lacks as nothing at all, and a hole in a name or a dimension is worse than an ugly one. Never throws.
 */
export function spelled(text: Said): Said {
  if (PLAIN.test(text)) return text;
  const signs = Array.from(text.normalize('NFC'), (sign) => (has(sign) ? sign : spelledSign(sign)));
  return partOf(text, signs.join(''));
}

/** Signs of ASCII, all of which the font has: most texts are made of nothing else. */
const PLAIN = /^[ -~]*$/;

function has(sign: string): boolean {
  return LETTERS.has(sign.codePointAt(0) ?? 0);
}

function spelledSign(sign: string): string {
  const codePoint = sign.codePointAt(0) ?? 0;
  return `[U+${codePoint.toString(16).toUpperCase().padStart(4, '0')}]`;
}
