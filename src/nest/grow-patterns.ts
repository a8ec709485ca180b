import type { Mm } from '../measure/units.ts';
import { type BarMixed, barMix } from './bar-mix.ts';
import {
  type BestPattern,
  bestPattern,
  mostByCells,
  type Offer,
  offered,
  offeredLess,
} from './best-pattern.ts';
import type { BarPattern, Demand, Pattern } from './demand.ts';
import { sum } from './least-stock.ts';

/** Patterns mixed in fractions, none known that would make the mix cheaper, or few. */
export interface Grown {
  readonly patterns: readonly BarPattern[];
  readonly shares: ReadonlyMap<BarPattern, number>;
  /** The stock that the mix takes, and what no nesting of whole bars takes less than: proved. */
  readonly mixed: Mm;
  readonly least: Mm;
}

/** How far the worth of a size is held to the one that proved most so far, at first and after each look in vain. */
const HELD = 0.85;
const LOOSER = 0.2;

/** How carefully the best pattern is looked for, and further ones with it. */
const PROVED = { finer: 2e-4, steps: 15_000 };
const FURTHER = { finer: 1e-3, steps: 1_000 };

/**
 * Column generation (P. C. Gilmore and R. E. Gomory, A linear programming approach to the cutting-stock problem, 1961,
 * from memory): patterns that are worth more than their bar at the prices of the mix are added to it, until `enough` is
 * so or none is found. They are looked for at prices held near to those that proved most (P. Wentges, Weighted Dantzig-
 * Wolfe decomposition for linear mixed-integer programming, 1997, from memory), for the mix alone swings to and fro.
 */
export function grownPatterns(
  demand: Demand,
  known: readonly BarPattern[],
  rounds: number,
  enough: (least: Mm, mixed: Mm) => boolean,
): Grown {
  const { sizes, many, kinds, kerf } = demand;
  const master = barMix(demand);
  const patterns = [...known];
  master.add(known);
  const rate = Math.min(...kinds.map(({ length }) => length / (length + kerf)));
  let worth = sizes.map((size) => size * rate);
  let best = { worth, least: sum(worth.map((each, i) => each * (many[i] ?? 0))) };
  let held = HELD;
  let mixed = master.solved();
  for (let round = 0; round < rounds && !enough(best.least, mixed.cost); round++) {
    const { prices } = mixed;
    worth = best.worth.map((value, i) => value * held + (prices[i] ?? 0) * (1 - held));
    const offer = offered(sizes, worth, many);
    const found = kinds.map(({ length }) =>
      bestPattern(offer, length + kerf, { ...PROVED, pass: length, finer: length * PROVED.finer }),
    );
    const least = provedBy(demand, worth, found, offer, best.least);
    const fresh = found.flatMap((first, kind) => worthMore(demand, kind, first, offer, mixed));
    if (least > best.least) best = { worth, least };
    if (fresh.length === 0 && held === 0) break;
    held = fresh.length > 0 ? HELD : Math.max(0, held - LOOSER);
    if (fresh.length === 0) continue;
    patterns.push(...fresh);
    master.add(fresh);
    mixed = master.solved();
  }
  return { patterns, shares: mixed.shares, mixed: mixed.cost, least: best.least };
}

/**
 * Patterns of one kind of bar that are worth more than it takes at the prices of the mix: the first, and one after
 * another of the sizes that are in none before it.
 */
function worthMore(
  { many, kinds, kerf }: Demand,
  kind: number,
  first: Pattern,
  offer: Offer,
  { prices, scarce }: BarMixed,
): readonly BarPattern[] {
  const length = kinds[kind]?.length ?? 0;
  const costs = length + (scarce[kind] ?? 0);
  const left = [...many];
  const fresh: BarPattern[] = [];
  for (let pattern = first; pattern.sizes.length > 0; ) {
    const price = sum(pattern.sizes.map((size, k) => (prices[size] ?? 0) * (pattern.many[k] ?? 0)));
    if (price > costs + 1e-6) fresh.push({ kind, sizes: pattern.sizes, many: pattern.many });
    else if (pattern !== first) break;
    for (const size of pattern.sizes) left[size] = 0;
    const finer = length * FURTHER.finer;
    pattern = bestPattern(offeredLess(offer, left), length + kerf, { ...FURTHER, pass: 0, finer });
  }
  return fresh;
}

/** The bound that these worths prove; where it can't pass what is proved already, no work is spent on it. */
function provedBy(
  demand: Demand,
  worth: readonly number[],
  found: readonly BestPattern[],
  offer: Offer,
  known: Mm,
): Mm {
  const mosts = found.map(({ most }) => most);
  const hoped = leastByWorth(demand, worth, mosts);
  if (hoped <= known || found.every(({ ended }) => ended)) return hoped;
  const sure = demand.kinds.map(({ length }, kind) => {
    const { most = length, ended = false } = found[kind] ?? {};
    return ended ? most : Math.max(length, mostByCells(offer, length + demand.kerf));
  });
  return leastByWorth(demand, worth, sure);
}

/**
 * What stock no nesting can do without, where a piece of each size is worth so much and no bar of a kind can hold more
 * than its `most`: all pieces' worth, less what each bar that there is may hold above its length. The worth may be
 * scaled, so the best scale is taken (weak duality; A. A. Farley, A note on bounding a class of linear programming
 * problems, 1990, from memory).
 */
function leastByWorth({ many, kinds }: Demand, worth: readonly number[], mosts: readonly number[]): Mm {
  const pieces = sum(many);
  const all = sum(worth.map((each, i) => each * (many[i] ?? 0)));
  const above = (scale: number): Mm[] =>
    kinds.map(({ length, count }, kind) => {
      const most = scale * (mosts[kind] ?? 0);
      return Math.min(count, pieces) * Math.max(0, most - length);
    });
  const scales = kinds.map(({ length }, kind) => length / (mosts[kind] ?? length));
  const bounds = scales.map((scale) => scale * all - sum(above(scale)));
  // What is lost in rounding is far less than this.
  return Math.max(...bounds) * (1 - 1e-9);
}
