import { inkStl } from '../ink/stl.ts';
import type { Job } from '../job/job.ts';
import { solvePieces } from '../together/pieces.ts';
import { solidsOf } from '../together/solids.ts';
import { endedLines } from '../words/said.ts';
import { writeResult } from './files.ts';
import { onlyAsked } from './only.ts';
import type { Shell } from './shell.ts';
import { refuseArgument } from './trouble.ts';

interface SolidsAsk {
  readonly only: readonly string[] | undefined;
  readonly since: string | undefined;
  readonly out: string;
}

/** `copeleaf print --as stl`: the coped tubes as solids, in one file. */
export async function printSolids(job: Job, { only, since, out }: SolidsAsk, shell: Shell): Promise<void> {
  const { commandFaults, commandAnswers } = shell.words;
  if (since !== undefined)
    throw refuseArgument('usage', `--since ${since}`, commandFaults.solidsSince, shell.words);
  const solids = [...solidsOf(job, onlyAsked(job, solvePieces(job), only))];
  await writeResult(out, inkStl(solids), shell);
  if (out !== '-') shell.err(endedLines([commandAnswers.solids(out, solids.length)]));
}
