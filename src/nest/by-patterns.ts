import type { Mm } from '../measure/units.ts';
import type { BarPattern, Demand } from './demand.ts';
import type { Packing } from './fewer-bars.ts';
import { grownPatterns } from './grow-patterns.ts';
import { SAME, type StockKind, sum } from './least-stock.ts';
import { type SizeClass, sizeClasses } from './size-classes.ts';
import { wholePatterns } from './whole-patterns.ts';

/** More sizes than this would take too long to mix: pieces of nearly the same size are then taken for one. */
const MOST_SIZES = 260;

/** How often patterns are added, at most. */
const ROUNDS = 80;

/** A mix is close enough where it takes so much of the longest bar more than is proved. */
const CLOSE = 0.1;

/** What part of the bars is taken at once: fewer, with more care, where that comes to more than a length above the bound. */
const AT_ONCE = [0.3, 0.1];

/** What no nesting takes less than, proved; and bars cut to whole patterns, where what is known is not proved to be best. */
export interface ByPatterns {
  readonly least: Mm;
  readonly bars?: readonly Packing[];
}

/**
 * Nests by patterns, beginning with those of a nesting that is known. `sizes` are one kerf longer than the pieces, which
 * are named by their places; `lifted` tells the least that bars can come to together from a bound on it. Where sizes are
 * taken for one, the bound is that of the shortest of each class and the bars are those of the longest (W. Fernandez de
 * la Vega and G. S. Lueker, Bin packing can be solved within 1 + e in linear time, 1981, from memory).
 */
export function byPatterns(
  sizes: readonly Mm[],
  kinds: readonly StockKind[],
  kerf: Mm,
  known: readonly Packing[],
  lifted: (least: Mm) => Mm,
): ByPatterns {
  const classes = sizeClasses(sizes, MOST_SIZES);
  const many = classes.map(({ places }) => places.length);
  const shortest: Demand = { sizes: classes.map((each) => each.shortest), many, kinds, kerf };
  const total = totalOf(known);
  const close = CLOSE * lengthOfLongest(kinds);
  const enough = (proved: Mm, cost: Mm): boolean => {
    const least = lifted(proved);
    return least >= total - SAME || least >= cost - 0.01 || cost - proved < close;
  };
  const mixed = grownPatterns(shortest, patternsOf(known, classes, kinds), ROUNDS, enough);
  const least = lifted(mixed.least);
  if (total <= least + SAME) return { least };
  const exact = classes.every((each) => each.shortest === each.longest);
  const longest = exact ? shortest : { ...shortest, sizes: classes.map((each) => each.longest) };
  const tries = exact ? AT_ONCE : AT_ONCE.slice(0, 1);
  const wide = exact ? mixed : grownPatterns(longest, [], ROUNDS, enough);
  let best: readonly Packing[] = known;
  for (const atOnce of tries) {
    const whole = wholePatterns(longest, wide, least, atOnce);
    const bars = whole ? barsOf(whole, kinds, classes) : known;
    if (totalOf(bars) < totalOf(best)) best = bars;
    if (totalOf(best) <= least + lengthOfLongest(kinds) + SAME) break;
  }
  return { least, ...(best !== known && { bars: best }) };
}

function lengthOfLongest(kinds: readonly StockKind[]): Mm {
  return Math.max(...kinds.map(({ length }) => length));
}

function totalOf(bars: readonly Packing[]): Mm {
  return sum(bars.map(({ length }) => length));
}

function patternsOf(
  known: readonly Packing[],
  classes: readonly SizeClass[],
  kinds: readonly StockKind[],
): readonly BarPattern[] {
  const classOf = new Map(classes.flatMap(({ places }, i) => places.map((place) => [place, i] as const)));
  return known.map(({ length, pieces }) => {
    const many = new Map<number, number>();
    for (const piece of pieces) {
      const own = classOf.get(piece) ?? 0;
      many.set(own, (many.get(own) ?? 0) + 1);
    }
    const kind = kinds.findIndex((each) => each.length === length);
    return { kind, sizes: [...many.keys()], many: [...many.values()] };
  });
}

function barsOf(
  whole: readonly BarPattern[],
  kinds: readonly StockKind[],
  classes: readonly SizeClass[],
): readonly Packing[] {
  const left = classes.map(({ places }) => [...places]);
  return whole.map(({ kind, sizes, many }) => ({
    length: kinds[kind]?.length ?? 0,
    pieces: sizes.flatMap((size, k) => left[size]?.splice(0, many[k] ?? 0) ?? []),
  }));
}
