import type { Mm } from '../measure/units.ts';
import type { Box, Mark, Words } from './drawing.ts';
import { ASCENT, DESCENT, widthOf } from './letters.ts';

/** Heights of the em, mm. No other size stands on a leaf. */
export const SMALL: Mm = 2.2;
export const TEXT: Mm = 2.8;
export const TITLE: Mm = 4;
export const LETTER: Mm = 8;

/** From base line to base line, in ems. */
const PITCH = 1.25;

/** Lines of words of one size, one under the other, their left ends in line. */
export interface Block {
  readonly lines: readonly string[];
  readonly size: Mm;
}

/** The way words run: to the right (0), upwards (1) or downwards (3). */
export type Turn = 0 | 1 | 3;

/** How wide and high a block is before it is turned, with room for accents and tails. */
export function extentOf({ lines, size }: Block): { readonly width: Mm; readonly height: Mm } {
  if (lines.length === 0) return { width: 0, height: 0 };
  const width = Math.max(...lines.map((line) => widthOf(line, size)));
  return { width, height: ((lines.length - 1) * PITCH + ASCENT + DESCENT) * size };
}

/** A block as marks, its turned box's lower left corner at (left, bottom). */
export function lettered(block: Block, left: Mm, bottom: Mm, turn: Turn = 0): Mark[] {
  const { width, height } = extentOf(block);
  const { size } = block;
  return block.lines.map((text, i): Words => {
    const down = (ASCENT + i * PITCH) * size;
    const at = {
      0: { x: left, y: bottom + height - down },
      1: { x: left + down, y: bottom },
      3: { x: left + height - down, y: bottom + width },
    }[turn];
    return { kind: 'words', purpose: 'words', text, size, at, turn };
  });
}

/** The box that a run of text may ink: its width by its ascent and descent. */
export function wordsBox({ text, size, at, turn }: Words): Box {
  const width = widthOf(text, size);
  const up = ASCENT * size;
  const down = DESCENT * size;
  if (turn === 0) return { left: at.x, right: at.x + width, bottom: at.y - down, top: at.y + up };
  if (turn === 1) return { left: at.x - up, right: at.x + down, bottom: at.y, top: at.y + width };
  if (turn === 2) return { left: at.x - width, right: at.x, bottom: at.y - up, top: at.y + down };
  return { left: at.x - down, right: at.x + up, bottom: at.y - width, top: at.y };
}

/** A text's words, measured once to be folded to many widths. */
export interface Measured {
  readonly size: Mm;
  readonly words: readonly { readonly text: string; readonly wide: Mm }[];
}

/** A lone capital, such as an end's letter, stays with the word before it. */
export function measured(text: string, size: Mm): Measured {
  const words = text.split(BREAKS);
  return { size, words: words.map((word) => ({ text: word, wide: widthOf(word, size) })) };
}

/** A space that a line may be broken at. */
const BREAKS = / (?!\p{Lu}[.,:;)]*(?: |$))/u;

/** A text broken into lines no wider than `width`: between words where it can be, inside one that is wider itself. */
export function folded(text: string, size: Mm, width: Mm): string[] {
  return foldedTo(measured(text, size), width);
}

/** The same for a text that is measured already. */
export function foldedTo({ size, words }: Measured, width: Mm): string[] {
  const space = widthOf(' ', size);
  const fitting = words.every(({ wide }) => wide <= width)
    ? words
    : words.flatMap((word) => (word.wide <= width ? [word] : parted(word.text, size, width)));
  const lines: string[] = [];
  let line = '';
  let long = 0;
  for (const { text, wide } of fitting) {
    if (line !== '' && long + space + wide > width) {
      lines.push(line);
      line = '';
      long = 0;
    }
    long += line === '' ? wide : space + wide;
    line += line === '' ? text : ` ${text}`;
  }
  return [...lines, line];
}

/** What stays together only where it can: its words, and those that are wider than a line in pieces. */
function parted(text: string, size: Mm, width: Mm): { text: string; wide: Mm }[] {
  return text.split(' ').flatMap((word) => {
    const wide = widthOf(word, size);
    return wide <= width ? [{ text: word, wide }] : chopped(word, size, width);
  });
}

/** A word in pieces of which each is no wider than `width`, or one sign. */
function chopped(word: string, size: Mm, width: Mm): { text: string; wide: Mm }[] {
  const pieces: { text: string; wide: Mm }[] = [];
  let text = '';
  let wide = 0;
  for (const sign of word) {
    const more = widthOf(sign, size);
    if (text !== '' && wide + more > width) {
      pieces.push({ text, wide });
      text = '';
      wide = 0;
    }
    text += sign;
    wide += more;
  }
  return [...pieces, { text, wide }];
}

/** As much of a text as fits, with an ellipsis where something is left out. */
export function shortened(text: string, size: Mm, width: Mm): string {
  if (widthOf(text, size) <= width) return text;
  const signs = Array.from(text);
  while (signs.length > 1 && widthOf(`${signs.join('')}…`, size) > width) signs.pop();
  return `${signs.join('').trimEnd()}…`;
}
