import type { FactName } from '../../draw/facts.ts';
import type { EndName } from '../../job/job.ts';
import type { Said } from '../../measure/said.ts';

/** One line of the title block: what it is, and its value in words. */
export interface Fact {
  readonly fact: FactName;
  /** Which end it is of, where it stands with those of the other. */
  readonly end?: EndName;
  /** Which of an end's headers, or of a bend's kinds of pieces, it is of, counted from 0. */
  readonly part?: number;
  readonly label: Said;
  readonly text: Said;
}

/** A fact of what it stands with: a tube, or its end that is told there. */
export function factOf(fact: FactName, label: Said, text: Said): Fact {
  return { fact, label, text };
}
