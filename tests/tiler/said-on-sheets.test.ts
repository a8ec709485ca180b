import { describe, expect, it } from 'vitest';
import { extentOf, lettered, wordsBox } from '../../src/draw/lettering.ts';
import { PAPERS, type Paper } from '../../src/job/paper/paper.ts';
import { drawCard } from '../../src/leaf/card/card.ts';
import { drawFootprint } from '../../src/leaf/footprint/leaf.ts';
import { contextOf } from '../../src/leaf/leaves-of.ts';
import { namesOf } from '../../src/leaf/names.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import { laySheets } from '../../src/tiler/lay-sheets.ts';
import type { Placement } from '../../src/tiler/sheets.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { asWritten } from '../../src/words/said.ts';
import { readSample } from '../job/sample.ts';
import { leavesOf } from '../print/laid-wraps.ts';
import { shownBox } from './ink-boxes.ts';
import { printerOf } from './measured-printer.ts';
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
  it('the first of the sheets to cut by says what to beware of, where no pages of words come before it', () => {
    const sheets = sheetsOf(139.7, 'A', paper);
    for (const caution of ['eyes', 'fume', 'Vent', 'alight', 'sharp', 'licensed']) {
      const times = sheets.map(({ placements }) => textsOn(placements).join(' ').split(caution).length - 1);
      expect(times, caution).toEqual(sheets.map((_, index) => (index === 0 ? 1 : 0)));
    }
  });
});

it('the printer that sheets are drawn for is named on each once: in words of its own, or beside the paper where room lacks', () => {
  for (const [paper, own] of [
    [PAPERS[0], true],
    [PAPERS[1], true],
    [{ name: '134x141mm', width: 134, height: 141 }, false],
  ] as const) {
    if (!paper) throw new Error('letter and A4 are papers');
    const set = laySheets(
      [leafIn(30, 'A')],
      ask(paper),
      { job: 'kayak trailer', words: ENGLISH },
      printerOf('99.3mm', '100.3mm'),
    );
    for (const { placements } of set.sheets) {
      const said = textsOn(placements).join(' ');
      expect(said.split('workshop'), paper.name).toHaveLength(2);
      expect(said.includes('Drawn for the printer “workshop”'), paper.name).toBe(own);
      expect(said.includes('for the printer “workshop”'), paper.name).toBe(true);
    }
  }
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

it('a tile says its row and its column, but not of a direction that has only one', () => {
  const letter = PAPERS[0] ?? SMALLEST;
  const heads = (od: number, paper: Paper) =>
    sheetsOf(od, 'A', paper).flatMap(({ placements }) =>
      textsOn(placements).flatMap((text) => /^((?:row|column) .*?) · /.exec(text)?.[1] ?? []),
    );
  const strip = heads(139.7, letter);
  expect(strip).toEqual(strip.map((_, i) => `${strip[0]?.split(' ')[0]} ${i + 1} of ${strip.length}`));
  expect(strip.length).toBeGreaterThan(1);
  const grid = heads(139.7, SMALLEST);
  expect(grid.length).toBeGreaterThan(3);
  for (const head of grid) expect(head).toMatch(/^row \d+ of ([2-9]|\d\d), column \d+ of ([2-9]|\d\d)$/);
});

it('a card too large for the smallest sheet comes in pieces that say all of it once, and whose they are', () => {
  const lines = Array.from({ length: 40 }, (_, n) => asWritten(`line ${n} of a card`));
  const block = { fact: 'note' as const, lines, size: 3.2 };
  const box = { left: 0, bottom: 0, right: 100, top: extentOf(block).height };
  const leaf = { ...leafIn(60, 'B'), card: { name: 'long card', box, marks: lettered(block, 0, 0) } };
  const { sheets } = laySheets([leaf], ask(SMALLEST), { job: 'kayak trailer', words: ENGLISH });
  const pieces = [...sheets].flatMap(({ placements }) =>
    placements.filter(({ drawing }) => drawing.name.startsWith(leaf.card.name)),
  );
  expect(pieces.length).toBeGreaterThan(1);
  const said = textsOn(pieces).filter((text) => !text.startsWith('bow'));
  expect(said).toEqual(lines);
  expect(textsOn(pieces.slice(1)).filter((text) => /^bow/.test(text)).length).toBe(pieces.length - 1);
  for (const piece of pieces) {
    const { left, bottom, right, top } = shownBox(piece);
    expect(Math.max(right - left, top - bottom)).toBeLessThan(110);
  }
});

describe('on the smallest sheet the card of a footprint goes, however long what heads it is', () => {
  /** As long as a name may be, in words and in one. */
  const NAMES = ['Wide mast foot brace '.repeat(5).slice(0, 80).trim(), 'W'.repeat(80)];

  it.each(NAMES)('%s', (name) => {
    const job = readSample(
      `copeleaf: 1\npair: true\ntube:\n  name: ${name}\n  od: 42.4\n  wall: 3\n  ends:\n` +
        '    A: [{ onto: { od: 60 }, angle: 60, clock: 20 }, { onto: { od: 48 }, angle: 50, clock: 210 }]\n',
    );
    for (const solution of solveHands(job)) {
      const cope = solution.ends.A;
      if (cope?.kind !== 'coped') throw new Error('one end');
      const leaf = drawFootprint(solution, 'A', 0, contextOf(job));
      // What a footprint is for may be said in more words than there is room for beside the hand.
      const use = asWritten('footprint: scribe by it and cut no hole in the header that it is laid on');
      const names = { ...namesOf(solution, 'A', ENGLISH, false), use };
      const card = drawCard('card', names, [], [], cope, ENGLISH, false);
      for (const each of [leaf.card, card]) {
        const { sheets } = laySheets([{ ...leaf, card: each }], ask(SMALLEST), {
          job: 'trailer',
          words: ENGLISH,
        });
        const laid = [...sheets].flatMap(({ placements }) => placements);
        const said = textsOn(laid.filter(({ drawing }) => drawing.name.startsWith(each.name))).join('');
        for (const mark of each.marks) {
          if (mark.kind !== 'words') continue;
          expect(said).toContain(mark.text);
          expect(wordsBox(mark).right, mark.text).toBeLessThanOrEqual(each.box.right);
        }
        expect(said.replace(/\s/g, '')).toContain(name.replace(/\s/g, ''));
      }
    }
  });
});
