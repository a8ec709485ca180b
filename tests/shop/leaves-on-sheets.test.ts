import { expect, test } from 'vitest';
import { PAPERS } from '../../src/job/paper/paper.ts';
import { contextOf, leavesOf } from '../../src/leaf/leaves-of.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import { shopPack } from '../../src/shop/pack.ts';
import { laySheets } from '../../src/tiler/lay-sheets.ts';
import { readSample } from '../job/sample.ts';
import { textsOf } from '../leaf/collisions.ts';

const tube = (name: string, od: number, more = ''): string =>
  `  - { name: ${name}, od: ${od}, wall: 2, between: 600, ends: { A: { onto: { od: 60 }, angle: 60 }, B: { onto: { od: 60 }, angle: 75, clock: 30 } }${more} }\n`;

const JOB = `copeleaf: 1\njob: rack\ntubes:\n${tube('stay', 30, ', pair: true')}${tube('rung', 25)}${tube('mast', 260)}${tube('prop', 40)}  - { name: rail, od: 40, wall: 2, between: 900, ends: { A: plain, B: plain } }\n`;

/** What is drawn on each sheet of a job with its pack. */
function drawnOn(source: string, paper: (typeof PAPERS)[number], footprints: boolean) {
  const job = readSample(source);
  const solutions = solveHands(job);
  const context = { ...contextOf(job), ticketed: true };
  const leaves = solutions.flatMap((solution) => leavesOf(solution, context, footprints));
  const pack = shopPack(job, solutions, footprints);
  const names = { job: 'rack', words: job.words };
  const { sheets } = laySheets(leaves, { ...job.sheet, paper }, names, undefined, pack);
  return [...sheets].map(({ placements }) => placements.map(({ drawing }) => drawing));
}

/** `16–19, 23` of these sheets. */
const said = (on: readonly number[]): string =>
  on
    .map((k) => (on.includes(k - 1) && on.includes(k + 1) ? '' : `${k}`))
    .join(', ')
    .replaceAll(/(, )+, /g, '–');

test.each(PAPERS.slice(0, 2).flatMap((paper) => [false, true].map((footprints) => ({ paper, footprints }))))(
  'a ticket tells which sheets the leaf and the footprint of each end lie on ($paper.name, footprints $footprints)',
  ({ paper, footprints }) => {
    const sheets = drawnOn(JOB, paper, footprints);
    const told = sheets
      .flat()
      .flatMap(textsOf)
      .flatMap((text) => /^Ticket \d of 5 .*sheets: (.*)$/.exec(text)?.[1] ?? []);
    const lie = ['stay', 'rung', 'mast', 'prop'].map((name) =>
      (['leaf', 'footprint'] as const)
        .filter((place) => place === 'leaf' || footprints)
        .map((place) => {
          const ends = ['A', 'B'].map((end) => {
            const on = sheets.flatMap((drawings, k) =>
              drawings.some(({ of }) => of?.tube === name && of.place === place && of.end === end)
                ? [k + 1]
                : [],
            );
            return `${end} ${said(on)}`;
          });
          return `${place === 'leaf' ? 'leaf' : 'footprints'} ${ends.join('; ')}`;
        })
        .join('  ·  '),
    );
    expect(lie.join(' ')).toMatch(/leaf A \d+–\d+; B \d+–\d+/);
    // A plain rail has none.
    expect(told).toEqual(lie);
  },
);

test('the ticket of one tube alone tells no sheets: all that follow are its', () => {
  const all = drawnOn(`copeleaf: 1\ntubes:\n${tube('rung', 25)}`, PAPERS[1] ?? fail(), true)
    .flat()
    .flatMap(textsOf);
  expect(all.join(' ')).toContain('Ticket (');
  expect(all.filter((text) => text.includes('sheets:'))).toEqual([]);
});

function fail(): never {
  throw new Error('A4 is a paper');
}
