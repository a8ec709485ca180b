import type { EndName } from '../job/job.ts';
import type { Mm } from '../measure/units.ts';
import { type Bounds, boundsRound, meetingPairs } from '../space/bounds.ts';
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
  const nearest = new Map<string, ShortOf>();
  const look = (own: StandingTube, other: StandingTube): void => {
    for (const end of ['A', 'B'] as const) {
      if (!own.seat.ends[end].open) continue;
      const by = wayFrom(own, end, other);
      const key = `${own.tube} ${end}`;
      const isNearer = by < (nearest.get(key)?.by ?? NEAR * own.solution.section.reach);
      if (by > 0 && isNearer) nearest.set(key, { tube: own.tube, end, of: other.tube, by });
    }
  };
  for (const [i, j] of meetingPairs(standings.map(boundsOf))) {
    const [one, other] = [standings[i], standings[j]];
    if (!one || !other) continue;
    look(one, other);
    look(other, one);
  }
  return [...nearest.values()].sort((a, b) => a.tube - b.tube);
}

/** The bounds of a tube, and of what lies as near before its open ends. */
function boundsOf({ seat, solution }: StandingTube): Bounds {
  const { reach } = solution.section;
  const out = (end: EndName): Mm => (seat.ends[end].open ? NEAR * reach : 0);
  const [from, to] = [seat.ends.A.workPoint - out('A'), seat.ends.B.workPoint + out('B')];
  return boundsRound(plusTimes(seat.from, from, seat.axis), plusTimes(seat.from, to, seat.axis), reach);
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
