import type { Mm } from '../measure/units.ts';
import { firstPlace, SAME } from './least-stock.ts';

/** The places of the pieces that go into each bar, and of those that found no room. */
export interface BarFilling {
  readonly bars: readonly (readonly number[])[];
  readonly left: readonly number[];
}

/** Each piece, in this order, into the bar where it leaves least: best fit. */
export function bestFit(sizes: readonly Mm[], order: readonly number[], rooms: readonly Mm[]): BarFilling {
  const free = [...rooms];
  const bars: number[][] = rooms.map(() => []);
  const left: number[] = [];
  // The bars in the order of what is free in them, so that the tightest that holds a piece is found by halving.
  const tight = [...rooms.keys()].sort((a, b) => (rooms[a] ?? 0) - (rooms[b] ?? 0) || a - b);
  const placeOf = (room: Mm, bar: number): number =>
    firstPlace(tight.length, (n) => {
      const other = tight[n] ?? 0;
      const more = (free[other] ?? 0) - room;
      return more > 0 || (more === 0 && other >= bar);
    });
  for (const piece of order) {
    const size = sizes[piece] ?? 0;
    const place = placeOf(size - SAME, 0);
    const [bar] = tight.splice(place, 1);
    if (bar === undefined) {
      left.push(piece);
      continue;
    }
    bars[bar]?.push(piece);
    free[bar] = (free[bar] ?? 0) - size;
    tight.splice(placeOf(free[bar] ?? 0, bar), 0, bar);
  }
  return { bars, left };
}

/** How many pieces are tried for one bar before the fullest so far is taken. */
const TRIES = 1_000;

/**
 * Each bar in turn as full as it can be, with the first piece of the order that fits it: least slack (J. N. D. Gupta and
 * J. C. Ho, A new heuristic algorithm for the one-dimensional bin-packing problem, 1999, from memory).
 */
export function leastSlack(sizes: readonly Mm[], order: readonly number[], rooms: readonly Mm[]): BarFilling {
  let left = [...order];
  const bars = rooms.map((room) => {
    const first = left.find((piece) => (sizes[piece] ?? 0) <= room + SAME);
    if (first === undefined) return [];
    const others = left.filter((piece) => piece !== first);
    const filled = [first, ...fullest(sizes, others, room - (sizes[first] ?? 0))];
    const taken = new Set(filled);
    left = left.filter((piece) => !taken.has(piece));
    return filled;
  });
  return { bars, left };
}

/**
 * Each bar in turn with as many pieces as go into one: of the short pieces that come to no more than a bar for each so
 * many, the longest and those that go best with it. Where only two or three go into a bar, least slack alone would waste
 * short pieces beside long ones.
 */
export function mostPieces(sizes: readonly Mm[], order: readonly number[], rooms: readonly Mm[]): BarFilling {
  const sizeOf = (piece: number): Mm => sizes[piece] ?? 0;
  let left = [...order].sort((a, b) => sizeOf(a) - sizeOf(b));
  const bars = rooms.map((room) => {
    const pool = shortOnes(left.map(sizeOf), room);
    const last = left[pool - 1];
    if (last === undefined) return [];
    const filled = [last, ...fullest(sizes, left.slice(0, pool - 1), room - sizeOf(last))];
    const taken = new Set(filled);
    left = left.filter((piece) => !taken.has(piece));
    return filled;
  });
  return { bars, left };
}

/** How many of these sizes, the shortest first, come to no more than a room for every so many of them. */
function shortOnes(sizes: readonly Mm[], room: Mm): number {
  const sums: Mm[] = [];
  for (const size of sizes) if (size <= room + SAME) sums.push((sums.at(-1) ?? 0) + size);
  const together = sums.filter((sum) => sum <= room + SAME).length;
  for (let many = together; many > 0; many--) {
    const pool = sums.filter((sum, i) => sum * many <= room * (i + 1) + SAME).length;
    if (pool >= many) return pool;
  }
  return 0;
}

/** Of these pieces those that fill a room best, by a search that ends when it is full or has looked long enough. */
function fullest(sizes: readonly Mm[], order: readonly number[], room: Mm): readonly number[] {
  const pieces = order.map((piece) => ({ piece, size: sizes[piece] ?? 0 })).sort((a, b) => b.size - a.size);
  const restOf: Mm[] = [];
  pieces.reduceRight((rest, { size }, i) => {
    restOf[i] = rest + size;
    return rest + size;
  }, 0);
  let best: readonly number[] = [];
  let slack = room;
  let tries = 0;
  const chosen: number[] = [];
  const search = (from: number, free: Mm): void => {
    if (free < slack - SAME) {
      slack = free;
      best = [...chosen];
    }
    let skipped = Number.NaN;
    for (let i = from; i < pieces.length; i++) {
      if (slack <= SAME || tries > TRIES || free - (restOf[i] ?? 0) >= slack - SAME) return;
      const { piece, size } = pieces[i] ?? { piece: 0, size: 0 };
      // One that is as long as one just passed over fills no better.
      if (size > free + SAME || size === skipped) continue;
      tries++;
      chosen.push(piece);
      search(i + 1, free - size);
      chosen.pop();
      skipped = size;
    }
  };
  search(0, room);
  return best;
}
