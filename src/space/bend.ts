import type { Mm, Radians } from '../measure/units.ts';
import { type InBend, nearestEntry, type Radii, wayToBend } from './bend-entries.ts';
import { topsThrough } from './highest-inside.ts';
import { exactCosine } from './round.ts';
import type { Developed, Solid, WallEntry } from './solid.ts';
import type { Vector } from './vector.ts';

export interface BendSize extends Radii {
  /** Where the bend's centre lies, seen along the tangent: 0 towards the body, positive towards w. */
  readonly centre: Radians;
}

/**
 * A bent round tube: a quarter of a turn each way from the work point, and straight tangents beyond. Its tangent at
 * the work point makes `angle` with the z axis and lies in the plane y = `offset`.
 */
export function bentHeader(size: BendSize, angle: Radians, offset: Mm): Solid {
  const frame = bendFrame(size, angle, offset);
  const cos = exactCosine(angle);
  const sin = Math.sin(angle);
  const reach = reachOf(size, angle);
  const upwards: InBend = { t: cos, n: sin * Math.cos(size.centre), b: -sin * Math.sin(size.centre) };
  const way = (x: Mm, y: Mm, z: Mm): Mm => wayToBend(size, frame(x, y, z));
  const enter = (x: Mm, y: Mm): WallEntry | undefined => {
    const trim = (x * cos) / sin;
    const below = nearestEntry(size, { start: frame(x, y, trim), way: upwards }, reach);
    if (below === undefined) return undefined;
    const z = trim + below;
    const at = frame(x, y, z);
    const [nx, ny, nz] = normalAt(size, angle, at);
    return { z, nx, ny, nz, patch: patchOf(at) };
  };
  return {
    enter,

    crests(x0: Mm, y0: Mm, x1: Mm, y1: Mm): readonly number[] {
      const entry = (share: number): WallEntry | undefined =>
        enter(x0 + share * (x1 - x0), y0 + share * (y1 - y0));
      return [0, 1, ...topsThrough(entry, x1 - x0, y1 - y0)];
    },

    distance: way,

    girth: 2 * Math.PI * size.tubeRadius,

    // A bent surface does not unroll: round is true, along is measured on the tube's centre line.
    develop(x: Mm, y: Mm, z: Mm): Developed {
      const { t, n, b } = frame(x, y, z);
      const turn = n <= 0 ? Math.atan2(t, -n) : (Math.sign(t) * Math.PI) / 2;
      const along = size.bendRadius * turn + (n > 0 ? Math.sign(t) * n : 0);
      const inwards = size.bendRadius - (n <= 0 ? Math.hypot(t, n) : Math.abs(t));
      const fromCentre = Math.atan2(b, inwards);
      const round = fromCentre + size.centre;
      return { round: size.tubeRadius * (round - 2 * Math.PI * Math.round(round / (2 * Math.PI))), along };
    },
  };
}

function bendFrame(
  { bendRadius, centre }: BendSize,
  angle: Radians,
  offset: Mm,
): (x: Mm, y: Mm, z: Mm) => InBend {
  const cos = exactCosine(angle);
  const sin = Math.sin(angle);
  const towardsBody = Math.cos(centre);
  const towardsW = Math.sin(centre);
  return (x, y, z) => {
    const p = z * sin - x * cos;
    const q = y - offset;
    return {
      t: x * sin + z * cos,
      n: p * towardsBody + q * towardsW - bendRadius,
      b: q * towardsBody - p * towardsW,
    };
  };
}

/** The outward unit normal: away from the nearest point of the tube's centre line. */
function normalAt({ bendRadius, centre }: BendSize, angle: Radians, { t, n, b }: InBend): Vector {
  const round = n <= 0 ? Math.hypot(t, n) : Math.abs(t);
  const out = (round - bendRadius) / round;
  const alongT = out * t;
  const alongN = n <= 0 ? out * n : 0;
  const size = Math.hypot(alongT, alongN, b);
  const towardsBody = (alongN * Math.cos(centre) - b * Math.sin(centre)) / size;
  const towardsW = (alongN * Math.sin(centre) + b * Math.cos(centre)) / size;
  const cos = exactCosine(angle);
  const sin = Math.sin(angle);
  return [(alongT / size) * sin - towardsBody * cos, towardsW, (alongT / size) * cos + towardsBody * sin];
}

function patchOf({ t, n }: InBend): number {
  if (n <= 0) return 0;
  return t > 0 ? 1 : 2;
}

/** How far from the trim plane a line can still meet the tube near the joint. */
function reachOf({ tubeRadius, bendRadius }: BendSize, angle: Radians): Mm {
  return (2 * tubeRadius + bendRadius) / Math.sin(angle);
}
