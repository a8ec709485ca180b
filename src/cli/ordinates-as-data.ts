import { degreesOf } from '../fit/as-data.ts';
import { csvCell } from '../measure/csv.ts';
import type { OrdinateTable } from '../saddle/ordinates.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import { dataOf, jsonOf } from './data.ts';

/** The tables as JSON: millimetres and degrees, tubes in the order of the job. */
export function ordinatesAsJson(tables: readonly OrdinateTable[]): Uint8Array {
  const tubes = solutionsOf(tables).map((solution) => {
    const ends = tables.filter((table) => table.solution === solution);
    return {
      name: solution.tube.name,
      hand: solution.hand,
      copies: solution.tube.copies,
      ends: Object.fromEntries(ends.map((table) => [table.end, { stations: stationsAsData(table) }])),
    };
  });
  return jsonOf({ units: 'mm', tubes });
}

function solutionsOf(tables: readonly OrdinateTable[]): readonly TubeSolution[] {
  return [...new Set(tables.map(({ solution }) => solution))];
}

function stationsAsData({ solution, rows }: OrdinateTable): object[] {
  const key = solution.section.stations === 'angles' ? 'phi' : 's';
  return rows.map(({ place, dihedral, what: _, ...row }) => ({
    [key]: place,
    ...row,
    ...(dihedral !== undefined && { dihedral: degreesOf(dihedral) }),
  }));
}

/**
 * The tables as CSV, one header line, in millimetres and degrees. The column of stations is named `s` where those of
 * all tubes are mm round the outside; where only some are, these hold mm under `phi`.
 */
export function ordinatesAsCsv(tables: readonly OrdinateTable[]): Uint8Array {
  const lines = tables.flatMap(({ solution, end, rows }) =>
    rows.map((row) =>
      [
        csvCell(solution.tube.name),
        solution.hand,
        end,
        row.place,
        row.contact,
        row.outside,
        row.inside ?? '',
        row.square ?? '',
        row.cut,
        row.dihedral === undefined ? '' : degreesOf(row.dihedral),
      ].join(','),
    ),
  );
  const inMm = tables.length > 0 && tables.every(({ solution }) => solution.section.stations === 'mm');
  const head = `tube,hand,end,${inMm ? 's' : 'phi'},contact,outside,inside,square,cut,dihedral`;
  return dataOf(`${[head, ...lines].join('\n')}\n`);
}
