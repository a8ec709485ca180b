import { readAloud } from '../../fit/read-aloud.ts';
import { reportTube } from '../../fit/report.ts';
import type { Warning } from '../../fit/warnings.ts';
import { workOut } from './outcome.ts';
import { shownOf } from './shown.ts';

/** What `check` says of one tube of a job. */
export interface Checked {
  readonly aloud: string;
  readonly warnings: readonly Warning[];
}

/** A job file and the place of the tube in it, counted from 0. */
export interface Ask {
  readonly text: string;
  readonly place: number;
}

/** Looks how a tube fits, which may take a second; undefined where the job can't be read. */
export function check({ text, place }: Ask): Checked | undefined {
  const shown = shownOf(workOut(text), place);
  if (!shown) return undefined;
  const report = reportTube(shown.solution, shown.job.words);
  return { aloud: readAloud(report), warnings: report.warnings };
}
