import { readdirSync, readFileSync } from 'node:fs';
import type { Box } from '../../src/draw/drawing.ts';
import { readFrame } from '../../src/frame/read-frame.ts';
import { PAPERS, type Paper } from '../../src/job/paper/paper.ts';
import { contextOf, leavesOf } from '../../src/leaf/leaves-of.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import { shopPack } from '../../src/shop/pack.ts';
import { type LaidSheets, laySheets } from '../../src/tiler/lay-sheets.ts';
import type { Placement } from '../../src/tiler/sheets.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { inkBox, shownBox } from '../tiler/ink-boxes.ts';

/** A job, and on how many sheets of letter and of A4 it is to be printed, at the most: as many as a person cared to hold. */
export interface Counted {
  readonly name: string;
  readonly source: string;
  readonly most: number;
}

const SAMPLES = new URL('../../samples/', import.meta.url);
const MOST: Readonly<Record<string, number>> = {
  brace: 3,
  'bow-cradle': 6,
  'drawbar-brace': 4,
  'mast-foot': 3,
};
/** Of each other sample: its ticket, and its leaves. */
const OTHERS = 2;

/** Ten struts of a rack, each of another length and lean, onto one size of header. */
const STRUTS = `copeleaf: 1\njob: trailer rack\ntubes:\n${Array.from(
  { length: 10 },
  (_, i) =>
    `  - { name: strut ${i + 1}, od: 26, wall: 2, between: ${400 + 37 * i}, ends: { A: { onto: { od: 48.3 }, angle: 90 }, B: { onto: { od: 48.3 }, angle: ${90 - i} } } }\n`,
).join('')}`;

export const COUNTED: readonly Counted[] = [
  // How many a whole frame takes is bounded by its tubes, and by no bar of its own.
  ...readdirSync(SAMPLES)
    .filter((file) => !readFileSync(new URL(file, SAMPLES), 'utf8').includes('\nframe:'))
    .map((file) => {
      const name = file.replace('.yaml', '');
      return { name, source: readFileSync(new URL(file, SAMPLES), 'utf8'), most: MOST[name] ?? OTHERS };
    }),
  { name: 'ten struts', source: STRUTS, most: 10 },
];

/** Letter and A4, whatever a job asks for. */
export const COUNTED_PAPERS = PAPERS.slice(0, 2);

/** All that is printed of a job. */
export function sheetsOf({ name, source }: Counted, paper: Paper): LaidSheets {
  const job = readFrame(source, `${name}.yaml`, { words: ENGLISH, paper, insistOnPaper: paper });
  const solutions = solveHands(job);
  const context = { ...contextOf(job), ticketed: true };
  const leaves = solutions.flatMap((solution) => leavesOf(solution, context, false));
  const names = { job: job.title ?? name, words: job.words };
  return laySheets(leaves, job.sheet, names, undefined, shopPack(job, solutions, false));
}

/** What part of the paper is leaf or has something inked within the millimetre. */
export function shareUsed({ width, height, sheets }: LaidSheets): number {
  const [across, up] = [Math.ceil(width), Math.ceil(height)];
  let used = 0;
  let pages = 0;
  for (const { placements } of sheets) {
    const cells = new Uint8Array(across * up);
    for (const box of placements.flatMap(boxesOf)) {
      for (let y = Math.floor(box.bottom); y < box.top; y += 1)
        cells.fill(1, y * across + Math.floor(box.left), y * across + Math.ceil(box.right));
    }
    used += cells.reduce((sum, cell) => sum + cell, 0);
    pages += 1;
  }
  return used / (pages * across * up);
}

/** A leaf counts whole, all else by its marks. */
function boxesOf(placement: Placement): Box[] {
  if (placement.drawing.of?.place === 'leaf') return [shownBox(placement)];
  return placement.drawing.marks
    .map((mark) => inkBox(placement, mark))
    .filter(({ left, right, bottom, top }) => left <= right && bottom <= top);
}
