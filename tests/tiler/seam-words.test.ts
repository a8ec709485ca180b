import { expect, it } from 'vitest';
import type { Box } from '../../src/draw/drawing.ts';
import { PAPERS } from '../../src/job/paper/paper.ts';
import { laySheets } from '../../src/tiler/lay-sheets.ts';
import type { Placement } from '../../src/tiler/sheets.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { leavesOf } from '../print/laid-wraps.ts';
import { inkBox } from './ink-boxes.ts';
import { ask } from './synthetic.ts';

/** Half of a thin line's width (ISO 128-2, from memory). */
const HALF_LINE = 0.09;

function touching(a: Box, b: Box): boolean {
  return (
    a.left - HALF_LINE < b.right &&
    b.left < a.right + HALF_LINE &&
    a.bottom - HALF_LINE < b.top &&
    b.bottom < a.top + HALF_LINE
  );
}

/** The diamonds and arrows of a tile, and the leaf's words on it. The lines that run the whole seam are left out. */
function marksAndWords(placements: readonly Placement[]): { marks: Box[]; words: Box[] } {
  const wrap = placements.find(({ clip }) => clip);
  const seams = placements.find(({ drawing }) => drawing.name.endsWith('seams'));
  if (!wrap || !seams) return { marks: [], words: [] };
  const words = wrap.drawing.marks
    .flatMap((mark) => (mark.kind === 'words' ? [inkBox(wrap, mark)] : []))
    .filter((box) => box.left < box.right && box.bottom < box.top);
  const marks = seams.drawing.marks
    .flatMap((mark) => (mark.kind === 'words' ? [] : [inkBox(seams, mark)]))
    .filter((box) => Math.max(box.right - box.left, box.top - box.bottom) < 15);
  return { marks, words };
}

it('the marks and arrows of a seam touch no words of the leaf', () => {
  let tiles = 0;
  for (const od of [90, 139.7, 219.1]) {
    for (const angle of [25, 60, 90]) {
      for (const end of ['A', 'B']) {
        const source = `copeleaf: 1\ntube:\n  name: bow support, port side\n  od: ${od}\n  wall: 3\n  ends:\n    ${end}: { onto: { od: ${od * 1.2} }, angle: ${angle}, clock: ${od % 50} }\n`;
        const { leaves } = leavesOf(source);
        for (const paper of PAPERS.slice(0, 5)) {
          const set = laySheets(
            leaves.map(({ leaf }) => leaf),
            ask(paper),
            { job: 'Trailer', words: ENGLISH },
          );
          for (const { placements } of set.sheets) {
            const { marks, words } = marksAndWords(placements);
            if (marks.length > 0) tiles += 1;
            const touched = marks.filter((mark) => words.some((word) => touching(mark, word)));
            expect(touched, `${paper.name}, ${od} mm, ${angle} degrees, end ${end}`).toEqual([]);
          }
        }
      }
    }
  }
  expect(tiles).toBeGreaterThan(200);
});

it('an arrow to a lay-on line comes from beyond the overlap, which is 10 mm and more', () => {
  const source = 'copeleaf: 1\ntube:\n  od: 219.1\n  ends:\n    A: { onto: { od: 260 }, angle: 60 }\n';
  const leaves = leavesOf(source).leaves.map(({ leaf }) => leaf);
  const lengths = PAPERS.slice(0, 2).flatMap((paper) =>
    [...laySheets(leaves, ask(paper), { job: 'Trailer', words: ENGLISH }).sheets].flatMap(
      ({ placements }) => {
        const marks = placements.find(({ drawing }) => drawing.name.endsWith('seams'))?.drawing.marks ?? [];
        const tips = marks.flatMap((mark) => (mark.kind === 'fill' ? [mark.path.start] : []));
        return tips.map((tip) => {
          const [shaft] = marks.flatMap((mark) => {
            if (mark.kind !== 'stroke') return [];
            const [piece] = mark.path.pieces;
            const ends = [mark.path.start, ...(piece ? [piece.to] : [])];
            return ends.some(({ x, y }) => x === tip.x && y === tip.y) ? [ends] : [];
          });
          const [from, to] = shaft ?? [];
          return from && to ? Math.hypot(to.x - from.x, to.y - from.y) : 0;
        });
      },
    ),
  );
  expect(lengths.length).toBeGreaterThan(4);
  expect(Math.min(...lengths)).toBeGreaterThan(10);
});
