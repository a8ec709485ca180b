import type { Mm, Radians } from '../measure/units.ts';
import { type Landing, type Met, pastClock, towardsClock, whatCounts } from '../space/landing.ts';
import type { Vector } from '../space/vector.ts';
import type { Joint } from './joint.ts';

/**
 * The angle between the two outer surfaces across the weld, at a station: the tube's and the header's, that of their
 * outward normals taken from the other side. At a mitre it is tube to tube: twice the angle to the plane, in [0, 2 pi].
 * Where the outside passes beside the header, the angle of the nearest graze. No published formula was found; it is the
 * definition.
 */
export function dihedralAt(joint: Joint, station: number): Radians {
  const { mitred, toFace } = meetingAt(joint, station);
  return mitred ? 2 * toFace : toFace;
}

/** How thick the tube's edge stands at a station: the angle in its metal between the outside and what it is cut to. */
export function edgeAngleAt(joint: Joint, station: number): Radians {
  return Math.PI - meetingAt(joint.filled ?? joint, station).toFace;
}

/** The angle to the surface that the outside meets at a station, and whether that is a mitre's plane. */
function meetingAt(joint: Joint, station: number): { readonly mitred: boolean; readonly toFace: Radians } {
  const { x, y, nx, ny } = joint.section.at(station);
  const { mitred, normal } =
    whatCounts(joint.landings, { x, y }, (landing) => normalOn(landing, x, y)) ??
    normalOn(joint.landings[0], x, y);
  const cosine = -(nx * normal[0] + ny * normal[1]);
  return { mitred, toFace: Math.acos(Math.min(1, Math.max(-1, cosine))) };
}

interface Meeting extends Met {
  /** The header's outward normal, in the frame of the tube's section. */
  readonly normal: Vector;
  readonly mitred: boolean;
}

function normalOn(landing: Landing, sx: Mm, sy: Mm): Meeting {
  const { solid, cosClock, sinClock, trimClimb, offset, shift, mitred } = landing;
  const x = towardsClock(landing, sx, sy);
  const y = pastClock(landing, sx, sy);
  const entry = solid.enter(x, y);
  const { nx, ny, nz } = entry ?? { nx: 0, ny: Math.sign(y - offset), nz: 0 };
  const normal: Vector = [nx * cosClock - ny * sinClock, nx * sinClock + ny * cosClock, nz];
  const setback = (entry ? entry.z : x * trimClimb) + shift;
  return { contact: entry !== undefined, setback, normal, mitred };
}
