import type { Said } from '../measure/said.ts';
import type { Mm } from '../measure/units.ts';
import { broken } from './breaking.ts';
import type { Box, Mark, Point, Words } from './drawing.ts';
import { ASCENT, DESCENT, widthOf } from './letters.ts';

/** Heights of the em, mm: small print, what is read at the bench, names and numbers, an end's letter. */
export const SMALL: Mm = 2.2;
export const PLAIN: Mm = 2.8;
export const LARGE: Mm = 4;
export const LETTER: Mm = 8;

/** From one base line to the next, in ems: close where words share a leaf with its lines, open where a page is read. */
const PITCH = { close: 1.25, open: 1.4 } as const;

/** The way words run: to the right (0), upwards (1) or downwards (3). */
export type Turn = 0 | 1 | 3;

/** A run of words. `at` is the left end of its base line before it is turned. */
export function words(text: Said, size: Mm, at: Point, turn: Turn = 0): Words {
  return { kind: 'words', purpose: 'words', text, size, at, turn };
}

/** Lines of one size, set close, one under the other, their left ends in line. */
export interface Block {
  readonly lines: readonly Said[];
  readonly size: Mm;
}

/** How wide and high a block is before it is turned, with room for accents and tails. */
export function extentOf({ lines, size }: Block): { readonly width: Mm; readonly height: Mm } {
  if (lines.length === 0) return { width: 0, height: 0 };
  const width = Math.max(...lines.map((line) => widthOf(line, size)));
  return { width, height: ((lines.length - 1) * PITCH.close + ASCENT + DESCENT) * size };
}

/** A block as marks, its turned box's lower left corner at (left, bottom). */
export function lettered(block: Block, left: Mm, bottom: Mm, turn: Turn = 0): Mark[] {
  const { width, height } = extentOf(block);
  const { size } = block;
  return block.lines.map((text, i) => {
    const down = (ASCENT + i * PITCH.close) * size;
    const at = {
      0: { x: left, y: bottom + height - down },
      1: { x: left + down, y: bottom },
      3: { x: left + height - down, y: bottom + width },
    }[turn];
    return words(text, size, at, turn);
  });
}

/** One line of any size, set open, under others. */
export interface TextLine {
  readonly text: Said;
  readonly size: Mm;
}

/** A text in lines of one size, no wider than `width`. */
export function linesOf(text: Said, size: Mm, width: Mm): TextLine[] {
  return broken(text, size, width).map((each) => ({ text: each, size }));
}

/** Height of lines set under one another, mm. */
export function heightOf(lines: readonly Pick<TextLine, 'size'>[]): Mm {
  return lines.reduce((sum, { size }) => sum + size * PITCH.open, 0);
}

/** Lines set under one another from `topLeft` down. */
export function setLines(lines: readonly TextLine[], topLeft: Point): Words[] {
  return lines.map(({ text, size }, index) => {
    const foot = topLeft.y - heightOf(lines.slice(0, index + 1));
    return words(text, size, { x: topLeft.x, y: foot + DESCENT * size });
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
