import type { Mm } from '../measure/units.ts';
import { SAME } from './demand.ts';

/** Blanks of one size, by their places, and what one of them is worth. */
export interface Offer {
  readonly size: Mm;
  readonly worth: number;
  readonly blanks: readonly number[];
}

/** What is cut from one bar: how many of each offer, in their order, and what that is worth. */
export interface Pattern {
  readonly many: readonly number[];
  readonly worth: number;
}

/** Steps of searching that are left: a clock in their place would end elsewhere on another machine. */
export interface Effort {
  steps: number;
}

/** The best so far is taken after so many. */
const MOST_STEPS = 1_000;

/**
 * What goes into a room and is worth most together: depth first through the offers, which come the most worth for its
 * length first, and no further where even the free room filled at that rate would not be worth more than the best so far.
 */
export function bestPattern(offers: readonly Offer[], room: Mm, effort: Effort): Pattern {
  let best: Pattern = { many: [], worth: 0 };
  let steps = 0;
  const many = offers.map(() => 0);
  const shortest = Math.min(...offers.map(({ size }) => size));
  const search = (from: number, free: Mm, worth: number): void => {
    if (worth > best.worth) best = { many: many.slice(0, from), worth };
    for (let i = from; i < offers.length && free >= shortest && steps < MOST_STEPS; i++) {
      const offer = offers[i];
      if (!offer || worth + (free * offer.worth) / offer.size <= best.worth + SAME) return;
      steps++;
      for (let n = Math.min(offer.blanks.length, Math.floor(free / offer.size)); n > 0; n--) {
        many[i] = n;
        search(i + 1, free - n * offer.size, worth + n * offer.worth);
      }
      many[i] = 0;
    }
  };
  search(0, room + SAME, 0);
  effort.steps -= steps + offers.length / 5;
  return best;
}
