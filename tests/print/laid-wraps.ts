import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Box, Drawing, Point } from '../../src/draw/drawing.ts';
import type { EndName, Job } from '../../src/job/job.ts';
import { PAPERS } from '../../src/job/paper/paper.ts';
import { readJob } from '../../src/job/read-job.ts';
import { drawLeaf } from '../../src/leaf/draw-leaf.ts';
import type { Leaf } from '../../src/leaf/leaf.ts';
import { type Hand, solveHands } from '../../src/saddle/solve.ts';
import { laySheets } from '../../src/tiler/lay-sheets.ts';
import type { Placement } from '../../src/tiler/sheets.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { asProcess, folderWith } from '../cli/run-command.ts';
import { boxAround, onSheet, pointsOf } from '../tiler/ink-boxes.ts';

/** A sample job: its file, and what the command prints of it. */
export interface Printed {
  readonly source: string;
  readonly pdf: Uint8Array;
}

/** Prints the leaves of a job of samples/ with the built command, as a process; on the paper that it names, or another. */
export function printedSample(name: string, paper?: string): Printed {
  const file = readFileSync(fileURLToPath(new URL(`../../samples/${name}.yaml`, import.meta.url)), 'utf8');
  const source = paper === undefined ? file : file.replace(/^paper: .*$/m, `paper: ${paper}`);
  const folder = folderWith({ 'job.yaml': source });
  const { code, err } = asProcess(folder, ['print', '--leaves-only', 'job.yaml']);
  if (code !== 0) throw new Error(err);
  return { source, pdf: readFileSync(`${folder}/job.pdf`) };
}

/** A leaf of a job, drawn but not yet laid. */
export interface DrawnLeaf {
  readonly end: EndName;
  readonly hand: Hand;
  readonly leaf: Leaf;
}

export function leavesOf(source: string): { job: Job; leaves: readonly DrawnLeaf[] } {
  const [paper] = PAPERS;
  if (!paper) throw new Error('no paper');
  const job = readJob(source, 'job.yaml', { words: ENGLISH, paper });
  const context = {
    ...(job.title && { job: job.title }),
    words: job.words,
    paperThickness: job.sheet.paperThickness.mm,
  };
  const leaves = solveHands(job).flatMap((solution) =>
    (['A', 'B'] as const).flatMap((end) =>
      solution.ends[end]?.kind === 'coped'
        ? [{ end, hand: solution.hand, leaf: drawLeaf(solution, end, context) }]
        : [],
    ),
  );
  return { job, leaves };
}

/** Roughly where a wrap lies on a page: enough to know where on the raster to look for its lines. */
export interface RoughLie extends DrawnLeaf {
  /** From 0. */
  readonly page: number;
  readonly left: number;
  readonly spine: number;
  readonly baseEdge: number;
  /** What of the page shows it, for a tile. */
  readonly clip?: Box;
  /** The middles of the diamonds on a tile's seam. */
  readonly diamonds: readonly Point[];
}

/** A calibration bar on a page: the middles of its end ticks, roughly, and whether they stand over its line as it is read or under it. */
export interface RoughBar {
  readonly axis: 'across' | 'up';
  readonly side: 1 | -1;
  readonly from: Point;
  readonly to: Point;
}

/** What is looked for on the pages of one job. */
export interface RoughPages {
  /** Every wrap and tile, in the order of the pages. */
  readonly lies: readonly RoughLie[];
  /** The bars of each page. */
  readonly bars: readonly (readonly RoughBar[])[];
}

/** Throws where a wrap is turned: the jobs here have none. */
export function roughPages(source: string): RoughPages {
  const { job, leaves } = leavesOf(source);
  const drawings = leaves.map(({ leaf }) => leaf);
  const sheets = [...laySheets(drawings, job.sheet, { job: job.title ?? 'job', words: ENGLISH }).sheets];
  return {
    lies: sheets.flatMap(({ placements }, page) => liesOn(placements, page, leaves)),
    bars: sheets.map(({ placements }) => barsOn(placements)),
  };
}

function liesOn(placements: readonly Placement[], page: number, leaves: readonly DrawnLeaf[]): RoughLie[] {
  return placements.flatMap((placement) => {
    const drawn = leaves.find(({ leaf }) => leaf.wrap === placement.drawing);
    if (!drawn) return [];
    if (placement.turn !== 0) throw new Error(`${drawn.leaf.title} is turned`);
    const { at, clip } = placement;
    const { left, baseEdge } = edgesOf(drawn);
    const spine = spineOf(drawn.leaf.wrap);
    const lie = { page, left: at.x + left, spine: at.x + spine, baseEdge: at.y + baseEdge };
    return [{ ...drawn, ...lie, ...(clip && { clip }), diamonds: diamondsOn(placements) }];
  });
}

/** The longest strokes of the bars' drawings, and no ticks: two on one line, the metric one first. */
export function barsOn(placements: readonly Placement[]): RoughBar[] {
  return placements
    .filter(({ drawing }) => drawing.name.startsWith('bars'))
    .flatMap((placement) =>
      placement.drawing.marks
        .flatMap((mark) => {
          if (mark.kind !== 'stroke') return [];
          const [from, to] = pointsOf(mark.path).map((point) => onSheet(placement, point));
          return from && to && Math.hypot(to.x - from.x, to.y - from.y) > 50 ? [{ from, to }] : [];
        })
        .map((ends, index) => ({
          axis: placement.turn === 0 ? ('across' as const) : ('up' as const),
          side: index === 0 ? (1 as const) : (-1 as const),
          ...ends,
        })),
    );
}

/** The box of a wrap is drawn half a line's width, 0.2 mm with some air, outside its edges. */
function edgesOf({ end, leaf: { wrap } }: DrawnLeaf): { left: number; baseEdge: number } {
  const { left, bottom, top } = wrap.box;
  return { left: left + 0.2, baseEdge: end === 'A' ? top - 0.2 : bottom + 0.2 };
}

/** Across a wrap, mm: the upright guide line nearest to the words that name the spine. */
export function spineOf({ marks }: Drawing): number {
  const words = marks.find((mark) => mark.kind === 'words' && mark.text.startsWith('spine'));
  if (words?.kind !== 'words') throw new Error('no spine is named');
  const uprights = marks.flatMap((mark) => {
    if (mark.kind !== 'stroke' || mark.purpose !== 'guide') return [];
    const { left, right } = boxAround(pointsOf(mark.path));
    return right - left < 1e-9 ? [left] : [];
  });
  const away = (x: number) => Math.abs(x - words.at.x);
  const [nearest] = uprights.sort((a, b) => away(a) - away(b));
  if (nearest === undefined) throw new Error('no guide lines');
  return nearest;
}

function diamondsOn(placements: readonly Placement[]): Point[] {
  return placements
    .filter(({ drawing }) => drawing.name.endsWith('seams'))
    .flatMap((placement) =>
      placement.drawing.marks.flatMap((mark) => {
        if (mark.kind !== 'stroke' || mark.purpose !== 'registration' || !mark.path.closed) return [];
        const box = boxAround(pointsOf(mark.path).map((point) => onSheet(placement, point)));
        return [{ x: (box.left + box.right) / 2, y: (box.bottom + box.top) / 2 }];
      }),
    )
    .sort((a, b) => a.y - b.y);
}
