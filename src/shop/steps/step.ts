import type { Said } from '../../measure/said.ts';

/** One thing to do, in words; done for each copy unless `once`. */
export interface Step {
  readonly text: Said;
  readonly once?: true;
}
