import { readFileSync } from 'node:fs';
import { inkPdf } from '../../src/ink/pdf.ts';
import type { EndName } from '../../src/job/job.ts';
import { PAPERS, type Paper } from '../../src/job/paper.ts';
import { readJob } from '../../src/job/read-job.ts';
import { drawLeaf } from '../../src/leaf/draw-leaf.ts';
import type { Box, Drawing } from '../../src/leaf/drawing.ts';
import type { Leaf } from '../../src/leaf/leaf.ts';
import { type Hand, solveJob } from '../../src/saddle/solve.ts';
import { laySheets } from '../../src/tiler/lay-sheets.ts';
import type { Placement } from '../../src/tiler/sheets.ts';
import { type Raster, rasterOf } from '../ink/raster.ts';

/** A small picture that answers one question; its name is its file's. */
export interface Plot {
  readonly name: string;
  readonly draw: () => Promise<Raster>;
}

const DPI = 60;

const TUBE = '  name: bunk stay\n  od: 31.75\n  wall: 2.4\n';
const one = (end: string, tube = TUBE): string =>
  `copeleaf: 1\npaper: A4\ntube:\n${tube}  ends: { A: ${end} }\n`;
const ROUND = 'onto: { od: 38.1 }, angle: 48';

/** One question each; what to look for stands in reference-plots/README.md. */
export const PLOTS: readonly Plot[] = [
  leafPlot('rung', sample('rung'), 'A'),
  leafPlot('brace-a', sample('brace'), 'A'),
  leafPlot('brace-b', sample('brace'), 'B'),
  leafPlot('brace-b-opposite', sample('brace'), 'B', 'opposite'),
  leafPlot('square-edge', one(`{ ${ROUND}, edge: square }`), 'A'),
  leafPlot('misses', one('{ onto: { od: 25 }, angle: 60, offset: 4 }'), 'A'),
  leafPlot('tiny', one('{ onto: { od: 12 }, angle: 60 }', '  name: pin\n  od: 10\n  wall: 1\n'), 'A'),
  leafPlot('greek-and-cyrillic', one(`{ ${ROUND} }`, TUBE.replace('bunk stay', 'Στήριγμα, распорка ⌀')), 'A'),
  leafPlot('plate', one('{ onto: { plate: {} }, angle: 60 }'), 'A'),
  leafPlot('mitre', one('{ onto: { mitre: { turn: 90, pieces: 5, radius: 150 } } }'), 'A'),
  leafPlot('box', one('{ onto: { box: { wide: 50, deep: 30, wall: 3 } }, angle: 60 }'), 'A'),
  leafPlot('bend', one('{ onto: { bend: { od: 44.5, radius: 150, centre: 90 } }, angle: 80 }'), 'A'),
  leafPlot('union', one(`[ { ${ROUND} }, { onto: { od: 50 }, angle: 80, clock: 100 } ]`), 'A'),
  leafPlot(
    'rectangular',
    one('{ onto: { od: 76.1 }, angle: 60, clock: 30 }', '  section: { wide: 50, deep: 30 }\n  wall: 3\n'),
    'A',
  ),
  sheetPlot('sheet-a4', sample('rung'), 0),
  sheetPlot('sheet-letter', sample('brace'), 0),
  sheetPlot('tile-1', sample('mast-foot'), 0),
  sheetPlot('tile-2', sample('mast-foot'), 1),
];

/** The picture at the head of README.md: one leaf and its card, crisp. */
export function readmePicture(): Promise<Raster> {
  return leafRaster(sample('brace'), 'B', 'as-drawn', 130);
}

function sample(name: string): string {
  return readFileSync(new URL(`../../samples/${name}.yaml`, import.meta.url), 'utf8');
}

function leafPlot(name: string, source: string, end: EndName, hand: Hand = 'as-drawn'): Plot {
  return { name, draw: () => leafRaster(source, end, hand, DPI) };
}

function sheetPlot(name: string, source: string, page: number): Plot {
  return {
    name,
    draw: async () => {
      const job = readJob(source, name, { paper: paper() });
      const set = laySheets(leavesOf(source), job.sheet, { job: job.title ?? name });
      return rasterOf(await inkPdf(set, { title: name, jobSource: source, jobName: name }), page, DPI);
    },
  };
}

function leavesOf(source: string): Leaf[] {
  const job = readJob(source, 'plot', { paper: paper() });
  const context = { ...(job.title && { job: job.title }), paperThickness: job.sheet.paperThickness.mm };
  return solveJob(job).flatMap((solution) =>
    (['A', 'B'] as const).flatMap((end) =>
      solution.ends[end]?.kind === 'coped' ? [drawLeaf(solution, end, context)] : [],
    ),
  );
}

function paper(): Paper {
  const found = PAPERS.find(({ name }) => name === 'A4');
  if (!found) throw new Error('A4 is a paper');
  return found;
}

async function leafRaster(source: string, end: EndName, hand: Hand, dpi: number): Promise<Raster> {
  const job = readJob(source, 'plot', { paper: paper() });
  const solution = solveJob(job).find((each) => each.hand === hand);
  if (!solution) throw new Error(`the plot's job has no tube of the ${hand} hand`);
  const leaf = drawLeaf(solution, end, { ...(job.title && { job: job.title }), paperThickness: 0.1 });
  const wrap = placed(leaf.wrap, EDGE, EDGE);
  const card = placed(leaf.card, EDGE + widthOf(leaf.wrap.box) + GAP, EDGE);
  const width = 2 * EDGE + widthOf(leaf.wrap.box) + GAP + widthOf(leaf.card.box);
  const height = 2 * EDGE + Math.max(heightOf(leaf.wrap.box), heightOf(leaf.card.box));
  const set = { width, height, sheets: [{ placements: [wrap, card] }] };
  return rasterOf(await inkPdf(set, { title: 'plot', jobSource: source, jobName: 'plot' }), 0, dpi);
}

/** White round a lone leaf, and between it and its card. */
const EDGE = 4;
const GAP = 6;

function placed(drawing: Drawing, left: number, bottom: number): Placement {
  return { drawing, at: { x: left - drawing.box.left, y: bottom - drawing.box.bottom }, turn: 0 };
}

function widthOf({ left, right }: Box): number {
  return right - left;
}

function heightOf({ bottom, top }: Box): number {
  return top - bottom;
}
