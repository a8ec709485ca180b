import { readLength } from '../../measure/length.ts';
import { type Reading, refused, taken } from '../../measure/reading.ts';
import type { Length, Mm } from '../../measure/units.ts';
import { isMetric, lengthAsWritten } from '../../measure/write.ts';
import type { Wording } from '../../words/language.ts';
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

/** ISO 216, ANSI/ASME Y14.1 (letter, tabloid), and the sizes United States offices and architects use beside them: from memory. */
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

export const PAPER_NAMES = PAPERS.map((paper) => paper.name);

/**
 * Reads a paper's name in any case, WIDTHxHEIGHT such as `300x400mm` or `11x17in`, or a roll's width as in `roll 610mm`;
 * bare numbers take `bareUnit`. Does not throw.
 */
export function readPaper(text: string, bareUnit: 'mm' | 'in'): Reading<Paper, Wording> {
  const read = text.trim();
  const name = read.toLowerCase().replace(/[\s_]+/g, '-');
  const known = PAPERS.find((paper) => paper.name.toLowerCase() === name);
  if (known) return taken(known);
  if (/^roll\b/iu.test(read)) return readRoll(read, read.slice('roll'.length).trim(), bareUnit);
  const sides = sidesIn(read);
  if (sides) return readSides(read, ...sides, bareUnit);
  const close = nearest(name, PAPER_NAMES);
  return refused(read, ({ paper }) => paper.notKnown(close, PAPER_NAMES));
}

/** What stands before and behind the last `x` between two numbers. */
function sidesIn(read: string): [across: string, up: string] | undefined {
  const ends = Array.from(read.matchAll(/\d[^\dx×]*[x×]/giu), ({ index, 0: { length } }) => index + length);
  const lastDigit = read.search(/\d\D*$/);
  const end = ends.findLast((each) => each <= lastDigit);
  return end === undefined ? undefined : [read.slice(0, end - 1).trim(), read.slice(end).trim()];
}

function readRoll(read: string, wide: string, bareUnit: 'mm' | 'in'): Reading<Paper, Wording> {
  const width = readLength(wide, bareUnit);
  if (!width.ok) {
    return refused(read, ({ faults, paper }) => paper.roll.misread(faults.said(width.fault).why));
  }
  const { mm } = width.value;
  if (mm <= 0) return refused(read, ({ paper }) => paper.roll.tooNarrow());
  if (mm > LONGEST_SIDE) return refused(read, ({ paper }) => paper.roll.tooWide(LONGEST_SIDE));
  return taken({ name: `roll ${lengthAsWritten(width.value)}`, width: mm, height: LONGEST_SIDE, roll: true });
}

function readSides(read: string, across: string, up: string, bareUnit: 'mm' | 'in'): Reading<Paper, Wording> {
  const height = readLength(up, bareUnit);
  if (!height.ok) return refused(read, ({ faults }) => faults.said(height.fault));
  const unit = /[\p{L}"'′″”]$/u.test(across) ? '' : (up.split(/[^\p{L}"'′″”.]/u).at(-1) ?? '');
  const width = readLength(across + unit, bareUnit);
  if (!width.ok) return refused(read, ({ faults }) => faults.said(width.fault));
  const [short = 0, long = 0] = [width.value.mm, height.value.mm].sort((a, b) => a - b);
  if (short <= 0) return refused(read, ({ paper }) => paper.noSides());
  if (long > LONGEST_SIDE) return refused(read, ({ paper }) => paper.pageTooLong(LONGEST_SIDE));
  return taken({ name: read, width: short, height: long });
}

/**
 * What is wrong where the margins leave too little of the paper, upright. What a printer draws short is drawn larger, which
 * takes of the room too.
 */
export function tooSmall(
  paper: Paper,
  margins: { readonly left: Length; readonly right: Length; readonly top: Length; readonly bottom: Length },
  printer?: Printer,
): Wording | undefined {
  const width = (paper.width - margins.left.mm - margins.right.mm) * Math.min(1, printer?.across.factor ?? 1);
  const height = (paper.height - margins.top.mm - margins.bottom.mm) * Math.min(1, printer?.up.factor ?? 1);
  if (width >= LEAST_PRINTABLE - 1e-9 && height >= LEAST_PRINTABLE - 1e-9) return undefined;
  // In the unit in which a margin is written.
  const units = Object.values(margins).every(({ unit }) => isMetric(unit)) ? 'mm' : 'in';
  return (words) =>
    words.paper.tooSmall(Math.max(0, width), Math.max(0, height), paper.name, LEAST_PRINTABLE, units);
}
