import type { Mm } from '../measure/units.ts';

/** One length that the shop has, and how many of it. */
export interface StockKind {
  readonly length: Mm;
  readonly count: number;
}

/** How many of each kind of stock are taken, in the order of the kinds, and how long they are together. */
export interface BarChoice {
  readonly taken: readonly number[];
  readonly total: Mm;
}

/** Sums of lengths closer than this are the same, mm. */
export const SAME: Mm = 1e-6;

/**
 * A lower bound on how many bins of size `bin` these sizes need, the greater of two: by how many pieces a bin holds, and
 * L2 of S. Martello and P. Toth, Lower bounds and reduction procedures for the bin packing problem (1990), from memory.
 * For a bound a up to half a bin, sizes over bin - a go alone, those over half a bin go one in each, and what is left of
 * those down to a has to find room in what these leave; the greatest such count over all a is proved.
 */
export function leastBins(sizes: readonly Mm[], bin: Mm): number {
  return Math.max(leastByPairs(sizes, bin), leastByCount(sizes, bin));
}

/**
 * A lower bound from how many pieces a bin holds. Let bins of `many` pieces or more hold n pieces together. These are no
 * shorter than the n shortest of all, and no bin holds more than `most`, so there are at least max(n / most, shortest n
 * / bin) such bins; all others hold `many` - 1 at most. The least over all n is proved for every `many`.
 */
function leastByCount(sizes: readonly Mm[], bin: Mm): number {
  const sums: Mm[] = [0];
  for (const size of sizes.toSorted((a, b) => a - b)) sums.push((sums.at(-1) ?? 0) + size);
  const most = sums.filter((sum) => sum <= bin + SAME).length - 1;
  const bounds = Array.from({ length: Math.max(0, most - 1) }, (_, i) => {
    const many = i + 2;
    const bins = sums.map((sum, n) => Math.max(n / most, sum / bin) + (sizes.length - n) / (many - 1));
    return Math.ceil(Math.min(...bins) - SAME);
  });
  return Math.max(0, ...bounds);
}

function leastByPairs(sizes: readonly Mm[], bin: Mm): number {
  const inOrder = sizes.toSorted((a, b) => a - b);
  const sums: Mm[] = [0];
  for (const size of inOrder) sums.push((sums.at(-1) ?? 0) + size);
  const above = (size: Mm): number => firstPlace(inOrder.length, (n) => (inOrder[n] ?? 0) > size);
  const half = above(bin / 2 + SAME);
  const together = (from: number, to: number): Mm => (sums[to] ?? 0) - (sums[from] ?? 0);
  const least = (from: number, bound: Mm): number => {
    // From here on pieces go alone: none of the small ones from `from` on goes in beside them.
    const alone = Math.max(half, above(bin - bound + SAME));
    const over = together(from, half) - ((alone - half) * bin - together(half, alone));
    return inOrder.length - half + Math.max(0, Math.ceil(over / bin - SAME));
  };
  return Math.max(least(0, 0), ...inOrder.slice(0, half).map((size) => least(above(size - SAME), size)));
}

/**
 * The first of so many places for which a thing is so that is so for all after it; how many there are where it is for
 * none.
 */
export function firstPlace(count: number, is: (place: number) => boolean): number {
  let [low, high] = [0, count];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (is(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** More ways to choose than this are not looked through. */
const MOST_CHOICES = 60_000;

/**
 * The ways to choose stock that no bound rules out, the shortest together first, and none longer than `most`. `sizes` are
 * the pieces, each with one kerf: n pieces and n - 1 cuts fit a length L where their sizes come to no more than L + kerf.
 * Two bounds are kept for every kind of stock: the pieces that fit none shorter need L2 bins of the longest kind, and their
 * sizes need room, among the kinds that are as long. The first choice's total bounds every packing from below.
 * Undefined where there are too many ways to look through.
 */
export function choices(
  sizes: readonly Mm[],
  kinds: readonly StockKind[],
  kerf: Mm,
  most: Mm,
): readonly BarChoice[] | undefined {
  const order = kinds.map((_, i) => i).sort((a, b) => lengthAt(kinds, b) - lengthAt(kinds, a));
  const longest = lengthAt(kinds, order[0] ?? 0);
  let ways = new Map<string, Way>([['', { taken: kinds.map(() => 0), count: 0, total: 0 }]]);
  for (const [place, kind] of order.entries()) {
    const next = order[place + 1];
    const shorter = next === undefined ? Number.NEGATIVE_INFINITY : lengthAt(kinds, next) + kerf;
    const due = sizes.filter((size) => size > shorter + SAME);
    const least = due.length === 0 ? 0 : leastBins(due, longest + kerf);
    const room = sum(due);
    const more = new Map<string, Way>();
    for (const way of ways.values()) {
      for (const taken of takings(way, kinds[kind], most)) {
        const { count, total } = taken;
        if (count < least || total + kerf * count < room - SAME) continue;
        const key = `${count} ${total.toFixed(4)}`;
        if (!more.has(key)) more.set(key, { ...taken, taken: way.taken.with(kind, count - way.count) });
        if (more.size > MOST_CHOICES) return undefined;
      }
    }
    ways = more;
  }
  return [...ways.values()].sort((a, b) => a.total - b.total || a.count - b.count);
}

interface Way extends BarChoice {
  readonly count: number;
}

function takings(way: Way, kind: StockKind | undefined, most: Mm): Way[] {
  if (!kind) return [];
  const room = Math.floor((most - way.total + SAME) / kind.length);
  return Array.from({ length: Math.max(0, Math.min(kind.count, room)) + 1 }, (_, n) => ({
    taken: way.taken,
    count: way.count + n,
    total: way.total + n * kind.length,
  }));
}

function lengthAt(kinds: readonly StockKind[], place: number): Mm {
  return kinds[place]?.length ?? 0;
}

export function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
