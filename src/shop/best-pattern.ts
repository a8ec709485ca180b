import type { Mm } from '../measure/units.ts';
import type { Pattern } from './demand.ts';
import { SAME } from './least-stock.ts';

/** The pattern that is worth most of those found, and what none is worth more than: proved. */
export interface BestPattern extends Pattern {
  readonly most: number;
}

/**
 * Sizes, with what one piece of each is worth and how many there are, as the search takes them: the most worth for its
 * length first.
 */
export interface Offer {
  readonly places: readonly number[];
  readonly sizes: Float64Array;
  readonly worth: Float64Array;
  readonly many: Float64Array;
  /** From each place on: the shortest size and the greatest worth. */
  readonly shortest: Float64Array;
  readonly dearest: Float64Array;
  /** The sizes in order, and the greatest worth up to each. */
  readonly bySize: Float64Array;
  readonly dearestTo: Float64Array;
}

/** Sizes that are worth nothing, or of which there are none, are left out. */
export function offered(sizes: readonly Mm[], worth: readonly number[], many: readonly number[]): Offer {
  const sizeOf = (i: number): Mm => sizes[i] ?? 0;
  const worthOf = (i: number): number => worth[i] ?? 0;
  const places = sizes
    .map((_, i) => i)
    .filter((i) => worthOf(i) > 0 && (many[i] ?? 0) > 0)
    .sort((a, b) => worthOf(b) / sizeOf(b) - worthOf(a) / sizeOf(a) || a - b);
  const inOrder = places.toSorted((a, b) => sizeOf(a) - sizeOf(b));
  return {
    places,
    sizes: Float64Array.from(places, sizeOf),
    worth: Float64Array.from(places, worthOf),
    many: Float64Array.from(places, (i) => many[i] ?? 0),
    shortest: running(places.toReversed().map(sizeOf), Math.min).reverse(),
    dearest: running(places.toReversed().map(worthOf), Math.max).reverse(),
    bySize: Float64Array.from(inOrder, sizeOf),
    dearestTo: running(inOrder.map(worthOf), Math.max),
  };
}

/** The same with fewer pieces of some sizes. */
export function offeredLess(offer: Offer, many: readonly number[]): Offer {
  return { ...offer, many: Float64Array.from(offer.places, (i) => many[i] ?? 0) };
}

function running(values: readonly number[], of: (a: number, b: number) => number): Float64Array {
  const so = Float64Array.from(values);
  for (let i = 1; i < so.length; i++) so[i] = of(so[i - 1] ?? 0, so[i] ?? 0);
  return so;
}

/** How a search is held: what is worth no more than `pass` is not looked for, nor what is not better by `finer`. */
export interface Care {
  readonly pass: number;
  readonly finer: number;
  readonly steps: number;
}

/**
 * What goes into a room and is worth most together. Depth first, and no further where what is free could not be worth
 * enough: neither filled at the best worth for its length, nor with as many pieces as the shortest would be, each worth
 * the most of any that goes in. After so many steps the best so far is taken; `most` is then the room at the best rate.
 */
export function bestPattern(offer: Offer, room: Mm, { pass, finer, steps }: Care): BestPattern {
  const { sizes, worth, many, shortest, dearest } = offer;
  const taken = new Int32Array(sizes.length);
  let best = taken;
  let bar = pass;
  let found = 0;
  let left = steps;
  const search = (from: number, free: Mm, value: number): void => {
    const top = dearestIn(offer, free);
    for (let i = from; i < sizes.length; i++) {
      const size = sizes[i] ?? 0;
      const each = worth[i] ?? 0;
      const rest = shortest[i] ?? 0;
      if (free < rest || --left < 0) return;
      const byCount = Math.floor(free / rest) * Math.min(top, dearest[i] ?? 0);
      if (value + Math.min((free * each) / size, byCount) <= bar + finer) return;
      for (let n = Math.min(many[i] ?? 0, Math.floor(free / size)); n > 0; n--) {
        taken[i] = n;
        const together = value + n * each;
        if (together > found) {
          found = together;
          best = taken.slice();
          bar = Math.max(bar, found);
        }
        search(i + 1, free - n * size, together);
      }
      taken[i] = 0;
    }
  };
  search(0, room + SAME, 0);
  const filled = [...best.keys()].filter((i) => (best[i] ?? 0) > 0);
  const atBestRate = sizes.length === 0 ? 0 : ((room + SAME) * (worth[0] ?? 0)) / (sizes[0] ?? 1);
  return {
    sizes: filled.map((i) => offer.places[i] ?? 0),
    many: filled.map((i) => best[i] ?? 0),
    most: left < 0 ? Math.max(bar, atBestRate) : bar + finer,
  };
}

/** The greatest worth of one piece that goes into what is free. */
function dearestIn({ bySize, dearestTo }: Offer, free: Mm): number {
  let low = 0;
  let high = bySize.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((bySize[middle] ?? 0) <= free) low = middle + 1;
    else high = middle;
  }
  return dearestTo[low - 1] ?? 0;
}
