import type { Mm, Radians } from '../measure/units.ts';
import type { Vector } from '../space/vector.ts';
import type { Joint, Landing } from './joint.ts';

/**
 * The angle between the tube's outer surface and the header's, across the weld, at a station: that of the two
 * outward normals, taken from the other side. Where the outside passes beside the header, the angle of the nearest
 * graze. No published formula was found; it is the definition.
 */
export function dihedralAt(joint: Joint, station: number): Radians {
  const { x, y, nx, ny } = joint.section.at(station);
  let deepest: Meeting | undefined;
  for (const landing of joint.landings) deepest = deeper(deepest, normalOn(landing, x, y));
  if (!deepest) return Math.PI / 2;
  const cosine = -(nx * deepest.normal[0] + ny * deepest.normal[1]);
  return Math.acos(Math.min(1, Math.max(-1, cosine)));
}

interface Meeting {
  readonly contact: boolean;
  readonly setback: Mm;
  /** The header's outward normal, in the frame of the tube's section. */
  readonly normal: Vector;
}

function deeper(a: Meeting | undefined, b: Meeting): Meeting {
  if (!a) return b;
  if (a.contact !== b.contact) return a.contact ? a : b;
  return b.setback > a.setback ? b : a;
}

function normalOn({ solid, cosClock, sinClock, trimClimb, offset, shift }: Landing, sx: Mm, sy: Mm): Meeting {
  const x = sx * cosClock + sy * sinClock;
  const y = sy * cosClock - sx * sinClock;
  const entry = solid.enter(x, y);
  const { nx, ny, nz } = entry ?? { nx: 0, ny: Math.sign(y - offset), nz: 0 };
  const normal: Vector = [nx * cosClock - ny * sinClock, nx * sinClock + ny * cosClock, nz];
  const setback = (entry ? entry.z : x * trimClimb) + shift;
  return { contact: entry !== undefined, setback, normal };
}
