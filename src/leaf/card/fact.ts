import type { FactName } from '../../draw/facts.ts';
import type { Said } from '../../measure/said.ts';

/** One line of the title block: what it is, and its value in words. */
export interface Fact {
  readonly fact: FactName;
  /** Which of an end's headers it is of, counted from 0. */
  readonly part?: number;
  readonly label: Said;
  readonly text: Said;
}
