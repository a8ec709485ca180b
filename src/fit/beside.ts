import type { TubeSolution } from '../saddle/solve.ts';
import type { Language } from '../words/language.ts';
import { openRings } from './open-rings.ts';
import { unlikePairs } from './unlike-pairs.ts';
import type { Warning } from './warnings.ts';

/** What is seen of a tube only beside the others of its job. */
export type Beside = (solution: TubeSolution) => readonly Warning[];

/** Looks at all tubes of a job, each hand by itself. Those of a frame are looked at where they stand. */
export function besideIn(solutions: readonly TubeSolution[], words: Language): Beside {
  const loose = solutions.filter(({ places }) => !places);
  const told = new Map([...openRings(loose, words), ...unlikePairs(loose, words)]);
  return (solution) => {
    const doubt = told.get(solution);
    return doubt ? [{ code: 'as-meant', ...doubt }] : [];
  };
}
