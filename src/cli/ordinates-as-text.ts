import { partOf, type Said } from '../measure/said.ts';
import { MM_PER_INCH, type Mm, type Units } from '../measure/units.ts';
import { inchFraction } from '../measure/write.ts';
import type { Ordinate, OrdinateTable } from '../saddle/ordinates.ts';
import type { Section } from '../space/section.ts';
import type { Language } from '../words/language.ts';
import { asWritten, endedLines, inColumn, joined } from '../words/said.ts';

/** The tables for a person with tape and marker, in the job's units. */
export function ordinatesAsText(tables: readonly OrdinateTable[], units: Units, words: Language): Said {
  return joined(
    tables.map((table) => tableAsText(table, units, words)),
    '\n',
  );
}

function tableAsText(table: OrdinateTable, units: Units, { ordinates: words }: Language): Said {
  const { solution, end, rows, cope } = table;
  const { columns } = words;
  const heads = [
    ...(solution.section.stations === 'angles' ? [columns.station] : []),
    columns.round,
    columns.outside,
    ...(cope.inside ? [columns.inside] : []),
    ...(cope.square ? [columns.square] : []),
    columns.cut,
  ];
  const cells = rows.map((row) => [
    ...numbersOf(row, solution.section, units).map(asWritten),
    ...(row.contact ? [] : [words.misses]),
    ...(row.what ? [words.marked[row.what]] : []),
  ]);
  return endedLines([
    words.headline(solution.tube.name, end, solution.hand === 'opposite'),
    words.setbacks(units),
    words.roundMeans,
    asWritten(''),
    ...[heads, ...cells].map(lineOf),
  ]);
}

const COLUMN = 9;

function lineOf(cells: readonly Said[]): Said {
  const line = joined(
    cells.map((cell) => inColumn(cell, COLUMN, 'right')),
    ' ',
  );
  return partOf(line, line.trimEnd());
}

function numbersOf(row: Ordinate, section: Section, units: Units): readonly string[] {
  const write = (mm: Mm): string => (units === 'mm' ? rounded(mm, 2) : rounded(mm / MM_PER_INCH, 3));
  const angles = section.stations === 'angles';
  return [
    ...(angles ? [`${Number(row.place.toFixed(4))}°`] : []),
    write(angles ? (row.place / 360) * section.girth : row.place),
    write(row.outside),
    ...(row.inside === undefined ? [] : [write(row.inside)]),
    ...(row.square === undefined ? [] : [write(row.square)]),
    units === 'in' ? inchFraction(row.cut) : write(row.cut),
  ];
}

/** Without a minus sign before nothing. */
function rounded(value: number, places: number): string {
  return (Number(value.toFixed(places)) + 0).toFixed(places);
}
