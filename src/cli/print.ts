import { missingSigns } from '../draw/letters.ts';
import { warningsOf } from '../fit/report.ts';
import { inkDxf } from '../ink/dxf.ts';
import { inkPdf } from '../ink/pdf.ts';
import type { EndFlags } from '../job/end-flags.ts';
import type { Job } from '../job/job.ts';
import { tooSmall } from '../job/paper/paper.ts';
import type { Printer } from '../job/paper/printer.ts';
import { ownWordsOf } from '../job/text/note.ts';
import type { LeafContext } from '../leaf/draw-leaf.ts';
import type { Leaf } from '../leaf/leaf.ts';
import { leavesOf, withoutFootprint } from '../leaf/leaves-of.ts';
import type { Said } from '../measure/said.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import { stockLacking } from '../shop/lists/stock-in-words.ts';
import { withNewTicket } from '../shop/numbered.ts';
import { shopPack } from '../shop/pack.ts';
import type { FrontPages } from '../tiler/front.ts';
import { laySheets } from '../tiler/lay-sheets.ts';
import { isWarning, standingFrame } from '../together/frame-notes.ts';
import { copesOf } from '../together/in-space.ts';
import { solvePieces } from '../together/pieces.ts';
import { standingPieces } from '../together/pieces-named.ts';
import type { Language } from '../words/language.ts';
import { endedLines } from '../words/said.ts';
import { readAsk } from './ask.ts';
import { dataOf } from './data.ts';
import { refuseOwnInput, writeResult } from './files.ts';
import { type Only, onlyAsked } from './only.ts';
import { printerNamed } from './printer/printer.ts';
import { counting } from './progress.ts';
import type { Shell } from './shell.ts';
import { printContext, standsSince } from './since.ts';
import { printSolids } from './solids.ts';
import { refuse, refuseArgument } from './trouble.ts';

export interface PrintOptions extends EndFlags, Only {
  readonly as: 'pdf' | 'svg' | 'dxf' | 'stl';
  readonly footprints: boolean;
  readonly leavesOnly: boolean;
  readonly pack: boolean;
  readonly printer?: string;
  readonly seated?: string;
  readonly since?: string;
  readonly out?: string;
}

/** A leaf of more sheets than these, or a file of more, is mostly a size in the wrong unit. */
const MANY_OF_ONE = 12;
const MANY = 40;

/** `copeleaf print`: all leaves of a job on sheets, in one file. */
export async function print(path: string | undefined, options: PrintOptions, shell: Shell): Promise<void> {
  const {
    as,
    footprints,
    leavesOnly,
    pack: asked,
    printer: printerName,
    seated,
    only,
    since,
    out,
    ...flags
  } = options;
  const { words } = shell;
  const printer = printerName === undefined ? undefined : await printerNamed(printerName, shell);
  const { job, name } = await readAsk(path, flags, shell, seated);
  const target = out ?? `${name}.${as}`;
  await refuseOwnInput(path, target, shell);
  if (as === 'stl') return printSolids(job, { only, since, out: target }, shell);
  refuseSmallPaper(job, printer, words);
  tellLacking(job, shell);
  const pieces = solvePieces(job);
  const packed = as === 'pdf' && !leavesOnly && (asked || path !== undefined);
  const context = printContext(job, packed, footprints);
  const solutions = onlyAsked(job, pieces, only);
  const drawn = drawLeaves(solutions, context, footprints, shell);
  if (!solutions.some((solution) => copesOf(solution).length > 0)) {
    const { noLeaf } = words.commandFaults;
    throw refuse('no-leaf', path ?? 'flags', noLeaf.read, noLeaf, words);
  }
  const stands =
    since === undefined ? undefined : await standsSince(since, { job, pieces, context, footprints }, shell);
  const leaves = stands ? drawn.filter(({ numbers }) => !stands(numbers)) : drawn;
  const ticketed = stands && packed ? withNewTicket(job, solutions, footprints, stands) : solutions;
  if (since !== undefined && leaves.length === 0 && (!packed || ticketed.length === 0)) {
    shell.err(endedLines([words.commandAnswers.nothingNew(since)]));
    return;
  }
  const pack =
    packed && ticketed.length > 0 ? shopPack(job, ticketed, footprints, only === undefined) : undefined;
  const { bytes, sheets } = await {
    pdf: () => pdfOf(leaves, job, name, shell, printer, pack),
    svg: () => svgOf(leaves),
    dxf: () => ({ bytes: dataOf(inkDxf(leaves)), sheets: undefined }),
  }[as]();
  await writeResult(target, bytes, shell);
  tellWarnings(job, solutions, { all: pieces, only }, shell);
  if (target === '-') return;
  shell.err(endedLines([words.commandAnswers.printed(target, leaves.length, pack !== undefined, sheets)]));
}

