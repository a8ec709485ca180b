import { inkPdf } from '../../ink/pdf.ts';
import type { Job } from '../../job/job.ts';
import type { Printer } from '../../job/paper/printer.ts';
import type { Leaf } from '../../leaf/leaf.ts';
import { contextOf, leavesOf } from '../../leaf/leaves-of.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
import { placesOnHeaders } from '../../shop/frame/place-facts.ts';
import { shopPack } from '../../shop/pack.ts';
import { type LaidSheets, laySheets } from '../../tiler/lay-sheets.ts';
import type { TubesDrawn } from './printing.ts';

/** All leaves of a job, in the order in which they are printed; `ticketed` where tickets come with them. */
export function leavesOfJob(
  job: Job,
  solutions: readonly TubeSolution[],
  footprints: boolean,
  ticketed: boolean,
  progress?: TubesDrawn,
): readonly Leaf[] {
  const context = { ...contextOf(job), ticketed, ...(footprints && placesOnHeaders(job)) };
  return solutions.flatMap((solution, i) => {
    progress?.(i, solutions.length);
    return leavesOf(solution, context, footprints);
  });
}

/** The sheets of a whole job, as the command lays them. `name` is that of its file without the ending. */
export function sheetsOfJob(
  job: Job,
  solutions: readonly TubeSolution[],
  name: string,
  footprints: boolean,
  printer?: Printer,
  progress?: TubesDrawn,
): LaidSheets {
  const leaves = leavesOfJob(job, solutions, footprints, true, progress);
  return laySheets(
    leaves,
    job.sheet,
    { job: job.title ?? name, words: job.words },
    printer,
    shopPack(job, solutions, footprints),
  );
}

/** The PDF of a whole job, byte for byte the one that the command makes of its file. */
export async function pdfOfJob(job: Job, sheets: LaidSheets, name: string): Promise<Uint8Array> {
  return inkPdf(sheets, {
    title: job.title ?? name,
    jobSource: job.source,
    jobName: name,
    about: job.words.file.job,
  });
}
