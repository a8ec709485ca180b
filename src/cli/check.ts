import { reportsAsData } from '../fit/as-data.ts';
import { checkReport } from '../fit/check-report.ts';
import { reportJob } from '../fit/report.ts';
import type { EndFlags } from '../job/flags.ts';
import { jobWithSeated } from '../job/ways/seated.ts';
import { readAsk } from './ask.ts';
import { writeResult } from './files.ts';
import type { Shell } from './shell.ts';
import { DONE, WRONG_INPUT } from './trouble.ts';

export interface CheckOptions extends EndFlags {
  readonly as: 'text' | 'json';
  readonly strict: boolean;
  readonly seated?: string;
}

/** `copeleaf check`: what was understood, what follows, what to watch. Writes no file. */
export async function check(path: string | undefined, options: CheckOptions, shell: Shell): Promise<number> {
  const { as, strict, seated, ...flags } = options;
  const { job } = await readAsk(path, flags, shell);
  const reports = reportJob(seated === undefined ? job : jobWithSeated(job, seated));
  const text =
    as === 'json'
      ? JSON.stringify(reportsAsData(reports), null, 2)
      : reports.map((report) => checkReport(report, shell.words)).join('\n\n\n');
  await writeResult('-', `${text}\n`, shell);
  const warned = reports.some(({ warnings }) => warnings.length > 0);
  return strict && warned ? WRONG_INPUT : DONE;
}
