import type { EndName } from '../job/job.ts';
import type { Mm } from '../measure/units.ts';
import { byLine, dot, nearestFeet, norm, plusTimes, scaledBy, wayTo } from '../space/vector.ts';
import { bodyAt, type StandingTube, workPointOf } from './in-space.ts';

/** An open end of a tube that would land on another one if the tube were so much longer. */
export interface ShortOf {
  readonly tube: number;
  readonly end: EndName;
  readonly of: number;
  readonly by: Mm;
}

/** An end that stops nearer to another tube than this, in its own reaches, was mostly to land on it: common practice, no source. */
const NEAR = 6;

/** Every open end that stops short of a tube that lies in its way, with the nearest. */
export function shortOfIn(standings: readonly StandingTube[]): readonly ShortOf[] {
  return standings.flatMap((own) =>
    (['A', 'B'] as const).flatMap((end): ShortOf[] => {
      if (!own.seat.ends[end].open) return [];
      const [nearest] = standings
        .flatMap((other) => (other === own ? [] : [{ of: other.tube, by: wayFrom(own, end, other) }]))
        .filter(({ by }) => by > 0 && by < NEAR * own.solution.section.reach)
        .sort((a, b) => a.by - b.by);
      return nearest ? [{ tube: own.tube, end, ...nearest }] : [];
    }),
  );
}

/** How far an end is from another tube's outside along its own axis, a tube with corners being as wide as they are; infinite where it passes. */
function wayFrom({ seat }: StandingTube, end: EndName, { seat: other, solution }: StandingTube): Mm {
  const out = { from: workPointOf(seat, end), axis: scaledBy(bodyAt(seat, end), -1) };
  const sine = Math.sqrt(Math.max(0, 1 - dot(out.axis, other.axis) ** 2));
  if (sine < 0.1) return Number.POSITIVE_INFINITY;
  const [along, there] = nearestFeet(out, other);
  const apart = norm(wayTo(plusTimes(out.from, along, out.axis), plusTimes(other.from, there, other.axis)));
  const { reach } = solution.section;
  const isInside = norm(byLine(other.from, other.axis, out.from).off) < reach;
  if (isInside || apart >= reach || there < 0 || there > other.length) return Number.POSITIVE_INFINITY;
  return along - Math.sqrt(reach * reach - apart * apart) / sine;
}
