import { degreesOf } from '../fit/as-data.ts';
import { MM_PER_INCH, type Mm } from '../measure/units.ts';
import { inchFraction } from '../measure/write.ts';
import type { Ordinate, OrdinateTable } from '../saddle/ordinates.ts';
import type { TubeSolution } from '../saddle/solve.ts';

/** The tables as JSON: millimetres and degrees, tubes in the order of the job. */
export function ordinatesAsJson(tables: readonly OrdinateTable[]): string {
  const tubes = solutionsOf(tables).map((solution) => {
    const ends = tables.filter((table) => table.solution === solution);
    return {
      name: solution.tube.name,
      hand: solution.hand,
      copies: solution.tube.copies,
      ends: Object.fromEntries(ends.map(({ end, rows }) => [end, { stations: rows.map(stationAsData) }])),
    };
  });
  return `${JSON.stringify({ units: 'mm', tubes }, null, 2)}\n`;
}

function solutionsOf(tables: readonly OrdinateTable[]): readonly TubeSolution[] {
  return [...new Set(tables.map(({ solution }) => solution))];
}

function stationAsData({ cut: _, dihedral, ...row }: Ordinate): object {
  return { ...row, ...(dihedral !== undefined && { dihedral: degreesOf(dihedral) }) };
}

/** The tables as CSV, one header line, in millimetres and degrees. */
export function ordinatesAsCsv(tables: readonly OrdinateTable[]): string {
  const lines = tables.flatMap(({ solution, end, rows }) =>
    rows.map((row) =>
      [
        csvText(solution.tube.name),
        solution.hand,
        end,
        row.phi,
        row.contact,
        row.outside,
        row.inside ?? '',
        row.square ?? '',
        row.dihedral === undefined ? '' : degreesOf(row.dihedral),
      ].join(','),
    ),
  );
  return `${['tube,hand,end,phi,contact,outside,inside,square,dihedral', ...lines].join('\n')}\n`;
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
  const write = units === 'mm' ? (mm: Mm) => mm.toFixed(2) : (mm: Mm) => (mm / MM_PER_INCH).toFixed(3);
  const heads = [
    'station',
    'round',
    'outside',
    ...(cope.inside ? ['inside'] : []),
    ...(cope.square ? ['square'] : []),
  ];
  const cells = rows.map((row) => [
    `${Number(row.phi.toFixed(4))}°`,
    write((row.phi / 360) * section.girth),
    write(row.outside),
    ...(row.inside === undefined ? [] : [write(row.inside)]),
    ...(row.square === undefined ? [] : [write(row.square)]),
    `${units === 'in' ? inchFraction(row.cut) : write(row.cut)}${row.contact ? '' : '  misses'}`,
  ]);
  const lines = [[...heads, 'cut to'], ...cells].map((line) =>
    line
      .map((cell) => cell.padStart(9))
      .join(' ')
      .trimEnd(),
  );
  return [
    `${tube.name}, end ${end}${hand === 'opposite' ? ', opposite hand' : ''}`,
    `Setbacks in ${units} from the work point, positive towards the tube's body.`,
    `"round" is the way round the outside from the spine, to the right with B up.`,
    '',
    ...lines,
    '',
  ].join('\n');
}
