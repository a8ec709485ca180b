import type { Mm } from '../measure/units.ts';

/**
 * The cross-section of a straight header, seen along its axis: p towards the tube's body, q along w, both from the
 * header's own axis. A line of the tube's wall runs at one q and comes down from large p.
 */
export interface Profile {
  /** The highest point at this q, and the outward normal there; undefined where q passes beside. */
  top(q: Mm): Top | undefined;
  /**
   * The q of the top whose outward normal leans this far from p towards q, in radians, between -pi/2 and pi/2. At a
   * sharp corner that is the corner. Undefined for a profile that is the same everywhere.
   */
  leaning(angle: number): Mm | undefined;
  /** Where q first passes beside, on either side: nowhere for a profile without an end. */
  readonly sideLimits: readonly Mm[];
  /** Signed way from a point to the outline, negative inside. */
  distance(p: Mm, q: Mm): Mm;
  /** Way round the outline from its top at q = 0, positive towards q. */
  round(p: Mm, q: Mm): Mm;
}

export interface Top {
  readonly p: Mm;
  /** Outward unit normal. */
  readonly np: number;
  readonly nq: number;
  readonly patch: number;
}
