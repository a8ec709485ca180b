import type { Mm } from '../measure/units.ts';
import type { BarPattern, Demand } from './demand.ts';
import { type Grown, grownPatterns } from './grow-patterns.ts';
import { sum } from './least-stock.ts';

/** A pattern with so much of a bar in the mix is taken. */
const SURE = 0.7;
/** How often patterns are added for what is left. */
const ROUNDS = 6;

/**
 * Whole bars out of a mix: those that are most surely in it are taken, and for what is left a mix is made anew, until
 * nothing is. Looks no further where that would come to `target` in all. Undefined where the stock runs out on the way.
 */
export function wholePatterns(
  demand: Demand,
  { patterns, shares }: Grown,
  target: Mm,
  atOnce: number,
): readonly BarPattern[] | undefined {
  const taken: BarPattern[] = [];
  let left = demand;
  let mixed = { patterns, shares };
  while (left.many.some((n) => n > 0)) {
    const sure = surest(left, mixed.shares, atOnce);
    if (sure.length === 0) return undefined;
    taken.push(...sure);
    left = without(left, sure);
    const total = sum(taken.map(({ kind }) => demand.kinds[kind]?.length ?? 0));
    const rest = left;
    const own = mixed.patterns.flatMap((pattern) => trimmed(rest, pattern));
    mixed = grownPatterns(left, own, ROUNDS, (_, more) => total + more <= target + 0.01);
  }
  return taken;
}

/** Patterns in the order of their shares, as long as there are pieces and stock for the whole of each. */
function surest(
  left: Demand,
  shares: ReadonlyMap<BarPattern, number>,
  atOnce: number,
): readonly BarPattern[] {
  const least = Math.floor(sum([...shares.values()]) * atOnce);
  const many = [...left.many];
  const counts = left.kinds.map(({ count }) => count);
  const sure: BarPattern[] = [];
  for (const [pattern, share] of [...shares].sort((a, b) => b[1] - a[1])) {
    if (sure.length > 0 && sure.length >= least && share < SURE) break;
    for (let n = Math.max(1, Math.floor(share + 1e-3)); n > 0; n--) {
      const holds = pattern.sizes.every((size, k) => (many[size] ?? 0) >= (pattern.many[k] ?? 0));
      if (!holds || (counts[pattern.kind] ?? 0) < 1) break;
      take(pattern, many, counts);
      sure.push(pattern);
    }
  }
  return sure;
}

function take({ sizes, many, kind }: BarPattern, left: number[], counts: number[]): void {
  for (const [k, size] of sizes.entries()) left[size] = (left[size] ?? 0) - (many[k] ?? 0);
  counts[kind] = (counts[kind] ?? 0) - 1;
}

function without(left: Demand, bars: readonly BarPattern[]): Demand {
  const many = [...left.many];
  const counts = left.kinds.map(({ count }) => count);
  for (const bar of bars) take(bar, many, counts);
  return { ...left, many, kinds: left.kinds.map((kind, i) => ({ ...kind, count: counts[i] ?? 0 })) };
}

/** What a pattern cuts of the pieces that are left; none where that is nothing, or there is no bar for it. */
function trimmed(left: Demand, { kind, sizes, many }: BarPattern): readonly BarPattern[] {
  const cut = sizes
    .map((size, k) => ({ size, n: Math.min(many[k] ?? 0, left.many[size] ?? 0) }))
    .filter(({ n }) => n > 0);
  if (cut.length === 0 || (left.kinds[kind]?.count ?? 0) < 1) return [];
  return [{ kind, sizes: cut.map(({ size }) => size), many: cut.map(({ n }) => n) }];
}
