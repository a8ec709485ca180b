import { readFrame } from '../frame/read-frame.ts';
import { attachedJob } from '../ink/attached.ts';
import type { Job } from '../job/job.ts';
import type { LeafContext } from '../leaf/draw-leaf.ts';
import { contextOf } from '../leaf/leaves-of.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import { placesOnHeaders } from '../shop/frame/place-facts.ts';
import { type Numbered, numberedOf } from '../shop/numbered.ts';
import { solvePieces } from '../together/pieces.ts';
import { endedLines } from '../words/said.ts';
import { readBytes } from './files.ts';
import type { Shell } from './shell.ts';
import { refuse } from './trouble.ts';

/** As long as a file of some thousand sheets. */
const MOST_OF_A_PDF = 1 << 28;

/** What a leaf needs to know, with where each footprint goes in a frame. */
export function printContext(job: Job, ticketed: boolean, footprints: boolean): LeafContext {
  return { ...contextOf(job), ticketed, ...(footprints && placesOnHeaders(job)) };
}

/** All pieces of a job, and what is printed of each. */
export interface AskedToPrint {
  readonly job: Job;
  readonly pieces: readonly TubeSolution[];
  readonly context: LeafContext;
  readonly footprints: boolean;
}

/**
 * Whether a leaf or a ticket, by its numbers, stands in the file `path` that was printed before: its job is read out of it and worked out
 * again. Tells which of those hold no longer. Throws `Refusal` where there is no such file or no job in it.
 */
export async function standsSince(
  path: string,
  { job, pieces, context, footprints }: AskedToPrint,
  shell: Shell,
): Promise<(numbers: string) => boolean> {
  const { words } = shell;
  const text = attachedJob(await readBytes(path, shell, MOST_OF_A_PDF));
  if (text === undefined)
    throw refuse('no-job', path, `--since ${path}`, words.commandFaults.noJobInPdf, words);
  const before = readFrame(text, path, { words, paper: job.sheet.paper });
  const old = numberedOf(
    before,
    solvePieces(before),
    printContext(before, context.ticketed ?? false, footprints),
    footprints,
  );
  const now = new Set(numberedOf(job, pieces, context, footprints).map(({ numbers }) => numbers));
  tellGone(
    old.filter(({ numbers }) => !now.has(numbers)),
    shell,
  );
  const stands = new Set(old.map(({ numbers }) => numbers));
  return (numbers) => stands.has(numbers);
}

function tellGone(gone: readonly Numbered[], { words, err }: Shell): void {
  const { goneBy, gone: one } = words.commandAnswers;
  if (gone.length > 0) err(endedLines([goneBy(gone.length), ...gone.map(({ title }) => one(title))]));
}
