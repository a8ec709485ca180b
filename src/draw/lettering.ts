import type { Said } from '../measure/said.ts';
import type { Mm } from '../measure/units.ts';
import { broken } from './breaking.ts';
import type { Box, Mark, Point, Words } from './drawing.ts';
import type { FactName, Subject } from './facts.ts';
import { ASCENT, DESCENT, widthOf } from './letters.ts';

/** Heights of the em, mm, of sizes in points of 1/72 in, before a printer's factor: the foot of a sheet and the heads of tiles. */
export const FOOT: Mm = points(8);

/** The least size of what is read at the bench: leaf, card, ticket, list, footprint. */
export const TEXT: Mm = points(9);

/** What decides: on leaves of tubes over 60 mm round, and on tickets. */
export const WORTH: Mm = points(12);

/** Headings. */
export const TITLE: Mm = points(14);

/** An end's letter. */
export const LETTER: Mm = 8;

/** Former sizes, until each room has moved to those above. */
export const SMALL: Mm = 2.2;
export const PLAIN: Mm = 2.8;
export const LARGE: Mm = 4;

/** From one base line to the next, in ems: close where words share a leaf with its lines, open where a page is read. */
const PITCH = { close: 1.25, open: 1.4 } as const;

function points(size: number): Mm {
  return (size * 25.4) / 72;
}

/** The way words run: to the right (0), upwards (1) or downwards (3). */
export type Turn = 0 | 1 | 3;

/** A run of words. `at` is the left end of its base line before it is turned. */
export function words(text: Said, fact: FactName, size: Mm, at: Point, turn: Turn = 0): Words {
  return { kind: 'words', purpose: 'words', text, fact, size, at, turn };
}

/** Lines of one size that state one fact, set close, one under the other, their left ends in line. */
export interface Block {
  readonly fact: FactName;
  /** It goes on with words that stand beside it. */
  readonly more?: true;
  readonly lines: readonly Said[];
  readonly size: Mm;
}

/** How wide and high a block is before it is turned, with room for accents and tails. */
export function extentOf({ lines, size }: Pick<Block, 'lines' | 'size'>): {
  readonly width: Mm;
  readonly height: Mm;
} {
  if (lines.length === 0) return { width: 0, height: 0 };
  const width = Math.max(...lines.map((line) => widthOf(line, size)));
  return { width, height: ((lines.length - 1) * PITCH.close + ASCENT + DESCENT) * size };
}

/** A block as marks, its turned box's lower left corner at (left, bottom). */
export function lettered(block: Block, left: Mm, bottom: Mm, turn: Turn = 0): Mark[] {
  const { width, height } = extentOf(block);
  const { size, fact, more = false } = block;
  return block.lines.map((text, i) => {
    const down = (ASCENT + i * PITCH.close) * size;
    const at = {
      0: { x: left, y: bottom + height - down },
      1: { x: left + down, y: bottom },
      3: { x: left + height - down, y: bottom + width },
    }[turn];
    return continued(words(text, fact, size, at, turn), more || i > 0);
  });
}

/** One line of any size, set open, under others. */
export interface TextLine {
  readonly text: Said;
  readonly fact: FactName;
  /** It goes on with the line before it. */
  readonly more?: true;
  readonly size: Mm;
}

/** A text in lines of one size, no wider than `width`. */
export function linesOf(text: Said, fact: FactName, size: Mm, width: Mm): TextLine[] {
  return textLines(broken(text, size, width), fact, size);
}

/** Lines that one text was broken into. */
export function textLines(lines: readonly Said[], fact: FactName, size: Mm): TextLine[] {
  return lines.map((text, i) => ({ text, fact, size, ...(i > 0 && { more: true }) }));
}

/** Height of lines set under one another, mm. */
export function heightOf(lines: readonly Pick<TextLine, 'size'>[], pitch: keyof typeof PITCH = 'open'): Mm {
  return lines.reduce((sum, { size }) => sum + size * PITCH[pitch], 0);
}

/** Lines set under one another from `topLeft` down. */
export function setLines(
  lines: readonly TextLine[],
  topLeft: Point,
  pitch: keyof typeof PITCH = 'open',
): Words[] {
  return lines.map(({ text, fact, size, more = false }, index) => {
    const foot = topLeft.y - heightOf(lines.slice(0, index + 1), pitch);
    return continued(words(text, fact, size, { x: topLeft.x, y: foot + DESCENT * size }), more);
  });
}

function continued(mark: Words, more: boolean): Words {
  return more ? { ...mark, more } : mark;
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

/** The same marks, their words telling of this where they do not yet say more closely of what. */
export function tellingOf(subject: Subject, marks: readonly Mark[]): Mark[] {
  return marks.map((mark) => (mark.kind === 'words' ? { ...mark, of: { ...subject, ...mark.of } } : mark));
}
