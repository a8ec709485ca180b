import type { Mm } from '../measure/units.ts';
import { plusTimes } from '../space/vector.ts';
import { farEndOf, pointsAt, type StandingTube, stopAt, wayAround } from './in-space.ts';

type Axis = 0 | 1 | 2;

/** Places round an outline at which it is looked at: as many as to see each flat of a tube with corners. */
const LOOKS = 360;
/** Nearer than this nobody measures a frame, and a tube that can reach no further than that is not looked at. */
const NEAR: Mm = 0.05;

/** How far the tubes of a frame reach along each axis of space, as they are cut. */
export function overallOf(standings: readonly StandingTube[]): readonly [Mm, Mm, Mm] {
  const reaches = standings.map((standing) => ({ standing, limits: limitsOf(standing) }));
  const along = (axis: Axis): Mm => mostOf(reaches, axis, 1) + mostOf(reaches, axis, -1);
  return [along(0), along(1), along(2)];
}

interface Reach {
  readonly standing: StandingTube;
  readonly limits: (axis: Axis, way: 1 | -1) => Mm;
}

/** The most that any tube reaches one way: those that can reach furthest are looked at first. */
function mostOf(reaches: readonly Reach[], axis: Axis, way: 1 | -1): Mm {
  const limited = reaches
    .map(({ standing, limits }) => ({ standing, limit: limits(axis, way) }))
    .sort((a, b) => b.limit - a.limit);
  let most = Number.NEGATIVE_INFINITY;
  for (const { standing, limit } of limited) {
    if (limit <= most + NEAR) break;
    most = Math.max(most, reachOf(standing, axis, way));
  }
  return most;
}

/** How far a tube can reach, were it cut square at both its long points. */
function limitsOf(standing: StandingTube): Reach['limits'] {
  const { seat } = standing;
  const ends = [stopAt(standing), farEndOf(standing)].map((at) => plusTimes(seat.from, at, seat.axis));
  const out = outOf(standing);
  return (axis, way) => Math.max(...ends.map((place) => way * place[axis])) + out[axis];
}

/** How far a tube's outline reaches from its axis along each axis of space: of a thousand tubes these are kept, and not the outlines. */
function outOf({ seat, solution: { section } }: StandingTube): readonly [Mm, Mm, Mm] {
  const [up, side] = [wayAround(seat, 0), wayAround(seat, Math.PI / 2)];
  const outline = Array.from({ length: LOOKS }, (_, i) => section.at((i * section.turn) / LOOKS));
  const along = (axis: Axis): Mm => Math.max(...outline.map(({ x, y }) => x * up[axis] + y * side[axis]));
  return [along(0), along(1), along(2)];
}

/** How far a tube reaches as it is cut. */
function reachOf({ seat, solution }: StandingTube, axis: Axis, way: 1 | -1): Mm {
  const { section, ends } = solution;
  const places = (['A', 'B'] as const).flatMap((end) => {
    const [cope, placed] = [ends[end], pointsAt(seat, end)];
    return Array.from({ length: LOOKS }, (_, i) => {
      const station = (i * section.turn) / LOOKS;
      const { x, y } = section.at(station);
      return way * placed(x, y, cope?.kind === 'coped' ? cope.cut(station).setback : 0)[axis];
    });
  });
  return Math.max(...places);
}
