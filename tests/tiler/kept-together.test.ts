import { describe, expect, it } from 'vitest';
import type { CardedLeaf } from '../../src/leaf/leaf.ts';
import { laySheets } from '../../src/tiler/lay-sheets.ts';
import type { Placement } from '../../src/tiler/sheets.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { ask, leafOf } from './synthetic.ts';

const A4 = { name: 'A4', width: 210, height: 297 };

/** Of each sheet the leaves on it. */
function laid(leaves: readonly CardedLeaf[]): CardedLeaf[][] {
  const { sheets } = laySheets(leaves, ask(A4), { job: 'rack', words: ENGLISH });
  return [...sheets].map(({ placements }) =>
    leaves.filter(({ wrap }) => placements.some(({ drawing }) => drawing === wrap)),
  );
}

describe('what belongs together', () => {
  it('shares a sheet with another tube where that saves one', () => {
    const leaves = ['rung, end A', 'stay, end A'].map((title) => leafOf(title, [90, 40], [60, 40]));
    expect(laid(leaves).length).toBe(1);
  });

  // The highest place for the second leaf is under the first one's card, and its own card would go under the first leaf.
  it('has its card right of it or under it', () => {
    const leaves = ['A', 'B'].map((end) => leafOf(`stay, end ${end}`, [112, 70], [89, 62]));
    const { sheets } = laySheets(leaves, ask(A4), { job: 'rack', words: ENGLISH });
    const placements = [...sheets].flatMap((sheet) => sheet.placements);
    for (const { wrap, card } of leaves) {
      const [at, beside] = [wrap, card].map((drawing) => cornerOf(placements, drawing));
      const right = near(beside?.x, (at?.x ?? 0) + 114.5) && near(beside?.y, at?.y);
      const under = near(beside?.x, at?.x) && near(beside?.y, (at?.y ?? 0) - 72.5);
      expect(right || under).toBe(true);
    }
  });
});

function near(a: number | undefined, b: number | undefined): boolean {
  return a !== undefined && b !== undefined && Math.abs(a - b) < 1e-6;
}

/** The top left corner of a drawing that is not turned. */
function cornerOf(
  placements: readonly Placement[],
  drawing: CardedLeaf['wrap'],
): { x: number; y: number } | undefined {
  const found = placements.find((each) => each.drawing === drawing && each.turn === 0);
  return found && { x: found.at.x + drawing.box.left, y: found.at.y + drawing.box.top };
}

describe('twenty leaves of 93 x 45 mm with no cards', () => {
  const leaves = Array.from({ length: 20 }, (_, n) => {
    const { title, wrap, numbers, keepWhole } = leafOf(`strut ${n}`, [93, 45]);
    return { title, wrap, numbers, keepWhole };
  });

  // Upright, A4 holds two rows of three that are turned and one unturned under them; letter, six either way: two to a row, or three turned.
  it.each([
    ['A4', { name: 'A4', width: 210, height: 297 }, 3],
    ['letter', { name: 'letter', width: 215.9, height: 279.4 }, 4],
  ] as const)('go on as few sheets of %s as hold them, turned where that saves one', (_, paper, count) => {
    expect(laySheets(leaves, ask(paper), { job: 'rack', words: ENGLISH }).count).toBe(count);
  });
});

it('a leaf lies near its turn: of many, the largest first, none of the second sixty comes before one of the first', () => {
  const sides = (n: number): [number, number] => [60 + ((n * 37) % 90), 40 + ((n * 23) % 60)];
  const leaves = Array.from({ length: 150 }, (_, n) => leafOf(`stay ${n}`, sides(n), [60, 40]));
  const sheets = laid(leaves);
  expect(sheets.flat()).toHaveLength(150);
  const firstOf = (from: number, to: number) =>
    sheets.flatMap((sheet, place) =>
      sheet.some((leaf) => leaves.slice(from, to).includes(leaf)) ? [place] : [],
    );
  // A sheet is looked back at for twelve more at the most.
  expect(Math.max(...firstOf(0, 60)) - Math.min(...firstOf(60, 120))).toBeLessThanOrEqual(12);
});
