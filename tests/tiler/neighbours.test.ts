import { expect, it } from 'vitest';
import type { Box, Mark } from '../../src/draw/drawing.ts';
import { laySheets } from '../../src/tiler/lay-sheets.ts';
import type { Placement } from '../../src/tiler/sheets.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { inkBox, shownBox } from './ink-boxes.ts';
import { ask, leafOf } from './synthetic.ts';

/** Neighbouring tiles show the same 10 mm, so that one can be laid on the other. */
const OVERLAP = 10;
/** Half of the widest line that a leaf is drawn with. */
const HALF_LINE = 0.15;
/** How far a box of words reaches beyond digits, which have nothing under their base line. */
const DESCENT = 0.7;

/** A tile as it is printed: its sheet, its place by its head, what its head says of its neighbours, and its seams. */
interface Printed {
  readonly sheet: number;
  readonly row: number;
  readonly column: number;
  readonly told: string;
  readonly seams: Placement;
  readonly clip: Box;
  /** What the sheet shows of the leaf, from its lower left corner as it lies there; and how large all of it is. */
  readonly shown: Box & { readonly width: number; readonly height: number };
  /** Numbers in the map of the sheets, and its cells. */
  readonly map: { readonly numbers: readonly Box[]; readonly cells: readonly Box[] };
}

const textOf = (mark: Mark): string => (mark.kind === 'words' ? mark.text : '');

function printed(wide = 420, high = 700): Printed[] {
  const leaf = leafOf('mast foot', [wide, high]);
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
    return [
      {
        sheet: index + 1,
        row: Number(row),
        column: Number(column),
        told,
        seams,
        clip: wrap.clip,
        shown: shownOf(wrap),
        map: mapIn(placements),
      },
    ];
  });
}

function shownOf(wrap: Placement): Printed['shown'] {
  const { clip = shownBox(wrap), ...rest } = wrap;
  const whole = shownBox(rest);
  return {
    left: clip.left - whole.left,
    bottom: clip.bottom - whole.bottom,
    right: clip.right - whole.left,
    top: clip.top - whole.bottom,
    width: whole.right - whole.left,
    height: whole.top - whole.bottom,
  };
}

function mapIn(placements: readonly Placement[]): Printed['map'] {
  const drawn = placements.flatMap((placement) =>
    placement.drawing.marks.map((mark) => ({ mark, box: inkBox(placement, mark) })),
  );
  return {
    numbers: drawn.flatMap(({ mark, box }) => (/^\d+$/.test(textOf(mark)) ? [box] : [])),
    cells: drawn.flatMap(({ mark, box }) =>
      mark.kind === 'stroke' && mark.purpose === 'frame' ? [box] : [],
    ),
  };
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

it('neighbouring tiles show the same 10 mm, and the outer edges of a leaf are shown with the whole of their lines', () => {
  const tiles = printed();
  const columns = Math.max(...tiles.map(({ column }) => column));
  const rows = Math.max(...tiles.map(({ row }) => row));
  for (const { row, column, shown } of tiles) {
    const right = tiles.find((each) => each.row === row && each.column === column + 1);
    if (right) expect(shown.right - right.shown.left).toBeCloseTo(OVERLAP, 6);
    const above = tiles.find((each) => each.row === row - 1 && each.column === column);
    if (above) expect(shown.top - above.shown.bottom).toBeCloseTo(OVERLAP, 6);
    if (column === 1) expect(shown.left).toBeLessThan(-HALF_LINE);
    if (column === columns) expect(shown.right).toBeGreaterThan(shown.width + HALF_LINE);
    if (row === 1) expect(shown.top).toBeGreaterThan(shown.height + HALF_LINE);
    if (row === rows) expect(shown.bottom).toBeLessThan(-HALF_LINE);
  }
});

it('a number in the map of the sheets stands in its cell, or is left out', () => {
  let seen = 0;
  for (const high of [700, 2600]) {
    for (const { map } of printed(420, high)) {
      for (const number of map.numbers) {
        seen += 1;
        const within = map.cells.filter(
          (cell) =>
            cell.left < number.left &&
            cell.right > number.right &&
            cell.bottom < number.bottom + DESCENT &&
            cell.top > number.top - DESCENT,
        );
        expect(within).toHaveLength(1);
      }
    }
  }
  expect(seen).toBeGreaterThan(20);
});
