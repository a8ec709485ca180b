import { reportsAsData } from '../fit/as-data.ts';
import { checkReport } from '../fit/check-report.ts';
import type { EndFlags } from '../job/flags.ts';
import { reportJob } from '../together/report-job.ts';
import { endedLines, joined } from '../words/said.ts';
import { readAsk } from './ask.ts';
import { jsonOf } from './data.ts';
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
  const { job } = await readAsk(path, flags, shell, seated);
  const reports = reportJob(job);
  const result =
    as === 'json'
      ? jsonOf(reportsAsData(reports))
      : endedLines([
          joined(
            reports.map((report) => checkReport(report, shell.words)),
            '\n\n\n',
          ),
        ]);
  await writeResult('-', result, shell);
  const warned = reports.some(({ warnings }) => warnings.length > 0);
  return strict && warned ? WRONG_INPUT : DONE;
}
