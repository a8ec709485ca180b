import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/draw/drawing.ts';
import { PAPERS, type Paper } from '../../src/job/paper/paper.ts';
import type { Printer } from '../../src/job/paper/printer.ts';
import { furnish } from '../../src/tiler/furniture.ts';
import { type Page, pagesOf } from '../../src/tiler/page.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { inkBox } from './ink-boxes.ts';
import { printerOf } from './measured-printer.ts';
import { ask } from './synthetic.ts';

const JOB = 'Trailer for sea kayaks, second year, with the bow cradle and the long drawbar';
const [LETTER, A4] = PAPERS;
if (!LETTER || !A4) throw new Error('letter and A4 are the papers to begin with');
/** With margins of 10 mm, 17 at the foot: 110 mm each way, the least that is taken; such strips upright and level; A6 and A5. */
const SMALLER: readonly Paper[] = [
  [130, 137],
  [130, 150],
  [130, 300],
  [137, 210],
  [148, 210],
  [165, 200],
  [180, 240],
].map(([width = 0, height = 0]) => ({ name: `${width}x${height}mm`, width, height }));

/** The largest rectangle of the printable part that no ink of a sheet's furniture reaches into, as a share of that part. */
function freeShare(page: Page, paper: Paper, cautioned: boolean, printer?: Printer): number {
  const inside = page.printable;
  const named = { job: JOB, paper: paper.name, words: ENGLISH, cautioned, ...(printer && { printer }) };
  const { placements, cautions, sheetLine } = furnish(page, named);
  const line = { drawing: { name: 'line', box: inside, marks: sheetLine(88, 99) }, at: { x: 0, y: 0 } };
  const inked = [...placements, ...cautions, { ...line, turn: 0 as const }].flatMap((each) =>
    each.drawing.marks.map((mark) => inkBox(each, mark)),
  );
  return largestFree(inked, inside) / areaOf(inside);
}

/** Every pair of edges that it may lie between, and over them the highest white. */
function largestFree(inked: readonly Box[], inside: Box): number {
  const lefts = [inside.left, ...inked.map(({ right }) => right)];
  const rights = [inside.right, ...inked.map(({ left }) => left)];
  let largest = 0;
  for (const left of lefts) {
    for (const right of rights) {
      if (right <= left) continue;
      const between = inked.filter((box) => box.left < right && box.right > left);
      let from = inside.bottom;
      let high = 0;
      for (const { bottom, top } of between.toSorted((a, b) => a.bottom - b.bottom)) {
        high = Math.max(high, bottom - from);
        from = Math.max(from, top);
      }
      largest = Math.max(largest, (right - left) * Math.max(high, inside.top - from));
    }
  }
  return largest;
}

function areaOf({ left, bottom, right, top }: Box): number {
  return (right - left) * (top - bottom);
}

const PRINTERS = [undefined, printerOf('99.3mm', '100.3mm')];

describe.each([LETTER, A4])('on $name', (paper) => {
  it('the largest free rectangle is 82 % of the printable area, with the cautions too', () => {
    const pages = pagesOf(ask(paper));
    expect(pages).toHaveLength(2);
    for (const page of pages)
      for (const printer of PRINTERS)
        for (const cautioned of [false, true])
          expect(freeShare(page, paper, cautioned, printer)).toBeGreaterThanOrEqual(0.82);
  });
});

it.each([...PAPERS.slice(2), ...SMALLER])('on $name it is 75 %, whichever way it lies', (paper) => {
  for (const page of pagesOf(ask(paper)))
    for (const printer of PRINTERS)
      expect(freeShare(page, paper, false, printer)).toBeGreaterThanOrEqual(0.75);
});
