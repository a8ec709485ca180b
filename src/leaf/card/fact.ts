import type { Said } from '../../measure/said.ts';

/** One line of the title block: what it is, and its value in words. */
export interface Fact {
  readonly label: Said;
  readonly text: Said;
}
