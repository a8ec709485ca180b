import { endPointOf } from '../frame/end-point.ts';
import type { EndName } from '../job/job.ts';
import type { Mm } from '../measure/units.ts';
import { norm, squareTo, type Vector, wayTo } from '../space/vector.ts';
import { bodyAt, copesOf, headerAxis, type StandingTube } from './in-space.ts';

/** How far two feet of a frame stand apart, by the names of their points. */
export interface Apart {
  readonly between: readonly [string, string];
  readonly is: Mm;
}

/** Feet as high as the lowest within this stand on one floor. */
export const LEVEL: Mm = 0.5;
/** More than these are not measured one from another. */
const MOST = 4;

/**
 * The distances between two to four feet of a frame, the ends that are cut level at its lowest: once round, and across. None are told of
 * one foot, or of more.
 */
export function feetOf(standings: readonly StandingTube[]): {
  readonly round: readonly Apart[];
  readonly across: readonly Apart[];
} {
  const found = new Map(standings.flatMap(levelEnds));
  const floor = Math.min(...[...found.values()].map(([, , z]) => z));
  const feet = [...found].filter(([, [, , z]]) => z - floor <= LEVEL);
  if (feet.length > MOST) return { round: [], across: [] };
  const middle = [0, 1].map((i) => feet.reduce((sum, [, at]) => sum + (at[i] ?? 0), 0) / feet.length);
  const turn = ([x, y]: Vector): number => Math.atan2(y - (middle[1] ?? 0), x - (middle[0] ?? 0));
  const [first] = feet;
  const fromFirst = (foot: Vector): number =>
    (turn(foot) - (first ? turn(first[1]) : 0) + 2 * Math.PI) % (2 * Math.PI);
  const around = feet.toSorted(([, a], [, b]) => fromFirst(a) - fromFirst(b));
  const apart = (one: number, other: number): Apart[] => {
    const [a, b] = [around[one], around[other]];
    return a && b ? [{ between: [a[0], b[0]], is: norm(wayTo(a[1], b[1])) }] : [];
  };
  const sides = around.length < 3 ? around.slice(1) : around;
  return {
    round: sides.flatMap((_, i) => apart(i, (i + 1) % around.length)),
    across: around.length === MOST ? [...apart(0, 2), ...apart(1, 3)] : [],
  };
}

/** Where a tube ends on a level plate, by the names of its points. */
function levelEnds(standing: StandingTube): readonly (readonly [string, Vector])[] {
  return levelEndsOf(standing).map((end) => {
    const { name, place } = endPointOf(standing.seat, end);
    return [name, place];
  });
}

/** The ends of a tube that are cut level, to stand on a floor. */
export function levelEndsOf({ seat, solution }: StandingTube): readonly EndName[] {
  return copesOf(solution).flatMap(([end, cope]) => {
    const [part] = cope.end.parts;
    const body = bodyAt(seat, end);
    const normal = part.onto.kind === 'plate' ? squareTo(headerAxis(seat, end, part).h, body) : undefined;
    return normal && Math.abs(normal[2]) > 1 - 1e-9 ? [end] : [];
  });
}
