import type { Subject } from '../../draw/facts.ts';
import type { End, EndName } from '../../job/job.ts';
import { tubeFactsOf } from '../../job/sections.ts';
import { csvCell } from '../../measure/csv.ts';
import { partOf, type Said } from '../../measure/said.ts';
import { sawLength, tapeLength } from '../../measure/saw-length.ts';
import { type Angle, degrees, type Length, MM_PER_INCH, type Mm, type Radians } from '../../measure/units.ts';
import type { Hand, TubeSolution } from '../../saddle/solve.ts';
import type { Language } from '../../words/language.ts';
import { asWritten, endedLines, inColumn, joined } from '../../words/said.ts';
import { type BendJob, bendJobOf, elbowsOf, type PieceKind } from '../bend-pieces.ts';
import { handsOf } from '../piece.ts';
import { landingInWords } from './header-key.ts';

/** One tube of one hand as it is cut. What is not known is left out. Lengths in mm, angles in radians. */
export interface CutRow {
  readonly tube: Said;
  readonly hand: Hand;
  /** There is a row of the other hand too. */
  readonly pair: boolean;
  /** Which of the pieces that the tube is put together from. */
  readonly piece?: PieceKind;
  /** Of this hand. */
  readonly copies: number;
  /** `31.75 mm (1-1/4 in, 1.250)`. */
  readonly size: Said;
  readonly wall?: Length;
  readonly blank?: Mm;
  /** Why it has none. */
  readonly lengthless?: Lengthless;
  /** Long point to long point. */
  readonly overall?: Mm;
  /** Work point to work point. */
  readonly between?: Mm;
  readonly ends: { readonly A?: EndRow; readonly B?: EndRow };
  readonly twist?: Radians;
}

export interface EndRow {
  /** `onto 38.1 mm (1-1/2 in, 1.500)`, or that it is cut off square. */
  readonly onto: Said;
  /** One for each header; none where it is cut off square. */
  readonly angles: readonly Angle[];
  /** It meets another end of the same tube: its saw is set off square. */
  readonly mitred?: boolean;
}

/** Why a tube has no length: it is marked at the frame, or the job does not give one. */
export type Lengthless = 'marked' | 'unset';

/**
 * The cut list of a job, in its order, each opposite hand after its twin; of a bend that is made of pieces, and of an elbow behind its
 * first one, a row for each kind of them.
 */
export function cutList(solutions: readonly TubeSolution[], words: Language): readonly CutRow[] {
  return solutions.flatMap((solution) => {
    const bend = bendJobOf(solution);
    if (bend) return bendRows(solution, bend, words);
    return [tubeRow(solution, words), ...elbowsOf(solution).flatMap((job) => bendRows(solution, job, words))];
  });
}

/** A blank to saw, for paper: what else is known of its tube is on its ticket. */
export interface BlankRow {
  readonly of: Subject;
  readonly name: Said;
  readonly size: Said;
  readonly copies: number;
  /** In words, or why it has none. */
  readonly blank: Said;
}

/** The blanks of a job in its order, those of both hands together. */
export function blankRows(
  solutions: readonly TubeSolution[],
  units: 'mm' | 'in',
  words: Language,
): readonly BlankRow[] {
  const { cut } = words.lists;
  const own = solutions.filter(({ hand }) => hand === 'as-drawn');
  return own.flatMap((solution) => {
    const { name, section, wall } = solution.tube;
    return cutList([solution], words).map((row) => ({
      of: { tube: name },
      name: cut.name(row.tube, row.piece),
      size: cut.size(tubeFactsOf(section).said(words).brief, wall),
      copies: row.copies * handsOf(solution.tube),
      blank: cut.blankOf(row, units),
    }));
  });
}

function tubeRow(solution: TubeSolution, words: Language): CutRow {
  const { tube, lengths, twist } = solution;
  const row = (name: EndName): { [end in EndName]?: EndRow } => {
    const end = tube.ends[name];
    return end ? { [name]: endRow(end, words) } : {};
  };
  return {
    ...whatOf(solution, words),
    copies: tube.copies,
    ...(lengths
      ? { blank: lengths.blank, overall: lengths.overall, between: lengths.between }
      : { lengthless: lengthless(solution) }),
    ends: { ...row('A'), ...row('B') },
    ...(twist !== undefined && { twist }),
  };
}

function bendRows(solution: TubeSolution, { cope, pieces }: BendJob, words: Language): readonly CutRow[] {
  const mitred = endRow(cope.end, words);
  return pieces.map(({ kind, count, blank, long, centre }) => ({
    ...whatOf(solution, words),
    piece: kind,
    copies: count * solution.tube.copies,
    blank,
    overall: long,
    between: centre,
    ends: { A: mitred, B: kind === 'middle' ? mitred : squareRow(words) },
    ...(kind === 'middle' && { twist: 0 }),
  }));
}

