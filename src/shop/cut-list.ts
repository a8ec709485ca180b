import type { End, EndName } from '../job/job.ts';
import { sectionInWords } from '../job/shape.ts';
import type { Angle, Length, Mm, Radians } from '../measure/units.ts';
import { degrees, MM_PER_INCH } from '../measure/units.ts';
import { inchFraction, millimetres, writeAngle } from '../measure/write.ts';
import type { Hand, TubeSolution } from '../saddle/solve.ts';
import { settingOf } from './header-key.ts';

/** One tube of one hand as it is cut. What is not known is left out. Lengths in mm, angles in radians. */
export interface CutRow {
  readonly tube: string;
  readonly hand: Hand;
  /** There is a row of the other hand too. */
  readonly pair: boolean;
  /** Of this hand. */
  readonly copies: number;
  /** `31.75 mm (1-1/4 in, 1.250)`. */
  readonly size: string;
  readonly wall?: Length;
  readonly blank?: Mm;
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
}

/** The cut list of a job, in its order, each opposite hand after its twin. */
export function cutList(solutions: readonly TubeSolution[]): readonly CutRow[] {
  return solutions.map(({ tube, hand, lengths, twist }) => {
    const row = (name: EndName): { [end in EndName]?: EndRow } => {
      const end = tube.ends[name];
      return end ? { [name]: endRow(end) } : {};
    };
    return {
      tube: tube.name,
      hand,
      pair: tube.pair,
      copies: tube.copies,
      size: sectionInWords(tube.section),
      ...(tube.wall && { wall: tube.wall }),
      ...(lengths && { blank: lengths.blank, overall: lengths.overall, between: lengths.between }),
      ends: { ...row('A'), ...row('B') },
      ...(twist !== undefined && { twist }),
    };
  });
}

function endRow(end: End): EndRow {
  const angles = end.kind === 'plain' ? [] : end.parts.map(({ angle }) => angle);
  return { onto: settingOf(end).name, angles };
}

/** `62°`; of several headers `62° + 48°`; `square` where it is cut off so; empty where the end is not asked for. */
export function anglesInWords(end: EndRow | undefined): string {
  if (!end) return '';
  return end.angles.length === 0 ? 'square' : end.angles.map(({ rad }) => writeAngle(rad)).join(' + ');
}

/** A length in the job's unit, without it: `512.3`, `20-5/32`. */
export function lengthInWords(mm: Mm | undefined, units: 'mm' | 'in'): string {
  if (mm === undefined) return '';
  return units === 'mm' ? (Math.round(mm * 10) / 10).toFixed(1) : inchFraction(mm);
}

export function handInWords(hand: Hand): string {
  return hand === 'opposite' ? 'opposite hand' : 'as drawn';
}

/** As JSON data: mm and degrees. */
export function cutListAsData(rows: readonly CutRow[]): object[] {
  return rows.map(({ tube, hand, copies, size, wall, blank, overall, between, ends, twist }) => ({
    name: tube,
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
      row.tube,
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

/** As a table of a terminal, in the job's units. */
export function cutListAsText(rows: readonly CutRow[], units: 'mm' | 'in'): string {
  const heads = ['tube', 'hand', 'number', 'size', 'wall', 'blank', 'overall', 'between', 'A', 'B', 'twist'];
  const cells = rows.map((row) => [
    row.tube,
    handInWords(row.hand),
    `${row.copies}`,
    row.size,
    row.wall ? (units === 'mm' ? millimetres(row.wall.mm) : (row.wall.mm / MM_PER_INCH).toFixed(3)) : '',
    lengthInWords(row.blank, units),
    lengthInWords(row.overall, units),
    lengthInWords(row.between, units),
    anglesInWords(row.ends.A),
    anglesInWords(row.ends.B),
    row.twist === undefined ? '' : writeAngle(row.twist),
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
  return [`Lengths in ${units === 'in' ? 'inches' : 'mm'}; number is of each hand.`, '', ...lines, ''].join(
    '\n',
  );
}
