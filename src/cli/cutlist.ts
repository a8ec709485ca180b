import type { Job } from '../job/job.ts';
import type { Said } from '../measure/said.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import { cutList, cutListAsCsv, cutListAsData, cutListAsText } from '../shop/lists/cut-list.ts';
import { stockPlan } from '../shop/lists/stock.ts';
import { stockAsData, stockAsText } from '../shop/lists/stock-in-words.ts';
import { solvePieces } from '../together/pieces.ts';
import { joined } from '../words/said.ts';
import { readAsk } from './ask.ts';
import { dataOf, jsonOf } from './data.ts';
import { refuseOwnInput, writeResult } from './files.ts';
import { type Only, onlyAsked } from './only.ts';
import type { Shell } from './shell.ts';

export interface CutListOptions extends Only {
  readonly as: 'text' | 'csv' | 'json';
  readonly seated?: string;
  readonly out: string;
}

/** `copeleaf cutlist`: what to cut, and from which of the shop's lengths. */
export async function cutlist(path: string, options: CutListOptions, shell: Shell): Promise<void> {
  const { as, seated, only, out } = options;
  const { job } = await readAsk(path, {}, shell, seated);
  await refuseOwnInput(path, out, shell);
  const write = { text: asText, csv: asCsv, json: asJson }[as];
  await writeResult(out, write(job, onlyAsked(job, solvePieces(job), only)), shell);
}

function asText(job: Job, solutions: readonly TubeSolution[]): Said {
  const plan = stockPlan(job, solutions);
  const list = cutListAsText(cutList(solutions, job.words), job.units, job.words);
  return plan ? joined([list, stockAsText(plan, job.units, job.words)], '\n') : list;
}

function asCsv({ words, units }: Job, solutions: readonly TubeSolution[]): Uint8Array {
  return dataOf(cutListAsCsv(cutList(solutions, words), units));
}

function asJson(job: Job, solutions: readonly TubeSolution[]): Uint8Array {
  const plan = stockPlan(job, solutions);
  return jsonOf({
    units: 'mm',
    tubes: cutListAsData(cutList(solutions, job.words), job.units),
    ...(plan && { stock: stockAsData(plan) }),
  });
}
