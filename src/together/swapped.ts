import { endPointOf } from '../frame/end-point.ts';
import { type EndName, otherEnd } from '../job/job.ts';
import { plainNumbers } from '../job/plain-numbers.ts';
import type { Mm } from '../measure/units.ts';
import type { Vector } from '../space/vector.ts';
import { levelEndsOf } from './feet.ts';
import type { StandingTube } from './in-space.ts';

/** A leg that leans far, and would stand as an upright one does if two of its upper point's three lengths were changed round. */
export interface Swapped {
  readonly tube: number;
  readonly upright: number;
  readonly point: string;
}

/** Lengths that are the same to whoever wrote them. */
const SAME: Mm = 0.5;

/** Every such leg of a frame, each beside an upright one of its size. */
export function swappedIn(standings: readonly StandingTube[]): readonly Swapped[] {
  const legs = standings.flatMap((standing) => levelEndsOf(standing).map((end) => legOf(standing, end)));
  const upright = legs.filter(({ foot, top }) => isOver(foot, top));
  return legs.flatMap((leg) => {
    const { foot, top, size } = leg;
    const [x, y, z] = top;
    // Leaning by less it may well be meant so.
    if (Math.hypot(x - foot[0], y - foot[1]) < Math.tan(Math.PI / 3) * Math.abs(z - foot[2])) return [];
    const changed: readonly Vector[] = [
      [x, z, y],
      [z, y, x],
    ];
    const mate = upright.find((each) => {
      const high = each.top[2] - each.foot[2];
      return each.size === size && changed.some((to) => isOver(foot, to) && near(to[2] - foot[2], high));
    });
    return mate ? [{ tube: leg.tube, upright: mate.tube, point: leg.point }] : [];
  });
}

function legOf({ tube, seat, solution }: StandingTube, end: EndName) {
  const [foot, top] = [endPointOf(seat, end), endPointOf(seat, otherEnd(end))];
  const size = plainNumbers(solution.tube.section, 6);
  return { tube, foot: foot.place, top: top.place, point: top.name, size };
}

function near(one: Mm, other: Mm): boolean {
  return Math.abs(one - other) < SAME;
}

function isOver(foot: Vector, top: Vector): boolean {
  return near(foot[0], top[0]) && near(foot[1], top[1]);
}
