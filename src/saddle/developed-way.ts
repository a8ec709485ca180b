import type { Mm } from '../measure/units.ts';
import { type Landing, pastClock, towardsClock } from '../space/landing.ts';
import { inwards } from '../space/section.ts';
import { type Developed, nearestTurn } from '../space/solid.ts';
import type { Joint } from './joint.ts';
import { meetAt } from './lines.ts';
import type { Stretch } from './stretches.ts';

/** The exact outline that a stretch of a wall line leaves on one header, unrolled flat, by a parameter from 0 to 1. */
export type DevelopedWay = (t: number) => Pose;

/** A point of the outline and the unit direction in which it runs on. */
export interface Pose {
  readonly at: Developed;
  readonly round: number;
  readonly along: number;
  /** How many mm a unit of the parameter moves it. */
  readonly speed: Mm;
}

/**
 * The parameter rests at both ends: at a graze the line runs off as a square root of the station, and so is even in the
 * parameter all the same.
 */
export function developedWay(joint: Joint, landing: Landing, depth: Mm, { from, to }: Stretch): DevelopedWay {
  return (t) => {
    const station = t < 0.5 ? from + (to - from) * eased(t) : to - (to - from) * eased(1 - t);
    const { at, round, along, speed } = poseAt(joint, landing, depth, station, t < 0.5 ? 1 : -1);
    return { at, round, along, speed: speed * (to - from) * 6 * t * (1 - t) };
  };
}

function eased(t: number): number {
  return t * t * (3 - 2 * t);
}

const STEP: Mm = 1e-4;

/**
 * The outline runs square to both outward normals: along the tube's tangent t, climbing dz = -(n t) / nz. Scaled by
 * nz that direction is finite even where the line grazes. How it unrolls is seen by steps to the side that `ahead`
 * tells, for beyond an edge it runs another way. The speed is that of the station.
 */
function poseAt(joint: Joint, landing: Landing, depth: Mm, station: number, ahead: -1 | 1): Pose {
  const { setback } = meetAt(joint, station, depth);
  const wall = inwards(joint.section.at(station), depth);
  const { solid, shift } = landing;
  const x = towardsClock(landing, wall.x, wall.y);
  const y = pastClock(landing, wall.x, wall.y);
  const z = setback - shift;
  const dx = wall.run.speed * towardsClock(landing, -wall.ny, wall.nx);
  const dy = wall.run.speed * pastClock(landing, -wall.ny, wall.nx);
  const { nx, ny, nz } = solid.enter(x, y) ?? { nx: 0, ny: 0, nz: 0 };
  // A line that only just touches runs along the trim plane.
  const [scale, dz] = nz > GRAZE ? [nz, -(nx * dx + ny * dy)] : [1, dx * landing.trimClimb];
  const rate = Math.hypot(dx * scale, dy * scale, dz);
  // Inside a corner that is as round as the wall is thick the line stands still.
  if (rate < STILL) return { at: solid.develop(x, y, z), round: 0, along: 0, speed: 0 };
  const size = STEP / rate;
  const seen = (steps: number): Developed =>
    solid.develop(x + dx * scale * size * steps, y + dy * scale * size * steps, z + dz * size * steps);
  const at = seen(0);
  const { round, along } = rateOf(at, (steps) => nearestTurn(seen(steps), at, solid.girth), ahead);
  const length = Math.hypot(round, along);
  // Where the tube just touches, a step may be too short to be seen.
  if (length === 0) return { at, round: 0, along: 0, speed: 0 };
  return { at, round: round / length, along: along / length, speed: length / (size * scale) };
}

/** A normal so nearly square to the tube is known to no digit, for the place where it stands is a double root. */
const GRAZE = 1e-7;

/** Of the station's rate: less than this is nought but for rounding. */
const STILL = 1e-12;

/** The change in a step, by differences of three points to one side. */
function rateOf(at: Developed, seen: (steps: number) => Developed, ahead: -1 | 1): Developed {
  const [near, far] = [seen(ahead), seen(2 * ahead)];
  const rate = (key: keyof Developed): number => (ahead * (4 * near[key] - far[key] - 3 * at[key])) / 2;
  return { round: rate('round'), along: rate('along') };
}
