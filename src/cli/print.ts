import { lacking } from '../draw/letters.ts';
import { inkDxf } from '../ink/dxf.ts';
import { inkPdf } from '../ink/pdf.ts';
import type { EndFlags } from '../job/flags.ts';
import type { Job } from '../job/job.ts';
import { tooSmall } from '../job/paper/paper.ts';
import type { Printer } from '../job/paper/printer.ts';
import { jobWithSeated } from '../job/ways/seated.ts';
import type { Leaf } from '../leaf/leaf.ts';
import { contextOf, leavesOf, withoutFootprint } from '../leaf/leaves-of.ts';
import { solveJob, type TubeSolution } from '../saddle/solve.ts';
import { shopPack } from '../shop/pack.ts';
import { type FrontPages, laySheets } from '../tiler/lay-sheets.ts';
import { readAsk } from './ask.ts';
import { writeResult } from './files.ts';
import { printerNamed } from './printer/printer.ts';
import { progressOn } from './progress.ts';
import type { Shell } from './shell.ts';
import { objectTo, refuse } from './trouble.ts';

export interface PrintOptions extends EndFlags {
  readonly as: 'pdf' | 'svg' | 'dxf';
  readonly footprints: boolean;
  readonly leavesOnly: boolean;
  readonly printer?: string;
  readonly seated?: string;
  readonly out?: string;
}

/** `copeleaf print`: all leaves of a job on sheets, in one file. */
export async function print(path: string | undefined, options: PrintOptions, shell: Shell): Promise<void> {
  const { as, footprints, leavesOnly, printer: printerName, seated, out, ...flags } = options;
  const printer = printerName === undefined ? undefined : await printerNamed(printerName, shell);
  const { job: asked, name } = await readAsk(path, flags, shell);
  const job = seated === undefined ? asked : jobWithSeated(asked, seated);
  const { paper, margins } = job.sheet;
  const small = printer && tooSmall(paper, margins, printer)?.(shell.words);
  if (small) throw objectTo('paper-small', 'command line', paper.name, small);
  tellLacking(job, shell);
  const solutions = solveJob(job);
  const leaves = drawLeaves(job, solutions, footprints, shell);
  if (leaves.length === 0) {
    const why = 'no end is coped, so there is no leaf to print';
    throw refuse(
      'no-leaf',
      path ?? 'flags',
      'only plain ends',
      why,
      '`copeleaf check` for the lengths to cut',
    );
  }
  const target = out ?? `${name}.${as}`;
  const pack =
    as === 'pdf' && path !== undefined && !leavesOnly ? shopPack(job, solutions, footprints) : undefined;
  const sheets = as === 'pdf' ? await printPdf(leaves, job, name, target, printer, pack, shell) : undefined;
  if (as === 'svg') await writeResult(target, await svgOf(leaves), shell);
  if (as === 'dxf') await writeResult(target, inkDxf(leaves), shell);
  if (target === '-') return;
  const on = sheets === undefined ? 'at true size' : `on ${counted(sheets, 'sheet', 'sheets')}`;
  const also = pack ? ' and the shop pack' : '';
  shell.err(`${target}: ${counted(leaves.length, 'leaf', 'leaves')}${also} ${on}\n`);
}

/** Gives the number of sheets. */
async function printPdf(
  leaves: readonly Leaf[],
  job: Job,
  name: string,
  target: string,
  printer: Printer | undefined,
  front: FrontPages | undefined,
  shell: Shell,
): Promise<number> {
  const title = job.title ?? name;
  const set = laySheets(leaves, job.sheet, { job: title }, printer, front);
  const bytes = await inkPdf(set, { title, jobSource: job.source, jobName: name });
  await writeResult(target, bytes, shell);
  return set.count;
}

/** What writes SVG needs a document, which is large and asked for seldom. */
async function svgOf(leaves: readonly Leaf[]): Promise<string> {
  const [{ inkSvg }, { createSVGWindow }] = await Promise.all([import('../ink/svg.ts'), import('svgdom')]);
  return inkSvg(leaves, createSVGWindow());
}

function drawLeaves(
  job: Job,
  solutions: readonly TubeSolution[],
  footprints: boolean,
  shell: Shell,
): readonly Leaf[] {
  const progress = progressOn(shell, solutions.length, 'tubes');
  const context = contextOf(job);
  const leaves = solutions.flatMap((solution) => {
    const drawn = leavesOf(solution, context, footprints);
    progress.step();
    return drawn;
  });
  progress.end();
  if (footprints) for (const why of new Set(solutions.flatMap(withoutFootprint))) shell.err(`${why}\n`);
  return leaves;
}

/** What the font lacks is told, and printed as its code. */
function tellLacking(job: Job, shell: Shell): void {
  const signs = lacking([job.title ?? '', ...job.tubes.map((tube) => tube.name)].join(''));
  for (const sign of signs) {
    const code = `U+${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
    shell.err(`The sheets' font has no ${sign}: it is printed as [${code}].\n`);
  }
}

function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}
