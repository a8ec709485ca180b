/** Set by `npm run test:deep`, which runs the same tests with all their cases. */
export const DEEP = process.env.COPELEAF_DEEP === '1';

interface Counts {
  /** For `npm test`: few, yet every kind and every mechanism is met. */
  readonly short: number;
  /** For `npm run test:deep`. */
  readonly deep: number;
  /** A variable of the environment that asks for another count, such as LEAF_JOBS. */
  readonly asked?: string;
}

/** How many cases a test tries in this run. */
export function howMany({ short, deep, asked }: Counts): number {
  const other = asked === undefined ? undefined : process.env[asked];
  return Number(other ?? (DEEP ? deep : short));
}

/** What a test tries in this run of a table: in a short one so many rows, spread over the whole. */
export function someOf<Row>(table: readonly Row[], { short }: Pick<Counts, 'short'>): readonly Row[] {
  if (DEEP) return table;
  const step = Math.max(1, table.length / short);
  return table.filter((_, i) => Math.floor(i / step) !== Math.floor((i - 1) / step));
}
