import { readFrameIn } from '../../frame/read-frame.ts';
import type { Job } from '../../job/job.ts';
import { PAPERS } from '../../job/paper/paper.ts';
import { Refusal } from '../../job/text/complaint.ts';
import type { Dialect } from '../../job/text/desk.ts';
import type { Said } from '../../measure/said.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
import { solvePieces } from '../../together/pieces.ts';
import type { Language } from '../../words/language.ts';
import { asWritten } from '../../words/said.ts';
import { type Problem, problemsOf } from './where.ts';

/** What a job file came to. */
export type Outcome =
  | { readonly kind: 'read'; readonly job: Job; readonly solutions: readonly TubeSolution[] }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] };

const [PAPER = { name: 'A4', width: 210, height: 297 }] = PAPERS.filter(({ name }) => name === 'A4');

/** Reads and solves a job, by the same code as the command. */
export function workOut(text: string, words: Language): Outcome {
  try {
    const job = readFrameIn(inTheForm(words), text, 'job.yaml', { words, paper: PAPER });
    return { kind: 'read', job, solutions: solvePieces(job) };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { kind: 'refused', problems: problemsOf(text, error.complaints) };
  }
}

/** Values by what their fields are called. */
function inTheForm({ page: { measures } }: Language): Dialect {
  const labels: ReadonlyMap<string, Said> = new Map(Object.entries(measures.keys));
  const key = (name: string): Said => labels.get(name) ?? asWritten(name);
  return { key, setting: (name, value) => measures.setting(key(name), asWritten(value)) };
}
