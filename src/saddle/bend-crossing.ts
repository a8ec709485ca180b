import type { BendHeader, CopedEnd } from '../job/job.ts';
import type { Mm } from '../measure/units.ts';
import { type Landing, pastClock, towardsClock } from '../space/landing.ts';
import type { Joint } from './joint.ts';

const LINES = 72;
const LEAST_STEP: Mm = 0.05;

/** Whether the arc of a bent header that an end lands on crosses the tube's body elsewhere, where no cope can clear it. */
export function bendCrosses(end: CopedEnd, joint: Joint): boolean {
  return end.parts.some(({ onto }, i) => {
    const landing = joint.landings[i];
    return onto.kind === 'bend' && landing !== undefined && crosses(onto, joint, landing);
  });
}

function crosses(bend: BendHeader, joint: Joint, landing: Landing): boolean {
  const { section } = joint;
  return Array.from({ length: LINES }, (_, i) => section.at((i * section.turn) / LINES)).some((wall) => {
    const x = towardsClock(landing, wall.x, wall.y);
    const y = pastClock(landing, wall.x, wall.y);
    return meetsAgain(bend, landing, x, y);
  });
}

/** Walks up a line of the wall from where it left the header, by steps that can't jump over its surface. */
function meetsAgain({ radius, od }: BendHeader, { solid, trimClimb }: Landing, x: Mm, y: Mm): boolean {
  const start = (solid.enter(x, y)?.z ?? x * trimClimb) + LEAST_STEP;
  const arc = (Math.PI / 2) * radius.mm;
  const end = start + 2 * (radius.mm + od.mm) * Math.hypot(1, trimClimb);
  for (let z = start; z < end; ) {
    const away = solid.distance(x, y, z);
    if (away < 0 && Math.abs(solid.develop(x, y, z).along) <= arc) return true;
    z += Math.max(Math.abs(away), LEAST_STEP);
  }
  return false;
}
