import type { FactName } from '../../draw/facts.ts';
import type { EndName } from '../../job/job.ts';
import type { Said } from '../../measure/said.ts';

/** One thing to do, in words; done for each copy unless `once`. */
export interface Step {
  readonly fact: FactName;
  readonly text: Said;
  /** Which end it is done to, where it is one. */
  readonly end?: EndName;
  readonly once?: true;
}
