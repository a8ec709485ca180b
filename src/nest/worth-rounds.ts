import type { Mm } from '../measure/units.ts';
import { bestPattern, type Effort, type Offer } from './best-pattern.ts';
import { type Demand, type Packing, SAME, sum, totalOf } from './demand.ts';

/** So much more the longest is worth for its length than the shortest, for long blanks are hard to place at the end. */
const LONG = 0.1;
/** So much of a worth is made anew by one bar. */
const ANEW = 0.2;

/**
 * A better packing than the one that is known, or that one. Round after round all bars are filled, one by one, with what is
 * worth most for the length of stock that it takes; what came to lie in bars with much waste is worth more in the next round
 * (sequential value correction: E. A. Mukhacheva, V. A. Zalgaller, Linear programming cutting problems, 1993, from memory).
 * Ends where no more than `least` is taken.
 */
export function improved(demand: Demand, known: Packing, least: Mm, rounds: number, effort: Effort): Packing {
  const longest = demand.kinds[0]?.length ?? 1;
  const plainWorth = (size: Mm): number => size * (1 + (LONG * size) / longest);
  const worths = new Map(demand.sizes.map((size) => [size, plainWorth(size)]));
  let best = known;
  for (let round = 0; round < rounds && effort.steps > 0; round++) {
    if (best.left.length === 0 && totalOf(best) <= least + SAME) break;
    const packing = filled(demand, worths, effort);
    const fewer = best.left.length - packing.left.length;
    if (fewer > 0 || (fewer === 0 && totalOf(packing) < totalOf(best) - SAME)) best = packing;
    for (const { length, blanks } of packing.bars) {
      const sizes = blanks.map((blank) => demand.sizes[blank] ?? 0);
      const waste = (length + demand.kerf) / sum(sizes);
      for (const size of new Set(sizes))
        worths.set(size, (1 - ANEW) * (worths.get(size) ?? 0) + ANEW * plainWorth(size) * waste);
    }
  }
  return best;
}

/** Bars filled one by one; blanks are left where the stock or the effort is at its end. */
function filled(demand: Demand, worths: ReadonlyMap<Mm, number>, effort: Effort): Packing {
  const { kinds, kerf } = demand;
  const spare = kinds.map(({ count }) => count);
  const bars: Packing['bars'][number][] = [];
  let offers = offersOf(demand, worths);
  while (offers.length > 0 && effort.steps > 0) {
    let best = { many: [] as readonly number[], rate: 0, kind: 0 };
    for (const [kind, { length }] of kinds.entries()) {
      if (spare[kind] === 0) continue;
      const { many, worth } = bestPattern(offers, length + kerf, effort);
      if (worth / length > best.rate * (1 + SAME)) best = { many, rate: worth / length, kind };
    }
    if (best.rate === 0) break;
    spare[best.kind] = (spare[best.kind] ?? 0) - 1;
    const taken = offers.flatMap(({ blanks }, i) => blanks.slice(0, best.many[i] ?? 0));
    bars.push({ length: kinds[best.kind]?.length ?? 0, blanks: taken });
    offers = offers
      .map((offer, i) => ({ ...offer, blanks: offer.blanks.slice(best.many[i] ?? 0) }))
      .filter(({ blanks }) => blanks.length > 0);
  }
  return { bars, left: offers.flatMap(({ blanks }) => blanks) };
}

/** All blanks by their sizes, the most worth for its length first. */
function offersOf({ sizes }: Demand, worths: ReadonlyMap<Mm, number>): readonly Offer[] {
  const blanks = new Map<Mm, number[]>([...worths.keys()].map((size) => [size, []]));
  for (const [blank, size] of sizes.entries()) blanks.get(size)?.push(blank);
  return [...worths]
    .map(([size, worth]) => ({ size, worth, blanks: blanks.get(size) ?? [] }))
    .sort((a, b) => b.worth / b.size - a.worth / a.size || b.size - a.size);
}
