import { besideIn } from '../../fit/beside.ts';
import { checkReport } from '../../fit/check-report.ts';
import { reportTube, warningsOf } from '../../fit/report.ts';
import type { Warning } from '../../fit/warnings.ts';
import type { Language } from '../../words/language.ts';
import { workOut } from './outcome.ts';
import { shownOf } from './shown.ts';

/** What `check` says of one tube of a job. */
export interface Checked {
  readonly aloud: string;
  readonly warnings: readonly Warning[];
}

/** A job file and the place of the tube in it, counted from 0. */
export interface CheckAsk {
  readonly kind: 'check';
  readonly text: string;
  readonly place: number;
}

/** A job file of which it is asked how many warnings it gives altogether. */
export interface CountAsk {
  readonly kind: 'count';
  readonly text: string;
}

/** How many warnings a job gives, once for both hands; none where it can't be read. */
export function countWarnings({ text }: CountAsk, words: Language): number {
  const outcome = workOut(text, words);
  return outcome.kind === 'read' ? warningsOf(outcome.solutions, words).length : 0;
}

/** Looks how a tube fits, which may take a second; undefined where the job can't be read. */
export function checkTube({ text, place }: CheckAsk, words: Language): Checked | undefined {
  const shown = shownOf(workOut(text, words), place);
  if (!shown) return undefined;
  const report = reportTube(shown.solution, words, besideIn(shown.solutions, words));
  return { aloud: checkReport(report, words, 'text'), warnings: report.warnings };
}
