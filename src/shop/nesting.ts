import type { Mm } from '../measure/units.ts';
import { fewerBars } from './fewer-bars.ts';
import { type Choice, choices, SAME, type StockKind, sum } from './least-stock.ts';
import { fewestLeft, greedy, MOST_SEARCHED, type Packed, packed } from './pack-bars.ts';

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
  const known = fewestLeft(greedy(sizes, stock, kerf), sizes, stock, kerf);
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
