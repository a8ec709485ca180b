import type { Mm } from '../measure/units.ts';
import type { Profile, Top } from './profile.ts';

/** A plate, endless, whose surface lies so far from the header's axis towards the tube's body. */
export function plateProfile(above: Mm): Profile {
  const flat: Top = { p: above, np: 1, nq: 0, patch: 0 };
  return {
    top: () => flat,
    leaning: () => undefined,
    sideLimits: [],
    distance: (p: Mm) => p - above,
    round: (_p: Mm, q: Mm) => q,
  };
}
