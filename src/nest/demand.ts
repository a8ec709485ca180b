import type { Mm } from '../measure/units.ts';

/** Lengths closer than this are the same. */
export const SAME: Mm = 1e-6;

/** One length of stock, and how many of it there are: `Infinity` where it is endless. */
export interface StockKind {
  readonly length: Mm;
  readonly count: number;
}

/**
 * What is cut from what. Between n blanks are n - 1 cuts, so they fit a length where they and n kerfs come to no more than
 * the length and one kerf: a blank's size is its length and a kerf, a bar's room its length and a kerf.
 */
export interface Demand {
  /** Of each blank, in the order of the blanks. */
  readonly sizes: readonly Mm[];
  /** Each length once, the longest first, no more of one than there are blanks. */
  readonly kinds: readonly StockKind[];
  readonly kerf: Mm;
}

/** Bars, each with the places of its blanks, and the places of the blanks that found no stock. */
export interface Packing {
  readonly bars: readonly { readonly length: Mm; readonly blanks: readonly number[] }[];
  readonly left: readonly number[];
}

/** `blanks` are lengths; a length of stock may be given more than once. */
export function demandOf(blanks: readonly Mm[], stock: readonly StockKind[], kerf: Mm): Demand {
  const counts = new Map<Mm, number>();
  for (const { length, count } of stock) counts.set(length, (counts.get(length) ?? 0) + count);
  const kinds = [...counts]
    .map(([length, count]) => ({ length, count: Math.min(count, blanks.length) }))
    .sort((a, b) => b.length - a.length);
  return { sizes: blanks.map((blank) => blank + kerf), kinds, kerf };
}

/** The stock that is taken, together. */
export function totalOf({ bars }: Packing): Mm {
  return sum(bars.map(({ length }) => length));
}

export function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
