import type { FactName } from '../../draw/facts.ts';
import type { Said } from '../../measure/said.ts';

/** One line of the title block: what it is, and its value in words. */
export interface Fact {
  readonly fact: FactName;
  readonly label: Said;
  readonly text: Said;
}