/** What `check` warns of reaches the person who prints: what `--strict` stops at, then what is only to be known of a frame. */
function tellWarnings(
  job: Job,
  solutions: readonly TubeSolution[],
  { all, only }: { readonly all: readonly TubeSolution[]; readonly only: Only['only'] | undefined },
  { words, err }: Shell,
): void {
  const { warned, noted, warning: said } = words.commandAnswers;
  const tubes = warningsOf(solutions, words, all).map(({ solution, warning: { code, end, inFile } }) =>
    said(solution.tube.name, code, end ? words.check.ofEnd(end, inFile) : inFile),
  );
  const whole = standingFrame(job);
  const { warnings = [] } = (whole && only ? standingPieces(whole, solutions) : whole) ?? {};
  const ofFrame = (are: boolean): readonly Said[] =>
    warnings.filter((each) => isWarning(each) === are).map(({ code, text }) => words.check.told(code, text));
  const told = [...tubes, ...stockLacking(job, solutions), ...ofFrame(true)];
  const notes = ofFrame(false);
  if (told.length > 0) err(endedLines([warned(told.length), ...told]));
  if (notes.length > 0) err(endedLines([noted(notes.length), ...notes]));
}

/** What a printer draws short takes more of the paper. */
function refuseSmallPaper({ sheet }: Job, printer: Printer | undefined, words: Language): void {
  const small = printer && tooSmall(sheet.paper, sheet.margins, printer)?.(words);
  if (small) throw refuseArgument('paper-small', sheet.paper.name, small, words);
}

/** A file, and on how many sheets it is where it is on sheets. */
interface Inked {
  readonly bytes: Uint8Array;
  readonly sheets: number | undefined;
}

/** Sheets of an office printer, and how near to the rim few of them print: common practice, no source. */
const OFFICE_PAPER = ['letter', 'A4', 'legal', 'tabloid', 'A3'];
const LEAST_MARGIN = 3;

/** What lies at the rim of a sheet is lost, where a printer does not reach it. */
function tellNarrowMargin({ sheet: { paper, margins }, words }: Job, shell: Shell): void {
  const least = Math.min(...Object.values(margins).map(({ mm }) => mm));
  if (!OFFICE_PAPER.includes(paper.name) || least >= LEAST_MARGIN) return;
  shell.err(endedLines([words.commandAnswers.narrowMargin(paper.name)]));
}

async function pdfOf(
  leaves: readonly Leaf[],
  job: Job,
  name: string,
  shell: Shell,
  printer: Printer | undefined,
  front: FrontPages | undefined,
): Promise<Inked> {
  tellNarrowMargin(job, shell);
  const title = job.title ?? name;
  const set = laySheets(leaves, job.sheet, { job: title, words: job.words }, printer, front);
  const many = set.mostOfOne > MANY_OF_ONE || set.count > MANY;
  if (many) shell.err(endedLines([job.words.commandAnswers.manySheets(set.count, set.mostOfOne)]));
  const bytes = await inkPdf(set, {
    title,
    jobSource: job.source,
    jobName: name,
    about: job.words.file.job,
  });
  return { bytes, sheets: set.count };
}

/** What writes SVG needs a document, which is large and asked for seldom. */
async function svgOf(leaves: readonly Leaf[]): Promise<Inked> {
  const [{ inkSvg }, { createSVGWindow }] = await Promise.all([import('../ink/svg.ts'), import('svgdom')]);
  return { bytes: dataOf(inkSvg(leaves, createSVGWindow())), sheets: undefined };
}

function drawLeaves(
  solutions: readonly TubeSolution[],
  context: LeafContext,
  footprints: boolean,
  shell: Shell,
): readonly Leaf[] {
  const leaves = counting(shell, solutions, (solution) => leavesOf(solution, context, footprints)).flat();
  if (footprints) {
    const why = solutions.flatMap((solution) => withoutFootprint(solution, shell.words));
    shell.err(endedLines([...new Set(why)]));
  }
  return leaves;
}

/** What the font lacks is told, and printed as its code. */
function tellLacking(job: Job, shell: Shell): void {
  const signs = missingSigns(ownWordsOf(job));
  for (const sign of signs) {
    const code = `U+${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
    shell.err(endedLines([shell.words.commandAnswers.lacking(sign, code)]));
  }
}
