import type { Random } from '../outside/random-joints.ts';

/** What came of an attack, as it is counted, and what is wrong with that, if anything. */
export interface Outcome {
  readonly came: string;
  readonly fault?: string;
}

/** Something that a stranger sends. */
export interface Attack {
  /** In few words, for whoever reads which was the worst. */
  readonly what: string;
  readonly run: () => Promise<Outcome>;
}

/** One kind of attack, each time another, in this folder, which has to hold the same files after it. */
export type Kind = (random: Random, folder: string) => Attack;

/** How the attacks of one kind went. */
export interface Tally {
  readonly came: Readonly<Record<string, number>>;
  readonly faults: readonly string[];
  readonly seconds: number;
  /** By the processor's time, which a busy machine does not change. */
  readonly slowest: { readonly ms: number; readonly what: string };
  /** The most memory that the process ever had, in MiB, and what raised that most. */
  readonly peak: number;
  readonly hungriest: { readonly mib: number; readonly what: string };
}
