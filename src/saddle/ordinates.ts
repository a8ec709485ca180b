import type { EndName } from '../job/job.ts';
import type { Mm, Radians } from '../measure/units.ts';
import type { Cope } from './cope.ts';
import { dihedralAt } from './dihedral.ts';
import type { TubeSolution } from './solve.ts';

/** The setbacks of one end at equal stations: the table for laying out with no printer. */
export interface OrdinateTable {
  readonly solution: TubeSolution;
  readonly end: EndName;
  readonly cope: Cope;
  readonly rows: readonly Ordinate[];
}

export interface Ordinate {
  /** In degrees, or where stations are mm round the outside such a length. Exactly as the step counts them. */
  readonly place: number;
  readonly contact: boolean;
  readonly outside: Mm;
  readonly inside?: Mm;
  readonly square?: Mm;
  /** On the line to cut to, whatever the edge. */
  readonly cut: Mm;
  /** Left out where the outside line misses. */
  readonly dihedral?: Radians;
}

/** How far from station to station: so many to a turn where they are angles, else so many mm. */
export interface Spacing {
  readonly perTurn: number;
  readonly apart: Mm;
}

/** The tables of all coped ends in the order of the tubes, A before B, from station 0 on. */
export function inOrder(solutions: readonly TubeSolution[], spacing: Spacing): readonly OrdinateTable[] {
  return solutions.flatMap((solution) =>
    (['A', 'B'] as const).flatMap((end) => {
      const cope = solution.ends[end];
      return cope?.kind === 'coped' ? [{ solution, end, cope, rows: rowsOf(cope, spacing) }] : [];
    }),
  );
}

function rowsOf(cope: Cope, { perTurn, apart }: Spacing): Ordinate[] {
  const { section } = cope.joint;
  if (section.stations === 'mm') {
    const count = Math.ceil(section.girth / apart - 1e-9);
    return Array.from({ length: count }, (_, i) => rowAt(cope, i * apart, i * apart));
  }
  return Array.from({ length: perTurn }, (_, i) =>
    rowAt(cope, (i * section.turn) / perTurn, (i * 360) / perTurn),
  );
}

function rowAt(cope: Cope, station: number, place: number): Ordinate {
  const { contact } = cope.touching(station);
  return {
    place,
    contact,
    outside: cope.outside(station).setback,
    ...(cope.inside && { inside: cope.inside(station).setback }),
    ...(cope.square && { square: cope.square(station).setback }),
    cut: cope.cut(station).setback,
    ...(contact && { dihedral: dihedralAt(cope.joint, station) }),
  };
}
