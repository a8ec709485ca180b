import { describe, expect, test } from 'vitest';
import type { Box, Words } from '../../src/draw/drawing.ts';
import { words } from '../../src/draw/lettering.ts';
import type { SheetAsk } from '../../src/job/job.ts';
import { drawLeaf } from '../../src/leaf/draw-leaf.ts';
import { solveJob } from '../../src/saddle/solve.ts';
import { type LaidSheets, laySheets } from '../../src/tiler/lay-sheets.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { asWritten } from '../../src/words/said.ts';
import { readSample } from '../job/sample.ts';

const JOB = readSample('copeleaf: 1\ntube: { od: 30, ends: { A: { onto: { od: 40 }, angle: 60 } } }\n');
const LEAVES = solveJob(JOB).map((solution) =>
  drawLeaf(solution, 'A', { words: ENGLISH, paperThickness: 0.1 }),
);
const ROLL: SheetAsk = { ...JOB.sheet, paper: { name: 'roll', width: 300, height: 5000, roll: true } };

/** Two pages with a word in each upper corner of the room, and what room that was. */
function laid(ask: SheetAsk): { set: LaidSheets; room: Box } {
  let room: Box = { left: 0, right: 0, bottom: 0, top: 0 };
  const set = laySheets(LEAVES, ask, { job: 'trailer', words: ENGLISH }, undefined, (given) => {
    room = given;
    return [0, 1].map((n) => () => [
      words(asWritten(`front ${n}`), 'note', 3, { x: given.left, y: given.top - 3 }),
    ]);
  });
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
