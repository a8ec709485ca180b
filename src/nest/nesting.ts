import type { Mm } from '../measure/units.ts';
import { type Demand, demandOf, type Packing, type StockKind, sum, totalOf } from './demand.ts';
import { firstFitDecreasing } from './first-fit.ts';
import { boundOf } from './lower-bound.ts';
import { choices } from './stock-choices.ts';
import { improved } from './worth-rounds.ts';

/** One length of stock, and the places of its blanks in the order they are cut, the longest first. */
export interface Bar {
  readonly length: Mm;
  readonly blanks: readonly number[];
  readonly offcut: Mm;
}

/** Blanks nested into stock. */
export interface Nesting {
  readonly bars: readonly Bar[];
  /** The places of blanks that found no stock. */
  readonly left: readonly number[];
  /** Together of the stock that is taken. */
  readonly total: Mm;
  /** No way to nest these blanks into this stock takes less: proved. Undefined where some found no stock. */
  readonly lowerBound?: Mm;
}

/** Rounds with all the stock that there is; then choices of less stock that are tried, and rounds with each of these. */
const ROUNDS = 60;
const MOST_CHOICES = 30;
const ROUNDS_EACH = 10;
/** Of search in all of these: well under a second. */
const MOST_STEPS = 1_500_000;

/**
 * Nests blanks into the lengths that there are, `kerf` lost at every cut, so that the stock taken is as short together as is
 * found: by first fit decreasing, improved until the lower bound is met or the effort is at its end. The same blanks give
 * the same nesting on every machine. All in mm.
 */
export function nest(blanks: readonly Mm[], stock: readonly StockKind[], kerf: Mm): Nesting {
  const demand = demandOf(blanks, stock, kerf);
  const bound = boundOf(demand);
  const effort = { steps: MOST_STEPS };
  let best = improved(demand, firstFitDecreasing(demand), bound.least, ROUNDS, effort);
  if (best.left.length > 0) return nestingOf(best, demand);
  const less = choices(demand, bound, totalOf(best));
  const lowerBound = less ? (less[0]?.total ?? totalOf(best)) : bound.least;
  for (const { kinds, total } of less?.slice(0, MOST_CHOICES) ?? [])
    best = improved({ ...demand, kinds }, best, total, ROUNDS_EACH, effort);
  return { ...nestingOf(best, demand), lowerBound };
}

function nestingOf(packing: Packing, { sizes }: Demand): Nesting {
  const sizeOf = (blank: number): Mm => sizes[blank] ?? 0;
  const bars = packing.bars.map(({ length, blanks }) => ({
    length,
    blanks: blanks.toSorted((a, b) => sizeOf(b) - sizeOf(a) || a - b),
    offcut: Math.max(0, length - sum(blanks.map(sizeOf))),
  }));
  return { bars, left: packing.left, total: totalOf(packing) };
}
