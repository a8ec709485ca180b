import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Box, Drawing, Words } from '../../src/draw/drawing.ts';
import { CAP_HEIGHT } from '../../src/draw/letters.ts';
import { inkPdf } from '../../src/ink/pdf.ts';
import type { Job } from '../../src/job/job.ts';
import type { Paper } from '../../src/job/paper/paper.ts';
import { readJob } from '../../src/job/read-job.ts';
import { solveJob } from '../../src/saddle/solve.ts';
import { shopPack } from '../../src/shop/pack.ts';
import { layFront } from '../../src/tiler/front.ts';
import { furnish } from '../../src/tiler/furniture.ts';
import { pagesOf } from '../../src/tiler/page.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { A4 } from '../job/sample.ts';
import { faultsOf, textsOf } from '../leaf/collisions.ts';

const FOLDERS = ['samples', 'templates'] as const;
const JOBS = FOLDERS.flatMap((folder) =>
  readdirSync(new URL(`../../${folder}`, import.meta.url)).map((file) => `${folder}/${file}`),
);
const LETTER = { name: 'letter', width: 215.9, height: 279.4 };
const SMALL = { name: '130x137mm', width: 130, height: 137 };

function jobOf(file: string, paper: Paper): Job {
  const text = readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8');
  return readJob(text, file, { words: ENGLISH, paper, insistOnPaper: paper });
}

/** As on sheets that carry leaves: with the cautions, which take room. */
const WORDS = { words: ENGLISH, job: 'sea kayak trailer', cautioned: true };

/** The pages of a job's pack, in each way that the paper can lie. */
function packs(job: Job): readonly (readonly Drawing[])[] {
  return pagesOf(job.sheet).map((page) => {
    const room = furnish(page, { ...WORDS, paper: job.sheet.paper.name }).content;
    return layFront(shopPack(job, solveJob(job), true)(room), room).map((draw) => pageOf(room, draw()));
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

function stepSizes({ marks }: Drawing): number[] {
  return marks.flatMap((mark) =>
    mark.kind === 'words' && /^(Cut|Deburr|Clean)/.test(mark.text) ? [mark.size] : [],
  );
}

/** How large a ticket's facts of tube and ends are set, by the name of one that every tube has. */
function factSize({ marks }: Drawing): number {
  const name = marks.find((mark): mark is Words => mark.kind === 'words' && mark.text === 'tube');
  return name?.size ?? 0;
}

/** How many pictures of a joint a ticket has, by the words under them. */
function captionsOf(ticket: Drawing): number {
  return textsOf(ticket).filter((text) => /^(seen from|along the header)/.test(text)).length;
}

/** How many ends a ticket tells of that land on something. */
function endsShown(ticket: Drawing): number {
  return textsOf(ticket).filter((text) => text === 'edge').length;
}

/** The numbers of a ticket that stand in larger letters than its steps, under the names `blank` and the like. */
function sawSizes({ marks }: Drawing): number[] {
  const all = marks.filter((mark): mark is Words => mark.kind === 'words');
  const named = all.filter(({ text }) =>
    /^(blanks?|base edge to|rotation A to B|end [AB], mitre)/.test(text),
  );
  return named.flatMap(({ at }) => {
    const under = all.filter((mark) => mark.at.x === at.x && mark.at.y < at.y);
    return under.sort((a, b) => b.at.y - a.at.y)[0]?.size ?? [];
  });
}

describe.each([A4, LETTER])('the pack of every sample and starter on $name', (paper) => {
  test.each(JOBS)(
    '%s: one page a ticket, steps of 10 pt or more, saw numbers larger, no word on a word or a line',
    (file) => {
      const job = jobOf(file, paper);
      for (const pages of packs(job)) {
        const tickets = pages.filter((page) => textsOf(page).some((text) => text.startsWith('Ticket ')));
        expect(tickets.length).toBe(solveJob(job).length);
        for (const page of pages) expect(faultsOf(page)).toEqual([]);
        // Each coped end and each twist has its picture: none is dropped for want of room.
        for (const ticket of tickets) expect(captionsOf(ticket)).toBeGreaterThanOrEqual(endsShown(ticket));
        // One job, one size: a ticket is read beside its twin.
        expect(new Set(tickets.flatMap(stepSizes)).size).toBe(1);
        // What to beware of is read first, and never alone.
        expect(pages[0] && textsOf(pages[0])).toEqual(
          expect.arrayContaining(['Before you begin', 'Cut list']),
        );
        // 10 pt are 3.53 mm.
        for (const ticket of tickets) expect(Math.min(...stepSizes(ticket))).toBeGreaterThan(3.53);
        // The facts are read from nearer: 7 pt.
        for (const ticket of tickets) expect(factSize(ticket)).toBeGreaterThan(2.46);
        // Read at arm's length, with both hands at the saw: letters 3.5 mm high.
        for (const size of tickets.flatMap(sawSizes)) expect(size * CAP_HEIGHT).toBeGreaterThanOrEqual(3.5);
        const lengths = solveJob(job).filter((solution) => solution.lengths);
        expect(tickets.filter((ticket) => sawSizes(ticket).length > 0).length).toBeGreaterThanOrEqual(
          lengths.length,
        );
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

  test('have a page each, and lists with nothing on top of anything', () => {
    for (const page of upright) expect(faultsOf(page)).toEqual([]);
    const tickets = upright.filter((page) => textsOf(page).some((text) => text.startsWith('Ticket ')));
    expect(tickets.length).toBe(40);
  });

  test('stand in the lists, each once in the cut list and with both ends in the order of work', () => {
    const lists = upright.flatMap(textsOf).join(' ');
    for (let i = 0; i < 20; i++) {
      for (const end of ['A', 'B'])
        expect(lists).toContain(
          `end ${end} of brace of the upper cradle at the drawbar number ${i}, as drawn`,
        );
    }
  });
});

test('the order of work has a box for each copy, and one for all where there are many', () => {
  const boxes = (copies: number) => {
    const job = readJob(
      `copeleaf: 1\ntube: { name: rung, od: 30, copies: ${copies}, between: 600, ends: { A: { onto: { od: 40 }, angle: 60 }, B: plain } }\n`,
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
  const bars = upright.flatMap(({ marks }) => {
    const name = marks.find(
      (mark): mark is Words => mark.kind === 'words' && /^(as drawn|opposite hand)$/.test(mark.text),
    );
    const bar = marks.find((mark) => mark.kind === 'fill' && mark.purpose === 'frame');
    return name && bar?.kind === 'fill' ? [[name.text, bar.path.start.x < name.at.x]] : [];
  });
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
