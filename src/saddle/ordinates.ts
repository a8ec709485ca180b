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
  /** In degrees, exactly as the step counts them. */
  readonly phi: number;
  readonly contact: boolean;
  readonly outside: Mm;
  readonly inside?: Mm;
  readonly square?: Mm;
  /** Left out where the outside line misses. */
  readonly dihedral?: Radians;
  /** On the line to cut to. */
  readonly cut: Mm;
}

/** The tables of all coped ends in the order of the tubes, A before B, at `count` stations from 0. */
export function inOrder(solutions: readonly TubeSolution[], count: number): readonly OrdinateTable[] {
  return solutions.flatMap((solution) =>
    (['A', 'B'] as const).flatMap((end) => {
      const cope = solution.ends[end];
      return cope?.kind === 'coped' ? [{ solution, end, cope, rows: rowsOf(cope, count) }] : [];
    }),
  );
}

function rowsOf(cope: Cope, count: number): Ordinate[] {
  return Array.from({ length: count }, (_, i) => {
    const station = (i * cope.joint.section.turn) / count;
    const { setback: outside, contact } = cope.outside(station);
    return {
      phi: (i * 360) / count,
      contact,
      outside,
      ...(cope.inside && { inside: cope.inside(station).setback }),
      ...(cope.square && { square: cope.square(station).setback }),
      ...(contact && { dihedral: dihedralAt(cope.joint, station) }),
      cut: cope.cut(station).setback,
    };
  });
}
