import { describe, expect, test } from 'vitest';
import type { Box, Words } from '../../src/draw/drawing.ts';
import { words } from '../../src/draw/lettering.ts';
import type { SheetAsk } from '../../src/job/job.ts';
import { drawLeaf } from '../../src/leaf/draw-leaf.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import { type FrontBox, halfOf, layFront } from '../../src/tiler/front.ts';
import { type LaidSheets, laySheets } from '../../src/tiler/lay-sheets.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { asWritten } from '../../src/words/said.ts';
import { readSample } from '../job/sample.ts';

const JOB = readSample('copeleaf: 1\ntube: { od: 30, ends: { A: { onto: { od: 40 }, angle: 60 } } }\n');
const LEAVES = solveHands(JOB).map((solution) =>
  drawLeaf(solution, 'A', { words: ENGLISH, paperThickness: 0.1 }),
);
const ROLL: SheetAsk = { ...JOB.sheet, paper: { name: 'roll', width: 300, height: 5000, roll: true } };

/** Two pages with a word in each upper corner of the room, and what room that was. */
function laid(ask: SheetAsk): { set: LaidSheets; room: Box } {
  const rooms: Box[] = [];
  const set = laySheets(LEAVES, ask, { job: 'trailer', words: ENGLISH }, undefined, (given) => {
    rooms.push(given);
    return [0, 1].map((n) => ({
      width: given.right - given.left,
      height: 0.6 * (given.top - given.bottom),
      draw: ({ x, y }) => [words(asWritten(`front ${n}`), 'note', 3, { x, y: y - 3 })],
    }));
  });
  // They are made for each way that the paper can lie, and laid in one.
  const room = rooms.find(({ right, top }) => right < set.width && top < set.height);
  if (!room) throw new Error('no room');
  return { set, room };
}

function textsOn({ sheets }: LaidSheets): string[][] {
  return [...sheets].map(({ placements }) =>
    placements.flatMap(({ drawing }) =>
      drawing.marks.filter((mark): mark is Words => mark.kind === 'words').map(({ text }) => text),
    ),
  );
}

describe.each([
  ['A4', JOB.sheet],
  ['a roll', ROLL],
])('pages before the leaves on %s', (_, ask) => {
  test('come first, each with bars and words, and every sheet is counted with them', () => {
    const { set } = laid(ask);
    const texts = textsOn(set);
    expect(set.count).toBe(3);
    expect(texts.length).toBe(3);
    texts.forEach((own, i) => {
      expect(own.some((text) => text.startsWith(`Sheet ${i + 1} of 3`))).toBe(true);
      expect(own).toContain('100 mm across');
      expect(own.includes(`front ${i}`)).toBe(i < 2);
    });
  });

  test('have room enough for a ticket', () => {
    const { room } = laid(ask);
    expect(room.top - room.bottom).toBeGreaterThan(230);
  });
});

describe('boxes before the leaves', () => {
  const ROOM: Box = { left: 10, right: 196, bottom: 20, top: 220 };
  const box = (name: string, width: number, height: number, more: Partial<FrontBox> = {}): FrontBox => ({
    width,
    height,
    ...more,
    draw: (at) => [words(asWritten(name), 'note', 3, at)],
  });
  const laidOn = (boxes: readonly FrontBox[]) =>
    layFront(boxes, ROOM).map((draw) =>
      draw(() => []).flatMap((mark) => (mark.kind === 'words' ? [[mark.text, mark.at.x, mark.at.y]] : [])),
    );

  test('stand two to a page where they fit, one to a page where they do not', () => {
    const [low, high] = [box('low', 186, 96, { white: 8 }), box('high', 186, 97, { white: 8 })];
    expect(laidOn([low, low, low])).toEqual([
      [
        ['low', 10, 220],
        ['low', 10, 116],
      ],
      [['low', 10, 220]],
    ]);
    expect(laidOn([high, high])).toHaveLength(2);
  });

  test('stand side by side where each is half as wide as the room', () => {
    const half = box('ticket', halfOf(ROOM), 190);
    expect(laidOn([half, half, half])).toEqual([
      [
        ['ticket', 10, 220],
        ['ticket', 106, 220],
      ],
      [['ticket', 10, 220]],
    ]);
  });

  test('a list that has room shares its page with the first ticket, and a heading is not left behind', () => {
    const rows = [box('cut list', 186, 6, { heading: true }), ...[1, 2].map((n) => box(`row ${n}`, 186, 5))];
    expect(laidOn([...rows, box('ticket', 186, 180)]).map((page) => page.map(([name]) => name))).toEqual([
      ['cut list', 'row 1', 'row 2', 'ticket'],
    ]);
    expect(laidOn([box('ticket', 186, 190), ...rows]).map((page) => page.map(([name]) => name))).toEqual([
      ['ticket'],
      ['cut list', 'row 1', 'row 2'],
    ]);
  });

  test('one that is higher than the room has a page of its own', () => {
    const pages = laidOn([box('small', 186, 10), box('huge', 186, 300), box('small', 186, 10)]);
    expect(pages.map((page) => page.map(([name]) => name))).toEqual([['small'], ['huge'], ['small']]);
  });
});
