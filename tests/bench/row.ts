/** One line of the bench: a figure measured in this run, and the bar it is held to. */
export interface Row {
  readonly what: string;
  readonly measured: string;
  readonly bar: string;
  readonly holds: boolean;
}

/** A file of tests/bench/ exports one of these as `bench`; bench.ts runs it and prints its rows. */
export type Bench = () => Promise<readonly Row[]>;

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length / 2;
  const upper = sorted[Math.floor(middle)] ?? Number.NaN;
  return Number.isInteger(middle) ? ((sorted[middle - 1] ?? Number.NaN) + upper) / 2 : upper;
}

/** How long one of `times` runs takes, in ms. */
export function timeEach(times: number, run: () => unknown): number {
  const start = performance.now();
  for (let i = 0; i < times; i++) run();
  return (performance.now() - start) / times;
}
