import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Box, Drawing, Words } from '../../src/draw/drawing.ts';
import type { FactName, Place } from '../../src/draw/facts.ts';
import { inkPdf } from '../../src/ink/pdf.ts';
import type { Job } from '../../src/job/job.ts';
import type { Paper } from '../../src/job/paper/paper.ts';
import { readJob } from '../../src/job/read-job.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import { shopPack } from '../../src/shop/pack.ts';
import { layFront } from '../../src/tiler/front.ts';
import { furnish } from '../../src/tiler/furniture.ts';
import { pagesOf } from '../../src/tiler/page.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { someOf } from '../count.ts';
import { A4 } from '../job/sample.ts';
import { faultsOf, textsOf } from '../leaf/collisions.ts';

const FOLDERS = ['samples', 'templates'] as const;
const JOBS = FOLDERS.flatMap((folder) =>
  readdirSync(new URL(`../../${folder}`, import.meta.url))
    .map((file) => `${folder}/${file}`)
    .filter((file) => !/^frame:/m.test(readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8'))),
);
const LETTER = { name: 'letter', width: 215.9, height: 279.4 };
const SMALL = { name: '130x137mm', width: 130, height: 137 };

function jobOf(file: string, paper: Paper): Job {
  const text = readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8');
  return readJob(text, file, { words: ENGLISH, paper, insistOnPaper: paper });
}

/** As on sheets that boxes come before: the cautions are among these. */
const WORDS = { words: ENGLISH, job: 'sea kayak trailer' };

/** The pages of a job's pack, in each way that the paper can lie. */
function packs(job: Job, solutions = solveHands(job)): readonly (readonly Drawing[])[] {
  return pagesOf(job.sheet).map((page) => {
    const room = furnish(page, { ...WORDS, paper: job.sheet.paper.name }).content;
    return layFront(shopPack(job, solutions, true)(room), room).map((draw) =>
      pageOf(
        room,
        draw(() => []),
      ),
    );
  });
}

function pageOf(room: Box, marks: Drawing['marks']): Drawing {
  const hair = 0.2;
  const { left, right, top, bottom } = room;
  return {
    name: 'page',
    box: { left: left - hair, right: right + hair, top: top + hair, bottom: bottom - hair },
    marks,
  };
}

function wordsOf(pages: readonly Drawing[], place: Place): Words[] {
  return pages.flatMap(({ marks }) =>
    marks.filter((mark): mark is Words => mark.kind === 'words' && mark.of?.place === place),
  );
}

/** The sizes of what states one of these facts, in points of 1/72 in. */
function pointsOf(words: readonly Words[], facts: (fact: FactName) => boolean): number[] {
  return words.filter(({ fact }) => facts(fact)).map(({ size }) => (size * 72) / 25.4);
}

/** On letter, which is less high, the packs look much as on A4: a short run tries some. */
const ON_PAPERS = [
  { paper: A4, jobs: JOBS },
  { paper: LETTER, jobs: someOf(JOBS, { short: 5 }) },
];

describe.each(ON_PAPERS)('the pack of every sample and starter on $paper.name', ({ paper, jobs }) => {
  test.each(jobs)(
    '%s: a ticket whole on its page, nothing under 9 pt, no word on a word or a line',
    (file) => {
      const job = jobOf(file, paper);
      const solutions = solveHands(job);
      const ways = packs(job, solutions);
      // With what to beware of stands a ticket, laid in the way that takes the fewest sheets.
      const [front] = ways.toSorted((a, b) => a.length - b.length)[0] ?? [];
      expect(front && textsOf(front).length).toBeGreaterThan(12);
      for (const pages of ways) {
        for (const page of pages) expect(faultsOf(page)).toEqual([]);
        const told = wordsOf(pages, 'ticket');
        const heads = pages.filter((page) =>
          wordsOf([page], 'ticket').some(({ fact }) => fact === 'step:scrap'),
        );
        const ends = pages.filter((page) =>
          wordsOf([page], 'ticket').some(({ fact }) => fact === 'step:set'),
        );
        expect(ends).toEqual(heads);
        expect(Math.min(...pointsOf([...told, ...wordsOf(pages, 'list')], () => true))).toBeGreaterThan(8.99);
        // What decides is read from afar; a label beside it may be smaller.
        const decides = told.filter(({ fact, more }) => more && (fact === 'blank' || fact === 'twist'));
        for (const size of pointsOf(decides, () => true)) expect(size).toBeGreaterThan(11.99);
        for (const solution of solutions) {
          for (const name of ['A', 'B'] as const) {
            const cope = solution.ends[name];
            if (cope?.kind !== 'coped') continue;
            const pictured = told.filter(({ fact, of }) => fact === 'picture' && of?.end === name);
            expect(pictured.length).toBeGreaterThan(0);
          }
        }
        // What to beware of is read first, and once.
        expect(pages[0] && textsOf(pages[0])).toContain('Before you begin');
        expect(pages.flatMap(textsOf).filter((text) => text === 'Before you begin')).toHaveLength(1);
        const several = new Set(job.tubes.map(({ name }) => name)).size > 1;
        expect(pages.flatMap(textsOf).includes('Cut list')).toBe(several);
      }
    },
  );
});

test.each(JOBS)(
  'on the smallest paper %s goes on over pages, and no word lies on another or beyond the room',
  (file) => {
    for (const pages of packs(jobOf(file, SMALL))) {
      for (const page of pages) expect(faultsOf(page)).toEqual([]);
    }
  },
);

test.each(someOf(JOBS, { short: 3 }))(
  'on the smallest paper each page of %s that a ticket goes on on begins with its tube',
  (file) => {
    for (const pages of packs(jobOf(file, SMALL))) {
      const heads = pages.flatMap((page) => {
        const [first] = wordsOf([page], 'ticket');
        const isFirst = page.marks.find((mark) => mark.kind === 'words') === first;
        return isFirst && first ? [[first.text, first.of?.tube, first.fact]] : [];
      });
      expect(heads.length).toBeGreaterThan(1);
      for (const [text, tube, fact] of heads) {
        expect(fact).toBe('name');
        expect([tube, `${tube}, more`]).toContain(text);
      }
    }
  },
);

describe('forty tubes with long names and much stock', () => {
  const tubes = Array.from(
    { length: 20 },
    (_, i) =>
      `  - { name: brace of the upper cradle at the drawbar number ${i}, od: 30, wall: 2, pair: true, copies: ${1 + (i % 6)}, between: ${500 + 37 * i}, ends: { A: { onto: { od: 42.4 }, angle: 60 }, B: { onto: { od: ${40 + (i % 4)} }, angle: 50, clock: 35, offset: 2 } } }\n`,
  );
  const job = readJob(`copeleaf: 1\nstock: [6m x 30, 2.4m x 4]\ntubes:\n${tubes.join('')}`, 'many', {
    words: ENGLISH,
    paper: A4,
  });
  const [upright = []] = packs(job);

  test('have a ticket for both hands each, and lists with nothing on top of anything', () => {
    for (const page of upright) expect(faultsOf(page)).toEqual([]);
    const tickets = upright.flatMap(textsOf).filter((text) => text.startsWith('Ticket '));
    expect(tickets.length).toBe(20);
  });

  test('stand in the lists, each once in the cut list and with both ends in the order of work', () => {
    const lists = upright.flatMap(textsOf).join(' ');
    for (let i = 0; i < 20; i++) {
      for (const end of ['A', 'B'])
        expect(lists).toContain(`end ${end} of brace of the upper cradle at the drawbar number ${i} (`);
    }
  });
});

test('the order of work has a box for each copy, and one for all where there are many', () => {
  const boxes = (copies: number) => {
    const job = readJob(
      `copeleaf: 1\ntubes:\n  - { name: rung, od: 30, copies: ${copies}, between: 600, ends: { A: { onto: { od: 40 }, angle: 60 }, B: plain } }\n  - { name: stay, od: 30, between: 600, ends: { A: { onto: { od: 50 }, angle: 60 }, B: plain } }\n`,
      'job',
      { words: ENGLISH, paper: A4 },
    );
    const [[list] = []] = packs(job);
    const row = list?.marks.find(
      (mark): mark is Words => mark.kind === 'words' && mark.text.startsWith('end A of rung'),
    );
    const squares = list?.marks.filter(
      (mark) =>
        mark.kind === 'stroke' &&
        mark.path.closed &&
        row !== undefined &&
        Math.abs(mark.path.start.y - row.at.y) < 3 &&
        mark.path.start.x < row.at.x,
    );
    return squares?.length;
  };
  expect([1, 3, 8, 9].map(boxes)).toEqual([1, 3, 8, 1]);
});

test('a hand’s black bar stands at the left as drawn and at the right for the opposite hand', () => {
  const job = jobOf('samples/brace.yaml', LETTER);
  const [upright = []] = packs(job);
  const bars = upright.flatMap(({ marks }) =>
    marks.flatMap((mark, i) => {
      const bar = marks[i - 1];
      if (mark.kind !== 'words' || mark.fact !== 'hand' || bar?.kind !== 'fill') return [];
      return [[mark.text, bar.path.start.x < mark.at.x]];
    }),
  );
  expect(bars).toEqual([
    ['as drawn', true],
    ['opposite hand', false],
  ]);
});

test('a pack goes into a PDF with names in other scripts', async () => {
  const job = readJob(
    'copeleaf: 1\ntube: { name: "Στήριγμα, распорка ⌀ 漢", od: 30, between: 600, ends: { A: { onto: { od: 40 }, angle: 60 }, B: plain } }\n',
    'job',
    { words: ENGLISH, paper: A4 },
  );
  const [pages = []] = packs(job);
  const sheets = pages.map((drawing, i) => ({
    placements: [{ drawing: { ...drawing, name: `page ${i}` }, at: { x: 0, y: 0 }, turn: 0 as const }],
  }));
  const bytes = await inkPdf({ width: 210, height: 297, sheets }, { title: 'pack', jobName: 'pack' });
  expect(bytes.length).toBeGreaterThan(1000);
});
