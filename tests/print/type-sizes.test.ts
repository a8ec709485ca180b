import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import type { Words } from '../../src/draw/drawing.ts';
import { readFrame } from '../../src/frame/read-frame.ts';
import { inkPdf } from '../../src/ink/pdf.ts';
import type { Job } from '../../src/job/job.ts';
import { mirroredTube } from '../../src/job/opposite.ts';
import { contextOf, leavesOf } from '../../src/leaf/leaves-of.ts';
import { solveTube, type TubeSolution } from '../../src/saddle/solve.ts';
import { shopPack } from '../../src/shop/pack.ts';
import { laySheets } from '../../src/tiler/lay-sheets.ts';
import type { Placement } from '../../src/tiler/sheets.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { howMany, someOf } from '../count.ts';
import { typeSizesOf } from '../ink/type-sizes.ts';
import { A4 } from '../job/sample.ts';
import { dice } from '../leaf/random-tubes.ts';
import { anyJob } from '../tiler/any-job.ts';

const JOBS = howMany({ short: 2, deep: 300, asked: 'LEAF_JOBS' });
const SEED = Number(process.env.LEAF_SEED ?? 912);
const SAMPLES = readdirSync('samples').filter((file) => file.endsWith('.yaml'));

/** What may be 8 pt: the foot of a sheet, and the heads of tiles. */
const AT_THE_FOOT: readonly string[] = ['sheet', 'tile', 'caution'];

/** What decides with a leaf in hand: 12 pt over 60 mm round. */
const OF_WORTH: readonly string[] = ['end', 'name', 'hand', 'waste', 'spine', 'base-distance'];

const HAIR = 0.005;

function signsIn(words: readonly Words[]): number {
  return words.reduce((sum, { text }) => sum + Array.from(text.replace(/\s/g, '')).length, 0);
}

function wordsOf(placements: readonly Placement[]): Words[] {
  return placements.flatMap(({ drawing }) =>
    drawing.marks.flatMap((mark) =>
      mark.kind === 'words' ? [{ ...mark, of: { ...drawing.of, ...mark.of } }] : [],
    ),
  );
}

async function faultsOf(job: Job, footprints: boolean): Promise<string[]> {
  const solutions = job.tubes.flatMap((tube): TubeSolution[] => [
    solveTube(tube),
    ...(tube.pair ? [solveTube(mirroredTube(tube), 'opposite')] : []),
  ]);
  const context = { ...contextOf(job), ticketed: true };
  const leaves = solutions.flatMap((solution) => leavesOf(solution, context, footprints));
  const front = shopPack(job, solutions, footprints);
  const set = laySheets(leaves, job.sheet, { job: 'job', words: job.words }, undefined, front);
  const printed = await typeSizesOf(await inkPdf(set, { title: 'job', jobName: 'job' }));
  const large = new Set(solutions.filter(({ section }) => section.girth > 60).map(({ tube }) => tube.name));
  return [...set.sheets].flatMap(({ placements }, page) => {
    const words = wordsOf(placements);
    const above = words.filter(({ fact }) => !AT_THE_FOOT.includes(fact));
    const worth = words.filter(
      ({ fact, of }) => of?.place === 'leaf' && large.has(of.tube ?? '') && OF_WORTH.includes(fact),
    );
    const sizes = (printed[page] ?? []).map(({ points }) => points);
    const least = (points: number): number => sizes.filter((size) => size > points - HAIR).length;
    return [
      ...(sizes.length === signsIn(words) ? [] : [`${sizes.length} signs for ${signsIn(words)}`]),
      ...(least(8) === sizes.length ? [] : ['under 8 pt']),
      ...(least(9) >= signsIn(above) ? [] : [`${signsIn(above) - least(9)} signs under 9 pt`]),
      ...(least(12) >= signsIn(worth) ? [] : [`${signsIn(worth) - least(12)} signs of worth under 12 pt`]),
    ].map((fault) => `sheet ${page + 1}: ${fault}`);
  });
}

it.each(someOf(SAMPLES, { short: 2 }))(
  '%s: nothing under 9 pt but the foot, what decides on a leaf 12 pt, as PDFium reads it',
  async (file) => {
    const job = readFrame(readFileSync(`samples/${file}`, 'utf8'), file, { words: ENGLISH, paper: A4 });
    expect(await faultsOf(job, true)).toEqual([]);
  },
);

it(`${JOBS} random jobs, LEAF_SEED=${SEED}`, async () => {
  const roll = dice(SEED);
  const plain = readFrame(readFileSync('samples/rung.yaml', 'utf8'), 'rung.yaml', {
    words: ENGLISH,
    paper: A4,
  });
  for (let n = 0; n < JOBS; n += 1) {
    const { tubes, paper } = anyJob(roll);
    const named = tubes.map((tube, i) => ({ ...tube, name: `${tube.name} ${i + 1}` }));
    const job = { ...plain, tubes: named, sheet: { ...plain.sheet, paper } };
    expect(await faultsOf(job, n % 4 === 3), `job ${n}`).toEqual([]);
  }
}, 3_600_000);
