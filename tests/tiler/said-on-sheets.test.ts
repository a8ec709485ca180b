import { describe, expect, it } from 'vitest';
import { PAPERS, type Paper } from '../../src/job/paper/paper.ts';
import { laySheets } from '../../src/tiler/lay-sheets.ts';
import type { Placement } from '../../src/tiler/sheets.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { leavesOf } from '../print/laid-wraps.ts';
import { shownBox } from './ink-boxes.ts';
import { ask } from './synthetic.ts';

const SMALLEST: Paper = { name: '130x137mm', width: 130, height: 137 };

function textsOn(placements: readonly Placement[]): string[] {
  return placements.flatMap(({ drawing }) =>
    drawing.marks.flatMap((mark) => (mark.kind === 'words' ? [mark.text] : [])),
  );
}

function leafIn(od: number, end: 'A' | 'B') {
  const [drawn] = leavesOf(
    `copeleaf: 1\njob: kayak trailer\ntube:\n  name: bow support\n  od: ${od}\n  wall: 3\n  ends:\n    ${end}: { onto: { od: 150 }, angle: 60, offset: 4 }\n`,
  ).leaves;
  if (!drawn) throw new Error('one leaf');
  return drawn.leaf;
}

function sheetsOf(od: number, end: 'A' | 'B', paper: Paper) {
  return [...laySheets([leafIn(od, end)], ask(paper), { job: 'kayak trailer', words: ENGLISH }).sheets];
}

describe.each([...PAPERS, SMALLEST])('on $name', (paper) => {
  it('each sheet to cut by says once what to beware of', () => {
    for (const { placements } of sheetsOf(40, 'A', paper)) {
      const said = textsOn(placements).join(' ');
      for (const caution of ['eyes', 'fume', 'Vent', 'alight', 'sharp', 'licensed'])
        expect(said.split(caution), caution).toHaveLength(2);
    }
  });
});

it('each tile says at its head which way the joint lies on it', () => {
  for (const [end, upright, sideways] of [
    ['A', '↓', '→'],
    ['B', '↑', '←'],
  ] as const) {
    for (const paper of [...PAPERS.slice(0, 3), SMALLEST]) {
      const tiles = sheetsOf(139.7, end, paper).flatMap(({ placements }) => {
        const wrap = placements.find(({ clip }) => clip);
        return wrap ? [{ turn: wrap.turn, said: textsOn(placements) }] : [];
      });
      expect(tiles.length).toBeGreaterThan(1);
      for (const { turn, said } of tiles)
        expect(said.join(' ')).toContain(`${turn === 0 ? upright : sideways} to joint`);
    }
  }
});

it('a card too large for the smallest sheet comes in pieces that say all of it once, and whose they are', () => {
  const leaf = leafIn(139.7, 'B');
  const job = 'kayak trailer, second year, with the bow cradle and the long drawbar '.repeat(3);
  const long = { job, words: ENGLISH };
  const { sheets } = laySheets([leaf], ask(SMALLEST), long);
  const pieces = [...sheets].flatMap(({ placements }) =>
    placements.filter(({ drawing }) => drawing.name.startsWith(leaf.card.name)),
  );
  expect(pieces.length).toBeGreaterThan(1);
  const words = textsOn([{ drawing: leaf.card, at: { x: 0, y: 0 }, turn: 0 }]);
  const said = textsOn(pieces).filter((text) => !text.endsWith('more') && !text.endsWith('…'));
  expect(said.toSorted()).toEqual(words.toSorted());
  expect(textsOn(pieces.slice(1)).filter((text) => /^bow/.test(text)).length).toBe(pieces.length - 1);
  for (const piece of pieces) {
    const { left, bottom, right, top } = shownBox(piece);
    expect(Math.max(right - left, top - bottom)).toBeLessThan(110);
  }
});
