import type { Mm } from '../measure/units.ts';
import type { BarPattern, Demand } from './demand.ts';
import type { Packing } from './fewer-bars.ts';
import { grown } from './grow-patterns.ts';
import { SAME, type StockKind, sum } from './least-stock.ts';
import { wholePatterns } from './whole-patterns.ts';

/** More sizes than this would take too long to mix. */
const MOST_SIZES = 260;

/** How often patterns are added, at most. */
const ROUNDS = 80;

/** A mix is close enough where it takes so much of the longest bar more than is proved. */
const CLOSE = 0.1;

/** What no nesting takes less than, proved; and bars cut to whole patterns, where what is known is not proved to be best. */
export interface ByPatterns {
  readonly least: Mm;
  readonly bars?: readonly Packing[];
}

/**
 * Nests by patterns, beginning with those of a nesting that is known. `sizes` are one kerf longer than the pieces, which
 * are named by their places; `lifted` tells the least that bars can come to together from a bound on it. Undefined for
 * too many sizes.
 */
export function byPatterns(
  sizes: readonly Mm[],
  kinds: readonly StockKind[],
  kerf: Mm,
  known: readonly Packing[],
  lifted: (least: Mm) => Mm,
): ByPatterns | undefined {
  const places = bySize(sizes);
  if (places.size > MOST_SIZES) return undefined;
  const demand: Demand = {
    sizes: [...places.keys()],
    many: [...places.values()].map(({ length }) => length),
    kinds,
    kerf,
  };
  const total = sum(known.map(({ length }) => length));
  const close = CLOSE * Math.max(...kinds.map(({ length }) => length));
  const mixed = grown(demand, patternsOf(known, sizes, demand), ROUNDS, (proved, cost) => {
    const least = lifted(proved);
    return least >= total - SAME || least >= cost - 0.01 || cost - proved < close;
  });
  const least = lifted(mixed.least);
  if (total <= least + SAME) return { least };
  const whole = wholePatterns(demand, mixed, least);
  return { least, ...(whole && { bars: barsOf(whole, demand, places) }) };
}

function bySize(sizes: readonly Mm[]): ReadonlyMap<Mm, number[]> {
  const places = new Map<Mm, number[]>();
  for (const [place, size] of sizes.entries()) {
    const same = places.get(size);
    if (same) same.push(place);
    else places.set(size, [place]);
  }
  return places;
}

function patternsOf(known: readonly Packing[], sizes: readonly Mm[], demand: Demand): readonly BarPattern[] {
  const placeOf = new Map(demand.sizes.map((size, i) => [size, i]));
  return known.map(({ length, pieces }) => {
    const own = bySize(pieces.map((piece) => sizes[piece] ?? 0));
    return {
      kind: demand.kinds.findIndex((kind) => kind.length === length),
      sizes: [...own.keys()].flatMap((size) => placeOf.get(size) ?? []),
      many: [...own.values()].map((same) => same.length),
    };
  });
}

function barsOf(
  whole: readonly BarPattern[],
  { sizes, kinds }: Demand,
  places: ReadonlyMap<Mm, readonly number[]>,
): readonly Packing[] {
  const left = new Map([...places].map(([size, own]) => [size, [...own]]));
  return whole.map((pattern) => ({
    length: kinds[pattern.kind]?.length ?? 0,
    pieces: pattern.sizes.flatMap(
      (size, k) => left.get(sizes[size] ?? 0)?.splice(0, pattern.many[k] ?? 0) ?? [],
    ),
  }));
}
