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
  readonly hand: Hand;
  readonly handName: Said;
  /** Only where there is an opposite hand too is this one named. */
  readonly paired: boolean;
  /** How many to make; of a bend, how many ends its one leaf is for. */
  readonly made: Said;
  /** Whether that is only one. */
  readonly once: boolean;
  /** What the leaf is for, where it is not to cut by. */
  readonly use?: Said;
}

export function namesOf({ tube, hand }: TubeSolution, end: EndName, words: Language): Names {
  const bend = elbowAt(tube.ends[end]);
  return {
    tube: spelled(asWritten(tube.name)),
    end,
    hand,
    handName: words.leaf.hands[hand],
    paired: tube.pair,
    made: bend ? words.leaf.forEnds(tube.copies * mitredEnds(bend)) : words.leaf.make(tube.copies),
    once: !bend && tube.copies === 1,
  };
}

/** What the words on an end's drawings tell of. */
export function subjectOf({ tube, hand }: TubeSolution, end: EndName): Subject {
  return { tube: tube.name, hand, end };
}

/** Which tube and hand a leaf belongs to. */
export function ownerOf({ tube, handName }: Names): string {
  return `${tube}, ${handName}`;
}
