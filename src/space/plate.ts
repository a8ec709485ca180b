import type { Mm } from '../measure/units.ts';
import type { Profile, Top } from './profile.ts';

const FLAT: Top = { p: 0, np: 1, nq: 0, patch: 0 };

/** A plate, endless, whose surface holds the header's axis. */
export const PLATE: Profile = {
  top: () => FLAT,
  leaning: () => undefined,
  sideLimits: [],
  distance: (p: Mm) => p,
  round: (_p: Mm, q: Mm) => q,
};
