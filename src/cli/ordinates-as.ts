import { degreesOf } from '../fit/as-data.ts';
import { MM_PER_INCH, type Mm } from '../measure/units.ts';
import { inchFraction } from '../measure/write.ts';
import type { OrdinateTable } from '../saddle/ordinates.ts';
import type { TubeSolution } from '../saddle/solve.ts';

/** The tables as JSON: millimetres and degrees, tubes in the order of the job. */
export function ordinatesAsJson(tables: readonly OrdinateTable[]): string {
  const tubes = solutionsOf(tables).map((solution) => {
    const ends = tables.filter((table) => table.solution === solution);
    return {
      name: solution.tube.name,
      hand: solution.hand,
      copies: solution.tube.copies,
      ends: Object.fromEntries(ends.map((table) => [table.end, { stations: stationsAsData(table) }])),
    };
  });
  return `${JSON.stringify({ units: 'mm', tubes }, null, 2)}\n`;
}

function solutionsOf(tables: readonly OrdinateTable[]): readonly TubeSolution[] {
  return [...new Set(tables.map(({ solution }) => solution))];
}

function stationsAsData({ solution, rows }: OrdinateTable): object[] {
  const key = solution.section.stations === 'angles' ? 'phi' : 's';
  return rows.map(({ place, cut: _, dihedral, ...row }) => ({
    [key]: place,
    ...row,
    ...(dihedral !== undefined && { dihedral: degreesOf(dihedral) }),
  }));
}

/**
 * The tables as CSV, one header line, in millimetres and degrees. The column of stations is named `s` where all tubes
 * are rectangular, and holds mm round the outside for each that is.
 */
export function ordinatesAsCsv(tables: readonly OrdinateTable[]): string {
  const lines = tables.flatMap(({ solution, end, rows }) =>
    rows.map((row) =>
      [
        csvText(solution.tube.name),
        solution.hand,
        end,
        row.place,
        row.contact,
        row.outside,
        row.inside ?? '',
        row.square ?? '',
        row.dihedral === undefined ? '' : degreesOf(row.dihedral),
      ].join(','),
    ),
  );
  const rectangular = tables.length > 0 && tables.every(({ solution }) => solution.section.stations === 'mm');
  const head = `tube,hand,end,${rectangular ? 's' : 'phi'},contact,outside,inside,square,dihedral`;
  return `${[head, ...lines].join('\n')}\n`;
}

/** RFC 4180: quoted where it holds a comma, a quote or a line's end. */
function csvText(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** The tables for a person with tape and marker, in the job's units. */
export function ordinatesAsText(tables: readonly OrdinateTable[], units: 'mm' | 'in'): string {
  return tables.map((table) => tableAsText(table, units)).join('\n');
}

function tableAsText({ solution, end, rows, cope }: OrdinateTable, units: 'mm' | 'in'): string {
  const { tube, hand, section } = solution;
  const write = (mm: Mm): string => (units === 'mm' ? rounded(mm, 2) : rounded(mm / MM_PER_INCH, 3));
  const angles = section.stations === 'angles';
  const heads = [
    ...(angles ? ['station'] : []),
    'round',
    'outside',
    ...(cope.inside ? ['inside'] : []),
    ...(cope.square ? ['square'] : []),
  ];
  const cells = rows.map((row) => [
    ...(angles ? [`${Number(row.place.toFixed(4))}°`] : []),
    write(angles ? (row.place / 360) * section.girth : row.place),
    write(row.outside),
    ...(row.inside === undefined ? [] : [write(row.inside)]),
    ...(row.square === undefined ? [] : [write(row.square)]),
    units === 'in' ? inchFraction(row.cut) : write(row.cut),
    ...(row.contact ? [] : ['misses']),
  ]);
  const lines = [[...heads, 'cut to'], ...cells].map((line) =>
    line
      .map((cell) => cell.padStart(9))
      .join(' ')
      .trimEnd(),
  );
  return [
    `${tube.name}, end ${end}${hand === 'opposite' ? ', opposite hand' : ''}`,
    `Setbacks in ${units === 'in' ? 'inches' : 'mm'} from the work point, positive towards the tube's body.`,
    `"round" is the way round the outside from the spine, to the right with B up.`,
    '',
    ...lines,
    '',
  ].join('\n');
}

/** Without a minus sign before nothing. */
function rounded(value: number, places: number): string {
  return (Number(value.toFixed(places)) + 0).toFixed(places);
}
