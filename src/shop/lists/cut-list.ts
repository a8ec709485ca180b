import type { End, EndName } from '../../job/job.ts';
import { tubeFactsOf } from '../../job/sections.ts';
import { twistInWords } from '../../leaf/card/twist-words.ts';
import { sawLength } from '../../measure/saw-length.ts';
import type { Angle, Length, Mm, Radians } from '../../measure/units.ts';
import { degrees, MM_PER_INCH } from '../../measure/units.ts';
import { inchFraction, millimetres, writeAngle } from '../../measure/write.ts';
import type { Hand, TubeSolution } from '../../saddle/solve.ts';
import { type BendJob, bendJobOf } from '../bend-pieces.ts';
import { landingInWords } from './header-key.ts';

/** One tube of one hand as it is cut. What is not known is left out. Lengths in mm, angles in radians. */
export interface CutRow {
  readonly tube: string;
  readonly hand: Hand;
  /** There is a row of the other hand too. */
  readonly pair: boolean;
  /** Which of the pieces that the tube is put together from. */
  readonly piece?: string;
  /** Of this hand. */
  readonly copies: number;
  /** `31.75 mm (1-1/4 in, 1.250)`. */
  readonly size: string;
  readonly wall?: Length;
  readonly blank?: Mm;
  /** Why it has none. */
  readonly lengthless?: string;
  /** Long point to long point. */
  readonly overall?: Mm;
  /** Work point to work point. */
  readonly between?: Mm;
  readonly ends: { readonly A?: EndRow; readonly B?: EndRow };
  readonly twist?: Radians;
}

export interface EndRow {
  /** `onto 38.1 mm (1-1/2 in, 1.500)`, or that it is cut off square. */
  readonly onto: string;
  /** One for each header; none where it is cut off square. */
  readonly angles: readonly Angle[];
  /** It meets another end of the same tube: its saw is set off square. */
  readonly mitred?: boolean;
}

/**
 * The cut list of a job, in its order, each opposite hand after its twin; of a bend that is made of pieces a row for each
 * kind of them.
 */
export function cutList(solutions: readonly TubeSolution[]): readonly CutRow[] {
  return solutions.flatMap((solution) => {
    const bend = bendJobOf(solution);
    return bend ? bendRows(solution, bend) : [tubeRow(solution)];
  });
}

function tubeRow(solution: TubeSolution): CutRow {
  const { tube, lengths, twist } = solution;
  const row = (name: EndName): { [end in EndName]?: EndRow } => {
    const end = tube.ends[name];
    return end ? { [name]: endRow(end) } : {};
  };
  return {
    ...whatOf(solution),
    copies: tube.copies,
    ...(lengths
      ? { blank: lengths.blank, overall: lengths.overall, between: lengths.between }
      : { lengthless: lengthless(solution) }),
    ends: { ...row('A'), ...row('B') },
    ...(twist !== undefined && { twist }),
  };
}

function bendRows(solution: TubeSolution, { cope, pieces }: BendJob): readonly CutRow[] {
  const mitred = endRow(cope.end);
  return pieces.map(({ name, count, blank, long, centre }) => ({
    ...whatOf(solution),
    piece: name,
    copies: count * solution.tube.copies,
    blank,
    overall: long,
    between: centre,
    ends: { A: mitred, B: name === 'middle piece' ? mitred : SQUARE },
    ...(name === 'middle piece' && { twist: 0 }),
  }));
}

function whatOf({ tube, hand }: TubeSolution): Pick<CutRow, 'tube' | 'hand' | 'pair' | 'size' | 'wall'> {
  return {
    tube: tube.name,
    hand,
    pair: tube.pair,
    size: tubeFactsOf(tube.section).words,
    ...(tube.wall && { wall: tube.wall }),
  };
}

/** Why a tube has no length in the lists: it is marked at the frame, or the job does not give one. */
export function lengthless({ ends }: Pick<TubeSolution, 'ends'>): 'marked at the frame' | 'not given' {
  return ends.A && ends.B ? 'marked at the frame' : 'not given';
}

const SQUARE: EndRow = { onto: 'cut square', angles: [] };

function endRow(end: End): EndRow {
  if (end.kind === 'plain') return SQUARE;
  const angles = end.parts.map(({ angle }) => angle);
  const mitred = end.parts.every(({ onto }) => onto.kind === 'mitre');
  return { onto: landingInWords(end), angles, ...(mitred && { mitred }) };
}

/** A tube's name, and which of its pieces. */
export function rowName({ tube, piece }: { tube: string; piece?: string | undefined }): string {
  return piece ? `${tube}, ${piece}` : tube;
}

/**
 * `62°`; of several headers `62° + 48°`; of a mitre what the saw is set to, `mitre 11.25°`; `square` where it is cut so; empty
 * where the end is not asked for.
 */
