import type { Job } from '../job/job.ts';
import { jobWithSeated } from '../job/ways/seated.ts';
import { solveJob, type TubeSolution } from '../saddle/solve.ts';
import { cutList, cutListAsCsv, cutListAsData, cutListAsText } from '../shop/lists/cut-list.ts';
import { stockPlan } from '../shop/lists/stock.ts';
import { stockAsData, stockAsText } from '../shop/lists/stock-in-words.ts';
import { readAsk } from './ask.ts';
import { writeResult } from './files.ts';
import type { Shell } from './shell.ts';

export interface CutListOptions {
  readonly as: 'text' | 'csv' | 'json';
  readonly seated?: string;
  readonly out: string;
}

/** `copeleaf cutlist`: what to cut, and from which of the shop's lengths. */
export async function cutlist(path: string, options: CutListOptions, shell: Shell): Promise<void> {
  const { as, seated, out } = options;
  const { job: asked } = await readAsk(path, {}, shell);
  const job = seated === undefined ? asked : jobWithSeated(asked, seated);
  const write = { text: asText, csv: asCsv, json: asJson }[as];
  await writeResult(out, write(job, solveJob(job)), shell);
}

function asText(job: Job, solutions: readonly TubeSolution[]): string {
  const plan = stockPlan(job, solutions);
  const list = cutListAsText(cutList(solutions), job.units);
  return plan ? `${list}\n${stockAsText(plan, job.units)}` : list;
}

function asCsv(_: Job, solutions: readonly TubeSolution[]): string {
  return cutListAsCsv(cutList(solutions));
}

function asJson(job: Job, solutions: readonly TubeSolution[]): string {
  const plan = stockPlan(job, solutions);
  const data = {
    units: 'mm',
    tubes: cutListAsData(cutList(solutions)),
    ...(plan && { stock: stockAsData(plan) }),
  };
  return `${JSON.stringify(data, null, 2)}\n`;
}
