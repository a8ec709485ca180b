import Papa from 'papaparse';
import { inMm, LONGEST_MM, readLength } from '../../measure/length.ts';
import { taken } from '../../measure/reading.ts';
import type { Mm } from '../../measure/units.ts';
import { asWritten, type Objection } from '../../words/said.ts';
import {
  type DrawnLine,
  type DrawnLines,
  type LinesDesk,
  MOST_LINES,
  plainNumber,
  refuseLine,
  withZUp,
  writtenUnit,
} from './drawn-line.ts';
import { safeName } from './line-names.ts';
import { type SizeReader, sizeReader } from './line-size.ts';

const PLACES = ['x1', 'y1', 'z1', 'x2', 'y2', 'z2'] as const;
const COLUMNS: readonly string[] = ['name', ...PLACES, 'od', 'wall'];

/** A row of the table: its cells by their columns, and its line in the file. */
interface Row {
  readonly line: number;
  readonly text: string;
  cell(column: string): string;
}

/** Reads lines from a table (RFC 4180, or with semicolons and decimal commas). Throws `Refusal` with its first mistake. */
export function linesOfCsv(source: string, desk: LinesDesk): DrawnLines {
  const { words } = desk;
  const { rows, unknown } = tableOf(source.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n'), desk);
  const sizeOf = sizeReader(writtenUnit(desk.units ?? 'mm'), words);
  const lines = rows.map((row) => lineOfRow(row, desk, sizeOf));
  const told = unknown.length > 0 ? [words.lines.unknownColumns(unknown.map(asWritten))] : [];
  return { lines, told, units: desk.units ?? 'mm' };
}

function tableOf(source: string, desk: LinesDesk): { rows: readonly Row[]; unknown: readonly string[] } {
  const firstLine = /^.*/.exec(source.trimStart())?.[0] ?? '';
  const delimiter = [';', '\t'].find((sign) => firstLine.includes(sign)) ?? ',';
  const [head, ...body] = placedCells(source, delimiter, desk);
  const words = desk.words.lines;
  if (!head) return refuseLine(desk, 1, 'empty', '', words.noLines);
  const columns = head.cells.map((cell) => cell.trim().toLowerCase());
  const refuse = (code: string, objection: Objection): never =>
    refuseLine(desk, head.line, code, head.cells.join(delimiter), objection);
  const lacking = PLACES.find((column) => !columns.includes(column));
  if (lacking !== undefined) refuse('column', words.noColumn(lacking));
  const twice = COLUMNS.find((column) => columns.indexOf(column) !== columns.lastIndexOf(column));
  if (twice !== undefined) refuse('column', words.columnTwice(twice));
  if (body.length === 0) refuse('empty', words.noLines);
  if (body.length > MOST_LINES) refuse('too-large', words.tooManyLines(MOST_LINES));
  const placeOf = new Map(COLUMNS.map((column) => [column, columns.indexOf(column)]));
  const rows = body.map((cells) => rowOf(cells, { count: columns.length, placeOf }, delimiter, desk));
  return { rows, unknown: columns.filter((column) => column !== '' && !COLUMNS.includes(column)) };
}

interface PlacedCells {
  readonly line: number;
  readonly cells: readonly string[];
}

/** The rows that hold anything, each at its line: a cell in quotes may run over several. */
function placedCells(source: string, delimiter: string, desk: LinesDesk): readonly PlacedCells[] {
  const { data, errors } = Papa.parse<string[]>(source, { delimiter, newline: '\n' });
  let line = 1;
  const placed = data.map((cells): PlacedCells => {
    const at = line;
    line += 1 + cells.reduce((sum, cell) => sum + cell.split('\n').length - 1, 0);
    return { line: at, cells };
  });
  const quotes = errors.find(({ type }) => type === 'Quotes');
  const broken = quotes && placed[quotes.row ?? 0];
  if (broken)
    refuseLine(desk, broken.line, 'csv', broken.cells.join(delimiter), desk.words.lines.brokenQuotes);
  return placed.filter(({ cells }) => cells.some((cell) => cell.trim() !== ''));
}

/** How many columns a table has, and where each that is known stands; -1 where it does not. */
interface Columns {
  readonly count: number;
  readonly placeOf: ReadonlyMap<string, number>;
}

function rowOf(
  { line, cells }: PlacedCells,
  { count, placeOf }: Columns,
  delimiter: string,
  desk: LinesDesk,
): Row {
  const text = cells.join(delimiter);
  if (cells.slice(count).some((cell) => cell.trim() !== ''))
    refuseLine(desk, line, 'cells', text, desk.words.lines.tooManyCells(count));
  const cell = (column: string): string => {
    const own = (cells[placeOf.get(column) ?? -1] ?? '').trim();
    return delimiter !== ',' && column !== 'name' ? own.replace(',', '.') : own;
  };
  return { line, text, cell };
}

function lineOfRow(row: Row, desk: LinesDesk, sizeOf: SizeReader): DrawnLine {
  const [x1 = 0, y1 = 0, z1 = 0, x2 = 0, y2 = 0, z2 = 0] = PLACES.map((column) =>
    coordinate(row, column, desk),
  );
  const [od, wall] = [row.cell('od') || desk.od || '', row.cell('wall') || desk.wall || ''];
  const size = od === '' ? undefined : sizeOf(od, wall);
  if (size && !size.ok) refuseLine(desk, row.line, 'size', row.text, size.fault);
  const name = row.cell('name');
  return {
    name,
    label: desk.words.lines.csvLine(row.line, asWritten(safeName(name))),
    from: withZUp([x1, y1, z1], desk.isUp),
    to: withZUp([x2, y2, z2], desk.isUp),
    size: size?.value ?? '',
  };
}

/** As programs write numbers, or as people write lengths. */
function coordinate({ line, cell }: Row, column: string, desk: LinesDesk): Mm {
  const text = cell(column);
  const refuse = (objection: Objection): never =>
    refuseLine(desk, line, 'length', `${column}: ${text}`, objection);
  const plain = plainNumber(text);
  const read = plain === undefined ? readLength(text, 'mm') : taken({ mm: plain, bare: true });
  if (!read.ok) return refuse(desk.words.faults.said(read.fault));
  const { mm: number, bare } = read.value;
  const mm = bare ? number * inMm(desk.units ?? 'mm') : number;
  return Math.abs(mm) <= LONGEST_MM ? mm : refuse(desk.words.lines.tooFar);
}