export function anglesInWords(end: EndRow | undefined): string {
  if (!end) return '';
  if (end.angles.length === 0) return 'square';
  const saw = (rad: Radians): string =>
    end.mitred ? `mitre ${writeAngle(Math.PI / 2 - rad)}` : writeAngle(rad);
  return end.angles.map(({ rad }) => saw(rad)).join(' + ');
}

/** A length in the job's unit, without it, as the tickets have it: `512.34`, `20-5/32`. */
export function lengthInWords(mm: Mm | undefined, units: 'mm' | 'in'): string {
  if (mm === undefined) return '';
  return units === 'mm' ? millimetres(mm) : inchFraction(mm);
}

/** A blank as it is sawn, never short: `512.5`; or why it has no length. */
export function blankInWords({ blank, lengthless }: CutRow, units: 'mm' | 'in'): string {
  if (blank === undefined) return lengthless === 'marked at the frame' ? 'marked' : 'not given';
  const sawn = sawLength(blank, units);
  return units === 'mm' ? sawn.toFixed(1) : inchFraction(sawn);
}

export function handInWords(hand: Hand): string {
  return hand === 'opposite' ? 'opposite hand' : 'as drawn';
}

/** As JSON data: mm and degrees. */
export function cutListAsData(rows: readonly CutRow[]): object[] {
  return rows.map(({ tube, piece, hand, copies, size, wall, blank, overall, between, ends, twist }) => ({
    name: tube,
    ...(piece && { piece }),
    hand,
    copies,
    size,
    ...(wall && { wall: wall.mm }),
    ...(blank !== undefined && { blank, overall, between }),
    ...(twist !== undefined && { twist: degreesOf(twist) }),
    ends: Object.fromEntries(
      (['A', 'B'] as const).flatMap((name) => {
        const end = ends[name];
        if (!end) return [];
        return [[name, { onto: end.onto, angles: end.angles.map(({ rad }) => degreesOf(rad)) }]];
      }),
    ),
  }));
}

/** To ten digits: what the radians lose in the last ones would only distract. */
function degreesOf(rad: Radians): number {
  return Number(degrees(rad).toFixed(10)) + 0;
}

/** As CSV (RFC 4180), one header line, mm and degrees; several angles of one end stand with a `+` between them. */
export function cutListAsCsv(rows: readonly CutRow[]): string {
  const lines = rows.map((row) =>
    [
      rowName(row),
      row.hand,
      `${row.copies}`,
      row.size,
      number(row.wall?.mm),
      number(row.blank),
      number(row.overall),
      number(row.between),
      angleCell(row.ends.A),
      angleCell(row.ends.B),
      row.twist === undefined ? '' : `${degreesOf(row.twist)}`,
    ]
      .map(csvText)
      .join(','),
  );
  return `${['tube,hand,copies,size,wall,blank,overall,between,angleA,angleB,twist', ...lines].join('\n')}\n`;
}

function number(mm: Mm | undefined): string {
  return mm === undefined ? '' : `${mm}`;
}

function angleCell(end: EndRow | undefined): string {
  if (!end) return '';
  return end.angles.length === 0 ? 'square' : end.angles.map(({ rad }) => degreesOf(rad)).join('+');
}

function csvText(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

const LENGTH_NOTE = {
  mm: 'Lengths in mm; blanks up to the next half.',
  in: 'Lengths in inches; blanks up to the next 32nd.',
} as const;

/** How a list is read. */
export function listNote(rows: readonly CutRow[], units: 'mm' | 'in'): string {
  const hands = rows.some(({ pair }) => pair) ? 'The number is of each hand; angles' : 'Angles';
  return `${LENGTH_NOTE[units]} ${hands} are to the header.`;
}

/** What a finished tube's two lengths go between, as on its ticket. */
export const LENGTHS = ['long points', 'work points'] as const;

/** As a table of a terminal, in the job's units. */
export function cutListAsText(rows: readonly CutRow[], units: 'mm' | 'in'): string {
  const heads = ['tube', 'hand', 'number', 'size', 'wall', 'blank', ...LENGTHS, 'A', 'B', 'twist'];
  const cells = rows.map((row) => [
    rowName(row),
    handInWords(row.hand),
    `${row.copies}`,
    row.size,
    row.wall ? (units === 'mm' ? millimetres(row.wall.mm) : (row.wall.mm / MM_PER_INCH).toFixed(3)) : '',
    blankInWords(row, units),
    lengthInWords(row.overall, units),
    lengthInWords(row.between, units),
    anglesInWords(row.ends.A),
    anglesInWords(row.ends.B),
    row.twist === undefined ? '' : twistInWords(row.twist),
  ]);
  const widths = heads.map((head, i) =>
    Math.max(...[[...head], ...cells.map((row) => [...(row[i] ?? '')])].map((text) => text.length)),
  );
  const lines = [heads, ...cells].map((row) =>
    row
      .map((cell, i) => (i === 2 || i > 3 ? cell.padStart(widths[i] ?? 0) : cell.padEnd(widths[i] ?? 0)))
      .join('  ')
      .trimEnd(),
  );
  return [listNote(rows, units), '', ...lines, ''].join('\n');
}
