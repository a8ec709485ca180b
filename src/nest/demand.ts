import type { Mm } from '../measure/units.ts';
import type { StockKind } from './least-stock.ts';

/** Pieces sorted into sizes, how many there are of each, and the stock that they are cut from. */
export interface Demand {
  /** One kerf longer than the piece. */
  readonly sizes: readonly Mm[];
  readonly many: readonly number[];
  readonly kinds: readonly StockKind[];
  readonly kerf: Mm;
}

/** What is cut from one bar: which sizes, by their places, and how many of each. */
export interface Pattern {
  readonly sizes: readonly number[];
  readonly many: readonly number[];
}

/** What is cut from a bar of one kind, by its place. */
export interface BarPattern extends Pattern {
  readonly kind: number;
}