function whatOf(
  { tube, hand }: TubeSolution,
  words: Language,
): Pick<CutRow, 'tube' | 'hand' | 'pair' | 'size' | 'wall'> {
  return {
    tube: asWritten(tube.name),
    hand,
    pair: tube.pair,
    size: tubeFactsOf(tube.section).said(words).words,
    ...(tube.wall && { wall: tube.wall }),
  };
}

export function lengthless({ ends }: Pick<TubeSolution, 'ends'>): Lengthless {
  return ends.A && ends.B ? 'marked' : 'unset';
}

function squareRow(words: Language): EndRow {
  return { onto: words.lists.cut.square, angles: [] };
}

function endRow(end: End, words: Language): EndRow {
  if (end.kind === 'plain') return squareRow(words);
  const angles = end.parts.map(({ angle }) => angle);
  const mitred = end.parts.every(({ onto }) => onto.kind === 'mitre');
  return { onto: landingInWords(end, words), angles, ...(mitred && { mitred }) };
}

/**
 * As JSON data: mm and degrees. Lengths are what paper has, on a mark of the job's tape, and `blankExact`, `overallExact` and
 * `betweenExact` what was computed.
 */
export function cutListAsData(rows: readonly CutRow[], units: 'mm' | 'in'): object[] {
  return rows.map(({ tube, piece, hand, copies, size, wall, blank, overall, between, ends, twist }) => ({
    name: tube,
    ...(piece && { piece: pieceAsData(piece) }),
    hand,
    copies,
    size,
    ...(wall && { wall: wall.mm }),
    ...(blank !== undefined && { blank: clean(sawLength(blank, units)), blankExact: blank }),
    ...(overall !== undefined && { overall: clean(tapeLength(overall, units)), overallExact: overall }),
    ...(between !== undefined && { between: clean(tapeLength(between, units)), betweenExact: between }),
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

/** What a piece is called in data. */
export function pieceAsData(kind: PieceKind): string {
  return `${kind} piece`;
}

/** To ten digits: what the radians lose in the last ones would only distract. */
function degreesOf(rad: Radians): number {
  return Number(degrees(rad).toFixed(10)) + 0;
}

/**
 * As CSV (RFC 4180), one header line that says the job's unit, and degrees; lengths as paper has them and beside them
 * exactly. Several angles of one end stand with a `+` between them.
 */
export function cutListAsCsv(rows: readonly CutRow[], units: 'mm' | 'in'): string {
  const number = (mm: Mm | undefined): string => (mm === undefined ? '' : inUnits(mm, units));
  const onTape = (mm: Mm | undefined, marked: typeof tapeLength): readonly string[] =>
    mm === undefined ? ['', ''] : [number(marked(mm, units)), number(mm)];
  const lines = rows.map((row) =>
    [
      row.piece ? `${row.tube}, ${pieceAsData(row.piece)}` : row.tube,
      row.hand,
      `${row.copies}`,
      row.size,
      number(row.wall?.mm),
      ...onTape(row.blank, sawLength),
      ...onTape(row.overall, tapeLength),
      ...onTape(row.between, tapeLength),
      angleCell(row.ends.A),
      angleCell(row.ends.B),
      row.twist === undefined ? '' : `${degreesOf(row.twist)}`,
    ]
      .map(csvCell)
      .join(','),
  );
  const keys = ['wall', ...['blank', 'overall', 'between'].flatMap((key) => [key, `${key} exact`])];
  const lengths = keys.map((key) => `${key} (${units})`);
  const heads = ['tube', 'hand', 'copies', 'size', ...lengths, 'angleA', 'angleB', 'twist'];
  return `${[heads.join(','), ...lines].join('\n')}\n`;
}

/** Without what a division leaves in the last bits: 1.25, not 1.2500000000000002. */
function clean(length: number): number {
  return Number(length.toFixed(9)) + 0;
}

function inUnits(mm: Mm, units: 'mm' | 'in'): string {
  return `${clean(units === 'mm' ? mm : mm / MM_PER_INCH)}`;
}

function angleCell(end: EndRow | undefined): string {
  if (!end) return '';
  return end.angles.length === 0 ? 'square' : end.angles.map(({ rad }) => degreesOf(rad)).join('+');
}

/** How a list is read. */
export function listNote(rows: readonly CutRow[], units: 'mm' | 'in', words: Language): Said {
  return words.lists.cut.lineNote(
    units,
    rows.some(({ pair }) => pair),
  );
}

/** As a table of a terminal, in the job's units. */
export function cutListAsText(rows: readonly CutRow[], units: 'mm' | 'in', words: Language): Said {
  const { cut } = words.lists;
  const table = [cut.columns, ...rows.map((row) => cut.line(row, units))];
  const widths = cut.columns.map((_, i) => Math.max(...table.map((row) => [...(row[i] ?? '')].length)));
  const lines = table.map((row) => {
    const line = joined(
      row.map((cell, i) => inColumn(cell, widths[i] ?? 0, i === 2 || i > 3 ? 'right' : 'left')),
      '  ',
    );
    return partOf(line, line.trimEnd());
  });
  return endedLines([listNote(rows, units, words), asWritten(''), ...lines]);
}
