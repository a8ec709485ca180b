import type { Subject } from '../draw/facts.ts';
import { spelled } from '../draw/letters.ts';
import type { EndName } from '../job/job.ts';
import type { Said } from '../measure/said.ts';
import type { Hand, TubeSolution } from '../saddle/solve.ts';
import type { Language } from '../words/language.ts';
import { asWritten } from '../words/said.ts';
import { elbowAt, mitredEnds } from './bend-pieces.ts';

/** Which end of which tube, in the words that are printed. */
export interface Names {
  readonly tube: Said;
  readonly end: EndName;
  /** Both where one leaf serves them. */
  readonly hand: Hand | 'both';
  readonly handName: Said;
  /** Only where there is an opposite hand too is this one named. */
  readonly paired: boolean;
  /** How many to make; of a bend, how many ends its one leaf is for. */
  readonly made: Said;
  /** Whether that is only one, or its ticket's to tell: of each hand. */
  readonly once: boolean;
  /** What the leaf is for, where it is not to cut by. */
  readonly use?: Said;
}

export function namesOf(solution: TubeSolution, end: EndName, words: Language, shared: boolean): Names {
  const { tube } = solution;
  const bend = elbowAt(tube.ends[end]);
  const hand = shared ? 'both' : solution.hand;
  return {
    tube: spelled(asWritten(tube.name)),
    end,
    hand,
    handName: words.leaf.hands[hand],
    paired: tube.pair,
    made: bend
      ? words.leaf.forEnds(tube.copies * mitredEnds(bend))
      : words.ticket.make(tube.copies, false, undefined),
    once: shared || (!bend && tube.copies === 1),
  };
}

/** What the words on an end's drawings tell of. */
export function subjectOf({ tube, hand }: TubeSolution, end: EndName): Subject {
  return { tube: tube.name, hand, end };
}
