import type { Job } from '../../job/job.ts';
import { PAPERS } from '../../job/paper/paper.ts';
import { readJob } from '../../job/read-job.ts';
import { Refusal } from '../../job/text/complaint.ts';
import { solveJob, type TubeSolution } from '../../saddle/solve.ts';
import type { Language } from '../../words/language.ts';
import { type Problem, problemsOf } from './where.ts';

/** What a job file came to. */
export type Outcome =
  | { readonly kind: 'read'; readonly job: Job; readonly solutions: readonly TubeSolution[] }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] };

const [PAPER = { name: 'A4', width: 210, height: 297 }] = PAPERS.filter(({ name }) => name === 'A4');

/** Reads and solves a job, by the same code as the command. */
export function workOut(text: string, words: Language): Outcome {
  try {
    const job = readJob(text, 'job.yaml', { words, paper: PAPER });
    return { kind: 'read', job, solutions: solveJob(job) };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { kind: 'refused', problems: problemsOf(text, error.complaints) };
  }
}
