import { expect, test } from 'vitest';
import { reportsAsData } from '../../src/fit/as-data.ts';
import { checkReport } from '../../src/fit/check-report.ts';
import { reportTube } from '../../src/fit/report.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { howMany } from '../count.ts';
import { type Random, randomFrom, SEED } from '../outside/random-joints.ts';
import { readSample, refusalOf } from './sample.ts';

const KEYS = [
  'off-square',
  'rise',
  'run',
  'triangle',
  'acute',
  'read-at',
  'arc',
  'faces',
  'straightedge',
  'at',
  'overall',
  'seated',
  'girth',
  'tape',
  'mark',
];
const VALUES = [
  '12',
  '30deg',
  '7in',
  '600mm',
  '100',
  '0',
  '-5',
  'heel',
  'mark',
  '""',
  '[12, 12, 13]',
  '{ arc: 3 }',
  '1e9',
  '~',
  'true',
];

function pick<Value>(random: Random, values: readonly Value[]): Value {
  const value = values[Math.floor(random() * values.length)];
  if (value === undefined) throw new Error('nothing to pick from');
  return value;
}

const JOBS = howMany({ short: 200, deep: 1500 });

/** A measuring object of up to three keys, a list of some, or a value. */
function randomWay(random: Random, deep = 0): string {
  const kind = random();
  if (kind < 0.2) return pick(random, VALUES);
  if (kind < 0.4 && deep < 2) {
    return `[${Array.from({ length: Math.floor(random() * 3) }, () => randomWay(random, deep + 1)).join(', ')}]`;
  }
  const pairs = Array.from(
    { length: Math.floor(random() * 3.5) },
    () => `${pick(random, KEYS)}: ${pick(random, VALUES)}`,
  );
  return `{ ${pairs.join(', ')} }`;
}

function randomJob(random: Random): string {
  const value = (plain: string): string => (random() < 0.8 ? plain : randomWay(random));
  return `copeleaf: 1
tube:
  od: ${value('31.75')}
  between: ${value('600')}
  ends:
    A:
      onto: { od: ${value('38.1')} }
      angle: ${value('62')}
      clock: ${value('0')}
    B:
      onto: { od: 44.5 }
      angle: ${value('70')}
      clock: ${value('mark')}
`;
}

test(`any measuring object is read, echoed and solved, or refused with what to write instead (JOINT_SEED=${SEED})`, () => {
  const random = randomFrom(SEED + 31);
  let read = 0;
  for (let n = 0; n < JOBS; n++) {
    const text = randomJob(random);
    const told = refusalOf(() => {
      const [solution] = solveHands(readSample(text));
      if (!solution) throw new Error('a job has a tube');
      read++;
      if (read > 40) return;
      const report = reportTube(solution, ENGLISH);
      expect(checkReport(report, ENGLISH), text).not.toMatch(/NaN|undefined|Infinity/);
      expect(JSON.stringify(reportsAsData([report])), text).not.toContain('null');
    });
    for (const { why, instead, line, read: wrote } of told) {
      expect(
        [why, instead, wrote].every((words) => words.length > 0),
        text,
      ).toBe(true);
      expect(line, text).toBeGreaterThan(0);
      expect(`${why} ${instead}`, text).not.toMatch(/NaN|undefined|Infinity|\[object/);
    }
  }
  expect(read).toBeGreaterThan(40);
});
