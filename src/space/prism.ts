import type { Mm, Radians } from '../measure/units.ts';
import type { Profile } from './profile.ts';
import { exactCosine } from './round.ts';
import type { Developed, Solid, WallEntry } from './solid.ts';

/**
 * An endless straight header of any profile, whose axis lies in the plane y = `offset` and makes `angle` with the z
 * axis. A wall line at (x, y) runs at q = y - offset, and p = z sin(angle) - x cos(angle).
 */
export function prism(profile: Profile, angle: Radians, offset: Mm): Solid {
  const cos = exactCosine(angle);
  const sin = Math.sin(angle);
  return {
    enter(x: Mm, y: Mm): WallEntry | undefined {
      const top = profile.top(y - offset);
      if (!top) return undefined;
      return {
        z: (top.p + x * cos) / sin,
        nx: -top.np * cos,
        ny: top.nq,
        nz: top.np * sin,
        patch: top.patch,
      };
    },

    // Along (dx, dy) the entry is stationary where the outline's slope dp/dq is -dx cos(angle) / dy.
    crests(x0: Mm, y0: Mm, x1: Mm, y1: Mm): readonly number[] {
      const dy = y1 - y0;
      if (dy === 0) return [0, 1];
      const q = profile.leaning(Math.atan(((x1 - x0) * cos) / dy));
      const places = q === undefined ? profile.sideLimits : [q, ...profile.sideLimits];
      const between = places.map((place) => (place + offset - y0) / dy);
      return [0, 1, ...between.filter((along) => along > 0 && along < 1)];
    },

    distance(x: Mm, y: Mm, z: Mm): Mm {
      return profile.distance(z * sin - x * cos, y - offset);
    },

    develop(x: Mm, y: Mm, z: Mm): Developed {
      return { round: profile.round(z * sin - x * cos, y - offset), along: x * sin + z * cos };
    },
  };
}
