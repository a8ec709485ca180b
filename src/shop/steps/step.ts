import type { FactName } from '../../draw/facts.ts';
import type { EndName } from '../../job/job.ts';
import type { Said } from '../../measure/said.ts';
import type { Hand } from '../../saddle/solve.ts';

/** One thing to do, in words, and what to beware of while it is done; done for each copy unless `once`. */
export interface Step {
  readonly fact: FactName;
  readonly text: Said;
  readonly warnings: readonly Said[];
  /** Which end it is done to, where it is one. */
  readonly end?: EndName;
  /** Which hand it is told of, where the other has it in other words. */
  readonly hand?: Hand;
  readonly once?: true;
}

export function step(fact: FactName, text: Said, warnings: readonly Said[] = []): Step {
  return { fact, text, warnings };
}
