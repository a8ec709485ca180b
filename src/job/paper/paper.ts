import { readLength } from '../../measure/length.ts';
import { type Reading, refused, taken } from '../../measure/misreading.ts';
import type { Length, Mm } from '../../measure/units.ts';
import { lengthAsWritten, millimetres } from '../../measure/write.ts';
import { nearest } from '../text/nearest.ts';
import type { Printer } from './printer.ts';

/** A sheet of paper in its portrait orientation. */
export interface Paper {
  readonly name: string;
  readonly width: Mm;
  readonly height: Mm;
  /** Paper off a roll of this width: a page is as long as what lies on it needs, up to `height`. */
  readonly roll?: true;
}

/** ISO 216, ANSI/ASME Y14.1 (letter, tabloid), and the sizes United States offices and architects use beside them. */
export const PAPERS: readonly Paper[] = [
  { name: 'letter', width: 215.9, height: 279.4 },
  { name: 'A4', width: 210, height: 297 },
  { name: 'legal', width: 215.9, height: 355.6 },
  { name: 'tabloid', width: 279.4, height: 431.8 },
  { name: 'A3', width: 297, height: 420 },
  { name: 'A2', width: 420, height: 594 },
  { name: 'A0', width: 841, height: 1189 },
  { name: 'arch-d', width: 609.6, height: 914.4 },
];

/** What the printable area has to hold each way, so that the 100 mm and 4 in bars find room. */
export const LEAST_PRINTABLE: Mm = 110;

/** ISO 32000-1 Annex C: 14,400 units of 1/72 in is the longest side a page may have. */
const LONGEST_SIDE: Mm = 5080;

/** What a person can write for a paper. */
export const PAPERS_IN_WORDS = `${PAPERS.map((paper) => paper.name).join(', ')}, its size as in 300x400mm, or a roll as in roll 610mm`;

/**
 * Reads a paper's name in any case, WIDTHxHEIGHT such as `300x400mm` or `11x17in`, or a roll's width as in `roll 610mm`;
 * bare numbers take `bareUnit`. Does not throw.
 */
export function readPaper(text: string, bareUnit: 'mm' | 'in'): Reading<Paper> {
  const read = text.trim();
  const name = read.toLowerCase().replace(/[\s_]+/g, '-');
  const known = PAPERS.find((paper) => paper.name.toLowerCase() === name);
  if (known) return taken(known);
  const roll = /^roll\b\s*(.*)$/iu.exec(read);
  if (roll) return readRoll(read, roll[1] ?? '', bareUnit);
  const sides = /^(.*\d.*?)\s*[x×]\s*(.*\d.*)$/iu.exec(read);
  if (sides) return readSides(read, sides[1] ?? '', sides[2] ?? '', bareUnit);
  const close = nearest(
    name,
    PAPERS.map((paper) => paper.name),
  );
  return refused(
    read,
    'no paper of that name is known',
    close === undefined ? PAPERS_IN_WORDS : `${close}? Known are ${PAPERS_IN_WORDS}`,
  );
}

function readRoll(read: string, wide: string, bareUnit: 'mm' | 'in'): Reading<Paper> {
  const width = readLength(wide, bareUnit);
  const instead = 'the width of the roll, as in roll 610mm or roll 24in';
  if (!width.ok) return refused(read, width.why, instead);
  const { mm } = width.value;
  if (mm <= 0) return refused(read, 'a roll is wider than 0', instead);
  if (mm > LONGEST_SIDE) return refused(read, `a PDF page is at most ${LONGEST_SIDE} mm wide`, instead);
  return taken({ name: `roll ${lengthAsWritten(width.value)}`, width: mm, height: LONGEST_SIDE, roll: true });
}

function readSides(read: string, across: string, up: string, bareUnit: 'mm' | 'in'): Reading<Paper> {
  const height = readLength(up, bareUnit);
  if (!height.ok) return refused(read, height.why, height.instead);
  const unit = /[\p{L}"'′″”]\s*$/u.test(across) ? '' : (/[\p{L}"'′″”.]+\s*$/u.exec(up)?.[0] ?? '');
  const width = readLength(across + unit, bareUnit);
  if (!width.ok) return refused(read, width.why, width.instead);
  const [short = 0, long = 0] = [width.value.mm, height.value.mm].sort((a, b) => a - b);
  if (short <= 0) return refused(read, 'a sheet has two sides longer than 0', 'a size such as 300x400mm');
  if (long > LONGEST_SIDE) return refused(read, 'a PDF page is at most 5080 mm long', 'a smaller paper');
  return taken({ name: read, width: short, height: long });
}

/**
 * Why the margins leave too little of the paper, upright, if they do. What a printer draws short is drawn larger, which
 * takes of the room too.
 */
export function tooSmall(
  paper: Paper,
  margins: { readonly left: Length; readonly right: Length; readonly top: Length; readonly bottom: Length },
  printer?: Printer,
): string | undefined {
  const width = (paper.width - margins.left.mm - margins.right.mm) * Math.min(1, printer?.across.factor ?? 1);
  const height = (paper.height - margins.top.mm - margins.bottom.mm) * Math.min(1, printer?.up.factor ?? 1);
  if (width >= LEAST_PRINTABLE - 1e-9 && height >= LEAST_PRINTABLE - 1e-9) return undefined;
  const left = `${millimetres(Math.max(0, width))} x ${millimetres(Math.max(0, height))} mm`;
  return `the margins leave ${left} of ${paper.name} to print on, and ${LEAST_PRINTABLE} mm each way are needed`;
}
