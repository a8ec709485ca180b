import type { Mm } from '../measure/units.ts';
import type { Pattern } from './demand.ts';
import { firstPlace, SAME } from './least-stock.ts';

/** The pattern that is worth most of those found. */
export interface BestPattern extends Pattern {
  /** None is worth more, if the search came to its end. */
  readonly most: number;
  readonly ended: boolean;
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
 * the most of any that goes in. After so many steps the best so far is taken.
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
  return {
    sizes: filled.map((i) => offer.places[i] ?? 0),
    many: filled.map((i) => best[i] ?? 0),
    most: bar + finer,
    ended: left >= 0,
  };
}

/** The greatest worth of one piece that goes into what is free. */
function dearestIn({ bySize, dearestTo }: Offer, free: Mm): number {
  return dearestTo[firstPlace(bySize.length, (n) => (bySize[n] ?? 0) > free) - 1] ?? 0;
}

/** How finely a room is divided where it is gone through cell by cell. */
const CELLS = 4096;

/**
 * What no pattern for a room is worth more than, without a search: every size is cut down to whole cells of the room,
 * and the most that each number of cells holds is found size by size (R. Bellman, Dynamic programming, 1957, from
 * memory).
 */
export function mostByCells({ sizes, worth, many }: Offer, room: Mm): number {
  const cell = (room + SAME) / CELLS;
  const most = new Float64Array(CELLS + 1);
  for (let i = 0; i < sizes.length; i++) {
    const size = sizes[i] ?? 0;
    let left = Math.min(many[i] ?? 0, Math.floor((room + SAME) / size));
    // In lots of 1, 2, 4 ...: with these any number up to all of them is made.
    for (let lot = 1; left > 0; lot *= 2) {
      const n = Math.min(lot, left);
      left -= n;
      // Rounding must not make a lot larger than it is.
      addLot(most, Math.floor((n * size) / cell - 1e-9), n * (worth[i] ?? 0));
    }
  }
  return most[CELLS] ?? 0;
}

function addLot(most: Float64Array, cells: number, worth: number): void {
  for (let end = most.length - 1; end >= cells; end--) {
    const other = (most[end - cells] ?? 0) + worth;
    if (other > (most[end] ?? 0)) most[end] = other;
  }
}
