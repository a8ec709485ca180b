import { reportsAsData } from '../fit/as-data.ts';
import { besideIn } from '../fit/beside.ts';
import { checkReport } from '../fit/check-report.ts';
import { reportTube } from '../fit/report.ts';
import type { EndFlags } from '../job/end-flags.ts';
import { stockLacking } from '../shop/lists/stock-in-words.ts';
import { frameAsData } from '../together/frame-as-data.ts';
import { isWarning, standingFrame } from '../together/frame-notes.ts';
import { frameReport } from '../together/frame-report.ts';
import { solvePieces } from '../together/pieces.ts';
import { standingPieces } from '../together/pieces-named.ts';
import { endedLines, joined } from '../words/said.ts';
import { readAsk } from './ask.ts';
import { jsonOf } from './data.ts';
import { writeResult } from './files.ts';
import { type Only, onlyAsked } from './only.ts';
import { counting } from './progress.ts';
import type { Shell } from './shell.ts';
import { DONE, WRONG_INPUT } from './trouble.ts';

export interface CheckOptions extends EndFlags, Only {
  readonly as: 'text' | 'json';
  readonly strict: boolean;
  readonly seated?: string;
}

/** `copeleaf check`: what was understood, what follows, what to watch. Writes no file. */
export async function check(path: string | undefined, options: CheckOptions, shell: Shell): Promise<number> {
  const { as, strict, seated, only, ...flags } = options;
  const { job } = await readAsk(path, flags, shell, seated);
  const all = solvePieces(job);
  const pieces = onlyAsked(job, all, only);
  const beside = besideIn(all, job.words);
  const reports = counting(shell, pieces, (piece) => reportTube(piece, job.words, beside));
  const whole = standingFrame(job);
  const standing = whole && only ? standingPieces(whole, pieces) : whole;
  const lacking = stockLacking(job, pieces);
  const { title } = job.words.lists.stock;
  const result =
    as === 'json'
      ? jsonOf({
          ...reportsAsData(reports, job),
          ...(standing && { frame: frameAsData(job, standing) }),
          ...(lacking.length > 0 && { stock: lacking }),
        })
      : endedLines([
          joined(
            [
              ...reports.map((report) => checkReport(report, shell.words)),
              ...(standing ? [frameReport(job, standing)] : []),
              ...(lacking.length > 0 ? [joined([title, ...lacking], '\n  ')] : []),
            ],
            '\n\n\n',
          ),
        ]);
  await writeResult('-', result, shell);
  const warned =
    lacking.length > 0 ||
    reports.some(({ warnings }) => warnings.length > 0) ||
    (standing?.warnings.some(isWarning) ?? false);
  return strict && warned ? WRONG_INPUT : DONE;
}
