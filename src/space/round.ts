import type { Mm, Radians } from '../measure/units.ts';
import { type Developed, type Solid, TOUCH, type WallEntry } from './solid.ts';

/**
 * A round tube or bar of outside radius `radius`, endless, whose axis lies in the plane y = `offset` and makes
 * `angle` with the z axis. With d = y - offset the line at (x, y) enters at
 * z = (x cos(angle) + sqrt(radius^2 - d^2)) / sin(angle).
 */
export function roundHeader(radius: Mm, angle: Radians, offset: Mm): Solid {
  const cos = exactCosine(angle);
  const sin = Math.sin(angle);
  return {
    enter(x: Mm, y: Mm): WallEntry | undefined {
      const d = y - offset;
      if (Math.abs(d) > radius + TOUCH) return undefined;
      const half = Math.sqrt(Math.max(0, (radius - d) * (radius + d)));
      return {
        z: (x * cos + half) / sin,
        nx: (-half * cos) / radius,
        ny: d / radius,
        nz: (half * sin) / radius,
        patch: 0,
      };
    },

    // Along a direction (dx, dy) the entry is stationary where d = radius c sign(s) / sqrt(c^2 + s^2),
    // with c = dx cos(angle) and s = dy; where the header is touched all the way it rises to there and falls beyond.
    crests(x0: Mm, y0: Mm, x1: Mm, y1: Mm): readonly number[] {
      const c = (x1 - x0) * cos;
      const s = y1 - y0;
      if (s === 0) return c > 0 ? INNER : OUTER;
      const d = (radius * c * Math.sign(s)) / Math.sqrt(c * c + s * s);
      const along = (d + offset - y0) / s;
      const limit = radius + 2 * TOUCH;
      if (Math.abs(y0 - offset) < limit && Math.abs(y1 - offset) < limit) {
        return along <= 0 ? OUTER : along >= 1 ? INNER : [along];
      }
      return [0, 1, inWall(along), inWall((offset - limit - y0) / s), inWall((offset + limit - y0) / s)];
    },

    distance(x: Mm, y: Mm, z: Mm): Mm {
      return Math.hypot(z * sin - x * cos, y - offset) - radius;
    },

    develop(x: Mm, y: Mm, z: Mm): Developed {
      const towardsBody = z * sin - x * cos;
      return { round: radius * Math.atan2(y - offset, towardsBody), along: x * sin + z * cos };
    },
  };
}

function inWall(along: number): number {
  return Math.min(1, Math.max(0, along));
}

const OUTER: readonly number[] = [0];
const INNER: readonly number[] = [1];

/** cos(pi / 2) is 0, not 6e-17: a square joint has no heel to lean to. */
export function exactCosine(angle: Radians): number {
  return angle === Math.PI / 2 ? 0 : Math.cos(angle);
}
