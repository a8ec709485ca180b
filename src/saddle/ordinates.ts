import type { EndName } from '../job/job.ts';
import type { Mm, Radians } from '../measure/units.ts';
import { type Break, changesBetween } from './breaks.ts';
import type { Cope } from './cope.ts';
import { dihedralAt } from './dihedral.ts';
import { toCut } from './joint.ts';
import { faceOf } from './lines.ts';
import { samplesOf } from './samples.ts';
import type { TubeSolution } from './solve.ts';

/** The setbacks of one end station by station: the table for laying out with no printer. */
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
  /** What is there, of a station that stands beside the equal ones; a step has a row before it and one behind it. */
  readonly what?: Marked;
}

export type Marked = 'fold' | 'long-point' | 'short-point' | 'break';

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

/**
 * At equal stations. Round a tube with faces these meet none of what it is marked by: its folds, its long and short point and where its
 * cut goes over to another face have rows of their own; of any tube so have the steps of its cut.
 */
function rowsOf(cope: Cope, { perTurn, apart }: Spacing): Ordinate[] {
  const { section } = cope.joint;
  const { turn } = section;
  const inMm = section.stations === 'mm';
  const count = inMm ? Math.ceil(section.girth / apart - 1e-9) : perTurn;
  const equal = Array.from({ length: count }, (_, i) =>
    inMm ? rowAt(cope, i * apart, i * apart) : rowAt(cope, (i * turn) / perTurn, (i * 360) / perTurn),
  );
  const placed = (station: number): number => Number((inMm ? station : (station * 360) / turn).toFixed(9));
  const marked = (what: Marked, station: number): Ordinate => ({
    ...rowAt(cope, station, placed(station)),
    what,
  });
  const breaks = facesMet(cope).map(({ before, after }) => [
    { ...marked('break', before), place: placed(after) },
    marked('break', after),
  ]);
  const steps = breaks.filter(([before, after]) => before && after && isStep(before, after, inMm));
  const singles = inMm
    ? [
        marked('long-point', cope.longPoint.station),
        marked('short-point', cope.throat.station),
        ...section.cornersAt(0).map((station) => marked('fold', station)),
        ...breaks.filter((pair) => !steps.includes(pair)).flatMap(([, after]) => after ?? []),
      ]
    : [];
  return mergedRows(steps.flat(), singles, equal);
}

/** Where the cut goes over from one face of what it lands on to another, or past it. */
function facesMet({ joint, cut, thickness }: Cope): readonly Break[] {
  const looks = samplesOf(toCut(joint), thickness === undefined ? [0] : [0, thickness]);
  return changesBetween((station) => faceOf(cut(station)), looks, joint.section.turn);
}

/** Nearer than this, stations are one. */
const ONE_PLACE = 1e-6;
/** A step of less is none: no saw cuts it. */
const STEP: Mm = 1e-3;

/** Beside a header the cut of a round tube runs on into the plane it is trimmed to, with no step. */
function isStep(before: Ordinate, after: Ordinate, inMm: boolean): boolean {
  if (inMm && before.contact !== after.contact) return true;
  const lines = ['outside', 'inside', 'square', 'cut'] as const;
  return lines.some((line) => Math.abs((before[line] ?? 0) - (after[line] ?? 0)) > STEP);
}

/** In the order round the tube, each place once, or at a step twice: what comes first here is kept. */
function mergedRows(
  steps: readonly Ordinate[],
  singles: readonly Ordinate[],
  equal: readonly Ordinate[],
): Ordinate[] {
  const isAt = (one: number) => (other: Ordinate) => Math.abs(other.place - one) < ONE_PLACE;
  const rows = steps.map((row) => ({ ...row, place: equal.find(isAt(row.place))?.place ?? row.place }));
  for (const row of [...singles, ...equal]) {
    if (!rows.some(isAt(row.place))) rows.push(row);
  }
  return rows.sort((a, b) => a.place - b.place);
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
