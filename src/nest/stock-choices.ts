import type { Mm } from '../measure/units.ts';
import { type Demand, SAME, type StockKind, sum } from './demand.ts';
import type { Bound, Need } from './lower-bound.ts';

/** Stock to take: how many of each kind, and how long they are together. */
export interface StockChoice {
  readonly kinds: readonly StockKind[];
  readonly total: Mm;
}

/** Of search: a choice that is weighed takes one for each kind and need. */
const MOST_STEPS = 10_000_000;

/**
 * Every choice of whole bars that meets all needs and comes to less than `most`, the least first; undefined where there are
 * too many to look through.
 */
export function choices({ kinds }: Demand, { needs, least }: Bound, most: Mm): StockChoice[] | undefined {
  const found: StockChoice[] = [];
  const after = kinds.map((_, i) => sum(kinds.slice(i + 1).map(({ length, count }) => length * count)));
  let steps = 0;
  const choose = (taken: readonly StockKind[], total: Mm): void => {
    const kind = kinds[taken.length];
    if (!kind) {
      steps += needs.length * kinds.length;
      if (needs.every((need) => meets(taken, need))) found.push({ kinds: taken, total });
      return;
    }
    const { length } = kind;
    const fewest = Math.ceil((least - total - (after[taken.length] ?? 0) - SAME) / length);
    const end = Math.min(kind.count, (most - total) / length - SAME);
    for (let n = Math.max(0, fewest); n <= end && steps <= MOST_STEPS; n++) {
      steps += kinds.length;
      choose([...taken, { length, count: n }], total + n * length);
    }
  };
  choose([], 0);
  return steps > MOST_STEPS ? undefined : found.sort((a, b) => a.total - b.total);
}

function meets(taken: readonly StockKind[], { blanks, kinds: weights }: Need): boolean {
  let weight = SAME;
  for (let i = 0; i < taken.length; i++) weight += (taken[i]?.count ?? 0) * (weights[i] ?? 0);
  return weight >= blanks;
}
