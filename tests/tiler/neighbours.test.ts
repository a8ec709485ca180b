import { expect, it } from 'vitest';
import type { Box, Mark } from '../../src/draw/drawing.ts';
import { laySheets } from '../../src/tiler/lay-sheets.ts';
import type { Placement } from '../../src/tiler/sheets.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { inkBox } from './ink-boxes.ts';
import { ask, leafOf } from './synthetic.ts';

/** Neighbouring tiles show the same 10 mm, so that one can be laid on the other. */
const OVERLAP = 10;

/** A tile as it is printed: its sheet, its place by its head, what its head says of its neighbours, and its seams. */
interface Printed {
  readonly sheet: number;
  readonly row: number;
  readonly column: number;
  readonly told: string;
  readonly seams: Placement;
  readonly clip: Box;
}

const textOf = (mark: Mark): string => (mark.kind === 'words' ? mark.text : '');

function printed(): Printed[] {
  const leaf = leafOf('mast foot', [420, 700]);
  const set = laySheets([leaf], ask({ name: 'A4', width: 210, height: 297 }), {
    job: 'trailer',
    words: ENGLISH,
  });
  return [...set.sheets].flatMap(({ placements }, index) => {
    const wrap = placements.find(({ clip }) => clip);
    const seams = placements.find(({ drawing }) => drawing.name.endsWith('seams'));
    if (!wrap?.clip || !seams) return [];
    const said = placements.flatMap(({ drawing }) => drawing.marks.map(textOf));
    const [, row, column] = /row (\d+) of \d+, column (\d+)/.exec(said.join('\n')) ?? [];
    const told = said.find((text) => /^(left|right|above|below): sheet/.test(text)) ?? '';
    return [{ sheet: index + 1, row: Number(row), column: Number(column), told, seams, clip: wrap.clip }];
  });
}

const SIDES = { left: [0, -1], right: [0, 1], above: [-1, 0], below: [1, 0] } as const;

it('each tile tells the sheets of its neighbours at its head, and names them at the seams that they share', () => {
  const tiles = printed();
  expect(new Set(tiles.map(({ row }) => row)).size).toBeGreaterThan(2);
  expect(new Set(tiles.map(({ column }) => column)).size).toBeGreaterThan(1);
  for (const { row, column, told, seams } of tiles) {
    const beside = Object.entries(SIDES).flatMap(([side, [down, along]]) => {
      const there = tiles.find((each) => each.row === row + down && each.column === column + along);
      return there ? [{ side, sheet: there.sheet }] : [];
    });
    expect(told).toBe(beside.map(({ side, sheet }) => `${side}: sheet ${sheet}`).join(' · '));
    const words = seams.drawing.marks.map(textOf).filter((text) => text !== '');
    expect(words).toHaveLength(beside.length);
    const named = (part: RegExp): string[] =>
      words.flatMap((text) => part.exec(text)?.[1] ?? []).sort((a, b) => Number(a) - Number(b));
    const sheetsOf = (...sides: string[]) =>
      beside.flatMap(({ side, sheet }) => (sides.includes(side) ? [`${sheet}`] : [])).sort();
    expect(named(/lies on sheet (\d+)/)).toEqual(sheetsOf('left', 'below'));
    expect(named(/lay sheet (\d+)/)).toEqual(sheetsOf('right', 'above'));
  }
});

it('words of a seam stand in the white beyond it, where nothing of the leaf is', () => {
  let seen = 0;
  for (const { seams, clip } of printed()) {
    for (const mark of seams.drawing.marks) {
      if (mark.kind !== 'words') continue;
      seen += 1;
      const { left, bottom, right, top } = inkBox(seams, mark);
      expect(left >= clip.right || right <= clip.left || bottom >= clip.top || top <= clip.bottom).toBe(true);
    }
  }
  expect(seen).toBeGreaterThan(8);
});

it('a seam’s line runs over the whole of its tile, and its marks are drawn as what they are', () => {
  const tiles = printed();
  const columns = Math.max(...tiles.map(({ column }) => column));
  for (const { column, seams, clip } of tiles) {
    const { box, marks } = seams.drawing;
    expect(marks.filter((mark) => mark.kind !== 'words' && mark.purpose !== 'registration')).toEqual([]);
    const lines = marks.flatMap((mark) => (mark.kind === 'stroke' ? [inkBox(seams, mark)] : []));
    const standing = lines.filter(({ top, bottom }) => top - bottom > (box.top - box.bottom) * 0.99);
    const expected = [
      ...(column > 1 ? [clip.left] : []),
      ...(column < columns ? [clip.right - OVERLAP] : []),
    ];
    expect(standing.map(({ left, right }) => (left + right) / 2)).toEqual(
      expected.map((x) => expect.closeTo(x, 6)),
    );
  }
});
