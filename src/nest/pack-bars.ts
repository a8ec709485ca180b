import type { Mm } from '../measure/units.ts';
import { type BarFilling, bestFit, leastSlack, mostPieces } from './fill-bars.ts';
import { SAME, type StockKind, sum } from './least-stock.ts';
import { byTrying } from './try-bars.ts';

/** Lengths of stock, and what goes into each. */
export interface Packed {
  readonly lengths: readonly Mm[];
  readonly filling: BarFilling;
}

/** More pieces than this are nested by the first ways alone, which come the nearer to the bound the more there are. */
export const MOST_SEARCHED = 600;

const ORDERS = 3;

/** Pieces into these lengths by the way that leaves fewest over. */
export function packed(sizes: readonly Mm[], lengths: readonly Mm[], kerf: Mm): BarFilling {
  const rooms = lengths.map((length) => length + kerf);
  let best: BarFilling | undefined;
  for (let shake = 0; shake < ORDERS; shake++) {
    const order = longestFirst(sizes, shake);
    for (const fill of [bestFit, leastSlack, mostPieces]) {
      const filling = fill(sizes, order, rooms);
      if (filling.left.length === 0) return filling;
      if (!best || filling.left.length < best.left.length) best = filling;
    }
  }
  const tried = byTrying(sizes, longestFirst(sizes, 0), rooms);
  return tried ?? best ?? { bars: [], left: sizes.map((_, i) => i) };
}

/** The longest first; each shake after none moves them a little more, always the same. */
function longestFirst(sizes: readonly Mm[], shake: number): number[] {
  const weights = sizes.map(
    (size, i) => size * (1 + shake * 0.04 * ((((i + 1) * 0.618033988749895 * (shake + 1)) % 1) - 0.5)),
  );
  return sizes.map((_, i) => i).sort((a, b) => (weights[b] ?? 0) - (weights[a] ?? 0) || a - b);
}

/** Where the first ways leave pieces over, all the stock there is is tried again with more care. */
export function fewestLeft(
  known: Packed,
  sizes: readonly Mm[],
  kinds: readonly StockKind[],
  kerf: Mm,
): Packed {
  if (known.filling.left.length === 0 || sizes.length > MOST_SEARCHED) return known;
  const lengths = stockOf(kinds, sizes.length);
  const filling = packed(sizes, lengths, kerf);
  return filling.left.length < known.filling.left.length
    ? shortened({ lengths, filling }, sizes, kerf)
    : known;
}

/** Every length there is, no more of one than there are pieces. */
function stockOf(kinds: readonly StockKind[], most: number): readonly Mm[] {
  return kinds.flatMap(({ length, count }) => Array.from({ length: Math.min(count, most) }, () => length));
}

/** All the stock there is, the longest or the shortest first; then each bar's pieces in the shortest that holds them. */
export function greedy(sizes: readonly Mm[], kinds: readonly StockKind[], kerf: Mm): Packed {
  const all = stockOf(kinds, sizes.length);
  const tries = [1, -1].flatMap((way) => {
    const lengths = all.toSorted((a, b) => way * (b - a));
    const rooms = lengths.map((length) => length + kerf);
    const order = longestFirst(sizes, 0);
    const fills =
      sizes.length > MOST_SEARCHED ? [firstFit, bestFit] : [firstFit, leastSlack, bestFit, mostPieces];
    return fills.map((fill) => shortened({ lengths, filling: fill(sizes, order, rooms) }, sizes, kerf));
  });
  const [best] = tries.sort(
    (a, b) => a.filling.left.length - b.filling.left.length || sum(a.lengths) - sum(b.lengths),
  );
  return best ?? { lengths: [], filling: { bars: [], left: sizes.map((_, i) => i) } };
}

/** Each piece, in this order, into the first bar that holds it. */
function firstFit(sizes: readonly Mm[], order: readonly number[], rooms: readonly Mm[]): BarFilling {
  const free = [...rooms];
  const bars: number[][] = rooms.map(() => []);
  const left: number[] = [];
  for (const piece of order) {
    const size = sizes[piece] ?? 0;
    const bar = free.findIndex((room) => room >= size - SAME);
    if (bar < 0) left.push(piece);
    else {
      bars[bar]?.push(piece);
      free[bar] = (free[bar] ?? 0) - size;
    }
  }
  return { bars, left };
}

/** The bars that hold something, each changed for the shortest spare length that holds as much. */
function shortened({ lengths, filling }: Packed, sizes: readonly Mm[], kerf: Mm): Packed {
  const filled = lengths.map((length, i) => ({ length, pieces: filling.bars[i] ?? [] }));
  const bars = filled.filter(({ pieces }) => pieces.length > 0);
  const spare = new Map([...new Set(lengths)].sort((a, b) => a - b).map((length) => [length, 0]));
  const changeSpare = (length: Mm, by: number): unknown => spare.set(length, (spare.get(length) ?? 0) + by);
  for (const { length, pieces } of filled) if (pieces.length === 0) changeSpare(length, 1);
  const changed = bars.map(({ length, pieces }) => {
    const used = sum(pieces.map((piece) => sizes[piece] ?? 0)) - kerf;
    const other = [...spare].find(([each, n]) => n > 0 && each >= used - SAME && each < length)?.[0];
    if (other === undefined) return { length, pieces };
    changeSpare(other, -1);
    changeSpare(length, 1);
    return { length: other, pieces };
  });
  return {
    lengths: changed.map(({ length }) => length),
    filling: { bars: changed.map(({ pieces }) => pieces), left: filling.left },
  };
}
