import type { Mm } from '../measure/units.ts';
import type { Point, Words } from './drawing.ts';
import { DESCENT, widthOf } from './letters.ts';

/** The sizes of type on a sheet, mm of em: small print, what is read at the bench, the sheet's number. */
export const SMALL: Mm = 2.2;
export const PLAIN: Mm = 2.8;
export const LARGE: Mm = 4;

/** From one base line to the next, in ems. */
const LEADING = 1.4;

/** One line of type, to be set under others. */
export interface Line {
  readonly text: string;
  readonly size: Mm;
}

/** Height of lines set under one another, mm. */
export function heightOf(lines: readonly Line[]): Mm {
  return lines.reduce((sum, line) => sum + line.size * LEADING, 0);
}

/** Lines set under one another from `topLeft` down. */
export function setLines(lines: readonly Line[], topLeft: Point): Words[] {
  return lines.map(({ text, size }, index) => {
    const foot = topLeft.y - heightOf(lines.slice(0, index + 1));
    return words(text, size, { x: topLeft.x, y: foot + DESCENT * size });
  });
}

/** A run of words on the sheet. `at` is the left end of its base line before it is turned. */
export function words(text: string, size: Mm, at: Point, turn: 0 | 1 = 0): Words {
  return { kind: 'words', purpose: 'words', text, size, at, turn };
}

/** A text broken into lines of at most `width` mm, at its spaces; a word too long for a line is broken where it must be. */
export function broken(text: string, size: Mm, width: Mm): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/).filter((piece) => piece !== '')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (widthOf(longer, size) <= width) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    const pieces = chopped(word, size, width);
    lines.push(...pieces.slice(0, -1));
    line = pieces.at(-1) ?? '';
  }
  return line === '' ? lines : [...lines, line];
}

function chopped(word: string, size: Mm, width: Mm): string[] {
  const pieces: string[] = [];
  let piece = '';
  for (const sign of word) {
    if (piece !== '' && widthOf(piece + sign, size) > width) {
      pieces.push(piece);
      piece = '';
    }
    piece += sign;
  }
  return [...pieces, piece];
}

/** The text where it fits `width` mm; else as much of its beginning as does, with an ellipsis. */
export function shortened(text: string, size: Mm, width: Mm): string {
  if (widthOf(text, size) <= width) return text;
  const signs = Array.from(text);
  while (signs.length > 0 && widthOf(`${signs.join('').trimEnd()}…`, size) > width) signs.pop();
  return `${signs.join('').trimEnd()}…`;
}
