import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { FACTS, type FactName, REPEATED } from '../../src/draw/facts.ts';
import { readFrame } from '../../src/frame/read-frame.ts';
import type { Job, Tube } from '../../src/job/job.ts';
import { mirroredTube } from '../../src/job/opposite.ts';
import { contextOf, leavesOf } from '../../src/leaf/leaves-of.ts';
import { solveTube } from '../../src/saddle/solve.ts';
import { shopPack } from '../../src/shop/pack.ts';
import { laySheets } from '../../src/tiler/lay-sheets.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { howMany, someOf } from '../count.ts';
import { A4 } from '../job/sample.ts';
import { dice } from '../leaf/random-tubes.ts';
import { anyJob } from '../tiler/any-job.ts';
import { byFact, type Stated, statedIn } from './stated.ts';

const JOBS = howMany({ short: 1, deep: 300, asked: 'LEAF_JOBS' });
const SEED = Number(process.env.LEAF_SEED ?? 77);
const SAMPLES = readdirSync('samples').filter((file) => file.endsWith('.yaml'));

function statedOf(job: Job, footprints: boolean): Stated[] {
  const solutions = job.tubes.flatMap((tube) => [
    solveTube(tube),
    ...(tube.pair ? [solveTube(mirroredTube(tube), 'opposite')] : []),
  ]);
  const leaves = solutions.flatMap((solution) =>
    leavesOf(solution, { ...contextOf(job), ticketed: true }, footprints),
  );
  const front = shopPack(job, solutions, footprints);
  return statedIn(
    laySheets(leaves, job.sheet, { job: job.title ?? 'job', words: job.words }, undefined, front),
  );
}

/** What is said more than once of one thing, and what stands where the list of facts does not have it. */
function faultsOf(stated: readonly Stated[]): string[] {
  const twice = [...byFact(stated)].flatMap(([key, group]) => {
    const [first] = group;
    if (!first || group.length === 1 || first.fact in REPEATED) return [];
    return [`${key}: ${group.map(({ place, text }) => `${place} "${text}"`).join(', ')}`];
  });
  const astray = stated
    .filter(({ fact, place }) => !placesOf(fact).includes(place))
    .map(({ fact, place, text }) => `${fact} on a ${place}: "${text}"`);
  return [...twice, ...astray];
}

/** Ends whose angle no ticket has, in its picture or beside it. */
function withoutAngle(tubes: readonly Tube[], stated: readonly Stated[]): string[] {
  const told = (tube: string, end: string): boolean =>
    stated.some(
      ({ fact, place, of }) =>
        (fact === 'angle' || fact === 'mitre') &&
        place === 'ticket' &&
        of.tube === tube &&
        (fact === 'mitre' || of.end === end),
    );
  return tubes.flatMap(({ name, ends }) =>
    (['A', 'B'] as const).flatMap((end) =>
      ends[end]?.kind === 'coped' && !told(name, end) ? [`${name} ${end}`] : [],
    ),
  );
}

function placesOf(fact: FactName): readonly string[] {
  return FACTS[fact];
}

describe('A fact stands once in a file', () => {
  it.each(someOf(SAMPLES, { short: 2 }))('%s', (file) => {
    const job = readFrame(readFileSync(`samples/${file}`, 'utf8'), file, { words: ENGLISH, paper: A4 });
    expect(faultsOf(statedOf(job, true))).toEqual([]);
  });

  it(`${JOBS} random jobs, LEAF_SEED=${SEED}`, () => {
    const roll = dice(SEED);
    const plain = readFrame(readFileSync('samples/rung.yaml', 'utf8'), 'rung.yaml', {
      words: ENGLISH,
      paper: A4,
    });
    for (let n = 0; n < JOBS; n += 1) {
      const { tubes, paper, name } = anyJob(roll);
      const named = tubes.map((tube, i) => ({ ...tube, name: `${tube.name} ${i + 1}` }));
      const job = { ...plain, title: name, tubes: named, sheet: { ...plain.sheet, paper } };
      const stated = statedOf(job, n % 4 === 3);
      expect(faultsOf(stated), `job ${n}`).toEqual([]);
      expect(withoutAngle(named, stated), `job ${n}`).toEqual([]);
    }
  });
});

describe('A ticket has the codes of its leaves and footprints, and no other', () => {
  const files = ['brace.yaml', 'bow-cradle.yaml', 'guard-elbow.yaml', 'gusset-node.yaml'];
  it.each(someOf(files, { short: 2 }))('%s', (file) => {
    const job = readFrame(readFileSync(`samples/${file}`, 'utf8'), file, { words: ENGLISH, paper: A4 });
    for (const footprints of [false, true]) {
      const marks = statedOf(job, footprints).filter(({ fact }) => fact === 'mark');
      const isOf = ({ of }: Stated, { of: end }: Stated): boolean =>
        of.tube === end.tube && of.end === end.end && (end.hand ?? of.hand) === of.hand;
      const codesIn = ({ text }: Stated): string[] => text.match(/\b[A-Z\d]{4}\b/g) ?? [];
      const onTickets = marks.filter(({ place, of }) => place === 'ticket' && of.end !== undefined);
      const onLeaves = marks.filter(({ place }) => place === 'leaf' || place === 'footprint');
      expect(onLeaves.length).toBeGreaterThan(0);
      expect(onLeaves.filter((leaf) => !onTickets.some((end) => isOf(leaf, end)))).toEqual([]);
      for (const end of onTickets) {
        const printed = onLeaves.filter((leaf) => isOf(leaf, end)).flatMap(codesIn);
        expect([...codesIn(end)].sort()).toEqual(printed.sort());
      }
    }
  });
});

it('The table in DEVELOPERS.md shows each fact, where it stands, and why it stands more than once', () => {
  const rows = readFileSync('DEVELOPERS.md', 'utf8')
    .split('## Facts')[1]
    ?.split('## ')[0]
    ?.matchAll(/^\| ([a-z:-]+) \| ([a-z, ]+) \| (.*)\|$/gm);
  const shown = [...(rows ?? [])].slice(1).map(([, fact, places, why]) => [fact, places, why?.trim() !== '']);
  const held = Object.entries(FACTS).map(([fact, places]) => [fact, places.join(', '), fact in REPEATED]);
  expect(shown).toEqual(held);
});
