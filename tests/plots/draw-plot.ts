import type { Box, Drawing } from '../../src/draw/drawing.ts';
import { readFrame } from '../../src/frame/read-frame.ts';
import { inkPdf } from '../../src/ink/pdf.ts';
import type { EndName, Job, SheetAsk } from '../../src/job/job.ts';
import { PAPERS, type Paper } from '../../src/job/paper/paper.ts';
import { drawLeaf } from '../../src/leaf/draw-leaf.ts';
import { drawFootprint } from '../../src/leaf/footprint/leaf.ts';
import type { CardedLeaf } from '../../src/leaf/leaf.ts';
import { type Hand, solveHands } from '../../src/saddle/solve.ts';
import { shopPack } from '../../src/shop/pack.ts';
import { type LaidSheets, laySheets } from '../../src/tiler/lay-sheets.ts';
import type { Placement } from '../../src/tiler/sheets.ts';
import { solvePieces } from '../../src/together/pieces.ts';
import { ENGLISH } from '../../src/words/english.ts';
import type { Language } from '../../src/words/language.ts';
import { type Raster, rasterOf } from '../ink/raster.ts';
import { shrunk } from './shrunk.ts';

/** A small picture that answers one question; its name is its file's. */
export interface Plot {
  readonly name: string;
  readonly draw: () => Promise<Raster>;
}

/** Pixels an inch of a kept plot, and how much larger it is first drawn. */
const DPI = 60;
const LARGER = 4;

/** One end's leaf, its card beside it. */
export function leafPlot(name: string, source: string, end: EndName, hand: Hand = 'as-drawn'): Plot {
  return { name, draw: () => leafRaster(leafOf(source, end, hand)) };
}

/** What end A leaves on its header, unrolled. */
export function footprintPlot(name: string, source: string): Plot {
  const draw = () => {
    const job = read(source);
    const [solution] = solveHands(job);
    if (!solution) throw new Error('no tube');
    return leafRaster(drawFootprint(solution, 'A', 0, contextOf(job)));
  };
  return { name, draw };
}

/** One sheet of a whole job, by its place from 0. */
export function sheetPlot(name: string, source: string, page: number): Plot {
  const draw = () => {
    const job = read(source);
    return small(laySheets(leavesOf(job), job.sheet, { job: job.title ?? name, words: ENGLISH }), page);
  };
  return { name, draw };
}

/** One page of a job's shop pack, by its place from 0. */
export function packPlot(name: string, source: string, page: number): Plot {
  const draw = () => {
    const job = read(source);
    const front = shopPack(job, solvePieces(job), false);
    return small(
      laySheets(leavesOf(job), job.sheet, { job: job.title ?? name, words: ENGLISH }, undefined, front),
      page,
    );
  };
  return { name, draw };
}

/** A drawing by itself. */
export function drawingPlot(name: string, draw: () => Drawing): Plot {
  return { name, draw: () => small(alone(draw()), 0) };
}

/** A measuring aid on the sheet that a job asks for. */
export function aidPlot(
  name: string,
  source: string,
  lay: (ask: SheetAsk, words: Language) => LaidSheets,
): Plot {
  return { name, draw: () => small(lay(read(source).sheet, ENGLISH), 0) };
}

/** One end's leaf, large and crisp. */
export async function leafPicture(source: string, end: EndName, dpi: number): Promise<Raster> {
  return rasterOf(await pdfOf(leafSet(leafOf(source, end, 'as-drawn'))), 0, dpi);
}

/** A leaf with its card as small as it is kept. */
export function leafRaster(leaf: CardedLeaf): Promise<Raster> {
  return small(leafSet(leaf), 0);
}

/** Only the sheet that is shown is inked. */
async function small(set: LaidSheets, page: number): Promise<Raster> {
  const sheets = [...set.sheets].slice(page, page + 1);
  return shrunk(await rasterOf(await pdfOf({ ...set, sheets }), 0, DPI * LARGER), LARGER);
}

function pdfOf(set: LaidSheets): Promise<Uint8Array> {
  return inkPdf(set, { title: 'plot', jobName: 'plot' });
}

function read(source: string): Job {
  return readFrame(source, 'plot', { words: ENGLISH, paper: paper() });
}

function paper(): Paper {
  const found = PAPERS.find(({ name }) => name === 'A4');
  if (!found) throw new Error('A4 is a paper');
  return found;
}

function contextOf(job: Job) {
  return {
    ...(job.title && { job: job.title }),
    words: job.words,
    paperThickness: job.sheet.paperThickness.mm,
  };
}

/** One end's leaf as a job asks for it. */
export function leafOf(source: string, end: EndName, hand: Hand): CardedLeaf {
  const job = read(source);
  const solution = solveHands(job).find((each) => each.hand === hand);
  if (!solution) throw new Error(`the plot's job has no tube of the ${hand} hand`);
  return drawLeaf(solution, end, contextOf(job));
}

function leavesOf(job: Job): CardedLeaf[] {
  return solvePieces(job).flatMap((solution) =>
    (['A', 'B'] as const).flatMap((end) =>
      solution.ends[end]?.kind === 'coped' ? [drawLeaf(solution, end, contextOf(job))] : [],
    ),
  );
}

/** White round a lone leaf, and between it and its card. */
const EDGE = 4;
const GAP = 6;

function leafSet({ wrap, card }: CardedLeaf): LaidSheets {
  const placements = [placed(wrap, EDGE), placed(card, EDGE + widthOf(wrap.box) + GAP)];
  const width = 2 * EDGE + widthOf(wrap.box) + GAP + widthOf(card.box);
  const height = 2 * EDGE + Math.max(heightOf(wrap.box), heightOf(card.box));
  return { width, height, count: 1, mostOfOne: 1, sheets: [{ placements }] };
}

function alone(drawing: Drawing): LaidSheets {
  const { box } = drawing;
  const sheets = [{ placements: [placed(drawing, EDGE)] }];
  return { width: widthOf(box) + 2 * EDGE, height: heightOf(box) + 2 * EDGE, count: 1, mostOfOne: 1, sheets };
}

function placed(drawing: Drawing, left: number): Placement {
  return { drawing, at: { x: left - drawing.box.left, y: EDGE - drawing.box.bottom }, turn: 0 };
}

function widthOf({ left, right }: Box): number {
  return right - left;
}

function heightOf({ bottom, top }: Box): number {
  return top - bottom;
}
