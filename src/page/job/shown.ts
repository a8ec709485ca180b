import type { Job } from '../../job/job.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
import type { Outcome } from './outcome.ts';

/** A job that could be read, and the tube that is looked at. */
export interface Shown {
  readonly job: Job;
  readonly solutions: readonly TubeSolution[];
  readonly solution: TubeSolution;
}

/** What there is to show of the tube in this place, counted from 0; undefined where the job can't be read. */
export function shownOf(outcome: Outcome, place: number): Shown | undefined {
  if (outcome.kind !== 'read') return undefined;
  const asDrawn = piecesIn(outcome);
  const solution = asDrawn[Math.min(place, asDrawn.length - 1)];
  return solution && { job: outcome.job, solutions: outcome.solutions, solution };
}

/** What is made of a job, once for both hands; nothing while it can't be read. */
export function piecesIn(outcome: Outcome): readonly TubeSolution[] {
  return outcome.kind === 'read' ? outcome.solutions.filter(({ hand }) => hand === 'as-drawn') : [];
}

/** Whether it has a leaf. */
export function isCoped({ ends: { A, B } }: TubeSolution): boolean {
  return A?.kind === 'coped' || B?.kind === 'coped';
}
