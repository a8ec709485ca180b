import type { Mm } from '../measure/units.ts';
import { byPatterns } from './by-patterns.ts';
import { fewerBars, type Packing } from './fewer-bars.ts';
import { type BarChoice, choices, SAME, type StockKind, sum } from './least-stock.ts';
import { fewestLeft, greedy, type Packed, packed } from './pack-bars.ts';

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
 * Nests pieces into the lengths that there are, `kerf` lost at every cut, so that the stock taken is as short together
 * as is found. Best fit and least slack at first; where these are not proved to be best, bars done without one by one;
 * then whole bars out of a mix of patterns, whose prices prove a bound too; for few pieces one choice of stock after
 * another from the bound up. The same pieces give the same nesting. All in mm.
 */
export function nest(pieces: readonly Mm[], kinds: readonly StockKind[], kerf: Mm): Nesting {
  const sizes = pieces.map((piece) => piece + kerf);
  const stock = merged(kinds);
  const known = fewestLeft(greedy(sizes, stock, kerf), sizes, stock, kerf);
  if (known.filling.left.length > 0 || pieces.length === 0) return nestingOf(pieces, known, kerf);
  const ways = choices(sizes, stock, kerf, totalOf(known));
  const lifted = (least: Mm): Mm =>
    ways ? (ways.find(({ total }) => total >= least - SAME)?.total ?? totalOf(known)) : least;
  let least = lifted(leastByRoom(sizes, stock, kerf));
  let best = withFewer(known, sizes, kerf, least);
  if (totalOf(best) > least + SAME) {
    const found = byPatterns(sizes, stock, kerf, barsOf(best), lifted);
    least = Math.max(least, found.least);
    const other = found.bars && withFewer(packedOf(found.bars), sizes, kerf, least);
    if (other && totalOf(other) < totalOf(best) - SAME) best = other;
  }
  if (ways && pieces.length <= FEW) {
    const better = ways.filter(({ total }) => total >= least - SAME && total < totalOf(best) - SAME);
    best = firstThatHolds(sizes, stock, kerf, better) ?? best;
  }
  return { ...nestingOf(pieces, best, kerf), least };
}

/** What the pieces need by their sizes alone: n pieces of a length L leave room for n kerfs and take L + kerf. */
function leastByRoom(sizes: readonly Mm[], kinds: readonly StockKind[], kerf: Mm): Mm {
  return sum(sizes) * Math.min(...kinds.map(({ length }) => length / (length + kerf)));
}

/** Each length once, with all that there is of it. */
function merged(kinds: readonly StockKind[]): readonly StockKind[] {
  const counts = new Map<Mm, number>();
  for (const { length, count } of kinds) counts.set(length, (counts.get(length) ?? 0) + count);
  return [...counts].map(([length, count]) => ({ length, count })).filter(({ count }) => count > 0);
}

function totalOf({ lengths }: Packed): Mm {
  return sum(lengths);
}

function withFewer(known: Packed, sizes: readonly Mm[], kerf: Mm, least: Mm): Packed {
  return packedOf(fewerBars(barsOf(known), sizes, kerf, least));
}

function barsOf({ lengths, filling }: Packed): readonly Packing[] {
  return lengths.map((length, i) => ({ length, pieces: filling.bars[i] ?? [] }));
}

function packedOf(bars: readonly Packing[]): Packed {
  return {
    lengths: bars.map(({ length }) => length),
    filling: { bars: bars.map(({ pieces }) => pieces), left: [] },
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

/** More pieces than this, or more ways, are not tried so. */
const FEW = 60;
const MOST_WAYS = 3;

/** The first choice of stock into which all pieces are found to go. */
function firstThatHolds(
  sizes: readonly Mm[],
  kinds: readonly StockKind[],
  kerf: Mm,
  ways: readonly BarChoice[],
): Packed | undefined {
  for (const { taken } of ways.slice(0, MOST_WAYS)) {
    const lengths = taken.flatMap((count, i) => Array.from({ length: count }, () => kinds[i]?.length ?? 0));
    const filling = packed(sizes, lengths, kerf);
    if (filling.left.length === 0) return { lengths, filling };
  }
  return undefined;
}
