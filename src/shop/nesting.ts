import type { Mm } from '../measure/units.ts';
import { fewerBars } from './fewer-bars.ts';
import { bestFit, type Filling, leastSlack, mostPieces } from './fill-bars.ts';
import { type Choice, choices, SAME, type StockKind, sum } from './least-stock.ts';
import { byTrying } from './try-bars.ts';

/** One length of stock and the places of the pieces that are cut from it, in the order they are cut. */
export interface Bar {
  readonly length: Mm;
  readonly pieces: readonly number[];
  /** What is left of it. */
  readonly offcut: Mm;
}

/** Pieces nested into stock. */
export interface Nesting {
  readonly bars: readonly Bar[];
  /** The places of pieces that found no stock. */
  readonly left: readonly number[];
  /** Together of the stock that is taken. */
  readonly total: Mm;
  /**
   * No way to nest these pieces into this stock takes less: proved. Undefined where some found no stock.
   */
  readonly least?: Mm;
}

/**
 * Nests pieces into the lengths that there are, `kerf` lost at every cut, so that the stock taken is as short together as
 * is found. Best fit and least slack, over several orders of the pieces, for one choice of stock after another from the
 * lower bound up; the same pieces give the same nesting. All in mm.
 */
export function nest(pieces: readonly Mm[], kinds: readonly StockKind[], kerf: Mm): Nesting {
  const sizes = pieces.map((piece) => piece + kerf);
  const stock = kinds.filter(({ count }) => count > 0);
  const known = greedy(sizes, stock, kerf);
  if (known.filling.left.length > 0 || pieces.length === 0) return nestingOf(pieces, known, kerf);
  const ways = choices(sizes, stock, kerf, sum(known.lengths));
  const first = ways?.[0] ?? { total: leastByRoom(sizes, stock, kerf) };
  if (ways === undefined || pieces.length > MOST_SEARCHED)
    return { ...nestingOf(pieces, known, kerf), least: first.total };
  const fewer = withFewer(known, sizes, kerf, first.total);
  const better = ways.filter(({ total }) => total < sum(fewer.lengths) - SAME);
  const best = firstThatHolds(sizes, stock, kerf, better) ?? fewer;
  return { ...nestingOf(pieces, best, kerf), least: first.total };
}

/** More pieces than this are nested by the first ways alone, which come the nearer to the bound the more there are. */
const MOST_SEARCHED = 600;

/** What the pieces need by their sizes alone: n pieces of a length L leave room for n kerfs and take L + kerf. */
function leastByRoom(sizes: readonly Mm[], kinds: readonly StockKind[], kerf: Mm): Mm {
  return sum(sizes) * Math.min(...kinds.map(({ length }) => length / (length + kerf)));
}

function withFewer({ lengths, filling }: Packed, sizes: readonly Mm[], kerf: Mm, least: Mm): Packed {
  const bars = lengths.map((length, i) => ({ length, pieces: filling.bars[i] ?? [] }));
  const fewer = fewerBars(bars, sizes, kerf, least);
  return {
    lengths: fewer.map(({ length }) => length),
    filling: { bars: fewer.map(({ pieces }) => pieces), left: filling.left },
  };
}

/** Lengths of stock, and what goes into each. */
interface Packed {
  readonly lengths: readonly Mm[];
  readonly filling: Filling;
}

function nestingOf(pieces: readonly Mm[], { lengths, filling }: Packed, kerf: Mm): Nesting {
  const bars = lengths.flatMap((length, i): Bar[] => {
    const own = [...(filling.bars[i] ?? [])].sort((a, b) => (pieces[b] ?? 0) - (pieces[a] ?? 0) || a - b);
    if (own.length === 0) return [];
    const used = sum(own.map((piece) => (pieces[piece] ?? 0) + kerf));
    return [{ length, pieces: own, offcut: Math.max(0, length - used) }];
  });
  return { bars, left: filling.left, total: sum(bars.map(({ length }) => length)) };
}

const MOST_WAYS = 3;

/** The first choice of stock into which all pieces are found to go. */
function firstThatHolds(
  sizes: readonly Mm[],
  kinds: readonly StockKind[],
  kerf: Mm,
  ways: readonly Choice[],
): Packed | undefined {
  for (const { taken } of ways.slice(0, MOST_WAYS)) {
    const lengths = taken.flatMap((count, i) => Array.from({ length: count }, () => kinds[i]?.length ?? 0));
    const filling = packed(sizes, lengths, kerf);
    if (filling.left.length === 0) return { lengths, filling };
  }
  return undefined;
}

const ORDERS = 3;

/** Pieces into these lengths by the way that leaves fewest over. */
function packed(sizes: readonly Mm[], lengths: readonly Mm[], kerf: Mm): Filling {
  const rooms = lengths.map((length) => length + kerf);
  let best: Filling | undefined;
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

/** All the stock there is, the longest or the shortest first; then each bar's pieces in the shortest that holds them. */
function greedy(sizes: readonly Mm[], kinds: readonly StockKind[], kerf: Mm): Packed {
  const all = kinds.flatMap(({ length, count }) =>
    Array.from({ length: Math.min(count, sizes.length) }, () => length),
  );
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
function firstFit(sizes: readonly Mm[], order: readonly number[], rooms: readonly Mm[]): Filling {
  const free = [...rooms];
  const bars: number[][] = rooms.map(() => []);
  const left: number[] = [];
  for (const piece of order) {
    const size = sizes[piece] ?? 0;
    const bar = free.findIndex((room) => room >= size - 1e-6);
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
  const spare = filled.filter(({ pieces }) => pieces.length === 0).map(({ length }) => length);
  const bars = filled.filter(({ pieces }) => pieces.length > 0);
  const changed = bars.map(({ length, pieces }) => {
    const used = sum(pieces.map((piece) => sizes[piece] ?? 0)) - kerf;
    const fitting = spare.filter((other) => other >= used - 1e-6 && other < length);
    if (fitting.length === 0) return { length, pieces };
    const other = Math.min(...fitting);
    spare.splice(spare.indexOf(other), 1, length);
    return { length: other, pieces };
  });
  return {
    lengths: changed.map(({ length }) => length),
    filling: { bars: changed.map(({ pieces }) => pieces), left: filling.left },
  };
}
