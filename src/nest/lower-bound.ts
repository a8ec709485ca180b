import type { Mm } from '../measure/units.ts';
import { type Demand, SAME, type StockKind, sum } from './demand.ts';

/**
 * Weighs lengths up to a bar's room so that f(a) + f(b) <= f(a + b): the blanks of a bar never weigh more together than its
 * room (a dual feasible function: F. Clautiaux, C. Alves, J. Valerio de Carvalho, A survey of dual-feasible and
 * superadditive functions, 2010, from memory).
 */
export type Weight = (length: Mm) => number;

/** By one weight: what all blanks weigh, which the stock that is taken has to weigh too, and a bar of each kind. */
export interface Need {
  readonly blanks: number;
  readonly kinds: readonly number[];
}

/** Needs that every nesting meets, and the total that no nesting takes less than for their sake. */
export interface Bound {
  readonly needs: readonly Need[];
  readonly least: Mm;
}

/** Weights are made from so many of the sizes, and so many sums of sizes are looked through for what fills a room best. */
const MOST_SIZES = 200;
const MOST_SUMS = 5_000;

/** The least is the most that any one need asks for: `Infinity` where all the stock there is does not meet it. */
export function boundOf({ sizes, kinds, kerf }: Demand): Bound {
  const longest = (kinds[0]?.length ?? 0) + kerf + SAME;
  const sums = sumsWithin(longest, sizes);
  const filled = (room: Mm): Mm => sums?.findLast((each) => each <= room) ?? room;
  const rooms = kinds.map(({ length }) => filled(length + kerf + SAME) + SAME);
  const own = [...new Set(sizes)].filter((size) => size <= longest).sort((a, b) => a - b);
  const every = Math.ceil(own.length / MOST_SIZES);
  const weights = weightsOf(
    rooms[0] ?? longest,
    own.filter((_, i) => i % every === 0),
  );
  const needs = weights.map((weight) => ({ blanks: sum(sizes.map(weight)), kinds: rooms.map(weight) }));
  return { needs, least: Math.max(...needs.map((need) => leastFor(need, kinds))) };
}

/** All that blanks can come to in a room, the least first; undefined where there are too many sums. */
function sumsWithin(room: Mm, sizes: readonly Mm[]): readonly Mm[] | undefined {
  const sums = new Set<Mm>([0]);
  for (const size of sizes) {
    for (const filled of [...sums]) if (filled + size <= room) sums.add(filled + size);
    if (sums.size > MOST_SUMS) return undefined;
  }
  return [...sums].sort((a, b) => a - b);
}

/** The length itself; and for each size what has no room beside it, and its own number in a room, single and double. */
export function weightsOf(room: Mm, sizes: readonly Mm[]): readonly Weight[] {
  const more = sizes.flatMap((size) => [
    besideLong(room, Math.min(size, room / 2)),
    inParts(room, room / size),
    inParts(room, (2 * room) / size),
  ]);
  return [(length) => length / room, ...more];
}

/**
 * What is too long to have `size` beside it fills the room, and what is shorter than `size` weighs nothing (S. Martello,
 * P. Toth, Lower bounds and reduction procedures for the bin packing problem, 1990, from memory). `size` is half the room
 * at most.
 */
function besideLong(room: Mm, size: Mm): Weight {
  return (length) => (length > room - size ? 1 : length < size ? 0 : length / room);
}

/**
 * The room has a number of parts, not whole. A length weighs its whole parts, and of the rest only what is over the room's
 * own rest, so much the heavier that a whole part weighs one (C. A. Burdet, E. L. Johnson, A subadditive approach to solve
 * linear integer programs, 1977, from memory).
 */
function inParts(room: Mm, parts: number): Weight {
  const rest = parts - Math.floor(parts);
  return (length) => {
    const own = (length / room) * parts;
    const over = Math.max(0, own - Math.floor(own) - rest) / (1 - rest);
    return (Math.floor(own) + over) / Math.floor(parts);
  };
}

/** The least stock that meets a need, were bars to be had in fractions; of one kind alone whole bars are counted. */
function leastFor({ blanks, kinds: weights }: Need, kinds: readonly StockKind[]): Mm {
  let [left, total] = [blanks, 0];
  const weighed = kinds.map((kind, i) => ({ ...kind, weight: weights[i] ?? 0 }));
  weighed.sort((a, b) => b.weight / b.length - a.weight / a.length);
  for (const { length, count, weight } of weighed) {
    if (weight === 0) break;
    const bars = Math.min(count, kinds.length === 1 ? Math.ceil(left / weight - SAME) : left / weight);
    total += length * bars;
    left -= weight * bars;
  }
  return left > SAME ? Number.POSITIVE_INFINITY : total;
}
