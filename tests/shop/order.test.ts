import { describe, expect, test } from 'vitest';
import { solveHands } from '../../src/saddle/solve.ts';
import { type EndTask, firstEnds, orderOfWork, type Stage } from '../../src/shop/lists/order.ts';
import { type Before, settingsInOrder } from '../../src/shop/lists/settings-order.ts';
import { howMany } from '../count.ts';
import { readSample } from '../job/sample.ts';
import { type Random, randomFrom, SEED } from '../outside/random-joints.ts';

const JOBS = howMany({ short: 4, deep: 15 });
const DIAMETERS = ['33.7', '38.1', '1-1/2in', '42.4', '48.3', '60.3'];

function pick<Value>(random: Random, values: readonly Value[]): Value {
  const value = values[Math.floor(random() * values.length)];
  if (value === undefined) throw new Error('nothing to pick from');
  return value;
}

/** So many tubes with two ends each, some of them pairs. */
function randomJob(random: Random, tubes: number): string {
  const end = (): string =>
    `{ onto: { od: ${pick(random, DIAMETERS)} }, angle: ${40 + Math.round(random() * 100)} }`;
  const tube = (i: number): string =>
    `  - { name: tube ${i}, od: 25, between: 900, pair: ${random() < 0.5}, ends: { A: ${end()}, B: ${end()} } }\n`;
  return `copeleaf: 1\ntubes:\n${Array.from({ length: tubes }, (_, i) => tube(i)).join('')}`;
}

function nameOf({ solution, end }: EndTask): string {
  return `${solution.tube.name} ${solution.hand} ${end}`;
}

function stagesOf(job: string): readonly Stage[] {
  return orderOfWork(solveHands(readSample(job)));
}

describe(`the order of work (JOINT_SEED=${SEED})`, () => {
  test('changes the header as often as there are diameters, over jobs of 40 ends and more', () => {
    const random = randomFrom(SEED + 11);
    for (let n = 0; n < JOBS; n++) {
      const job = randomJob(random, 20);
      const asked = [...job.matchAll(/onto: \{ od: ([^ ]+) \}/g)].map(([, od]) =>
        od === '1-1/2in' ? '38.1' : od,
      );
      const stages = stagesOf(job);
      expect(stages.length).toBe(new Set(asked).size);
      const names = stages.flatMap(({ tasks }) => tasks.map(nameOf));
      expect(new Set(names).size).toBe(names.length);
      expect(names.length).toBe(solveHands(readSample(job)).length * 2);
    }
  });

  test('has both hands of a pair one after the other', () => {
    const random = randomFrom(SEED + 12);
    for (let n = 0; n < JOBS; n++) {
      for (const { tasks } of stagesOf(randomJob(random, 20))) {
        for (const [i, { solution, end }] of tasks.entries()) {
          if (!solution.tube.pair || solution.hand === 'opposite') continue;
          const next = tasks[i + 1];
          expect(next && nameOf(next)).toBe(`${solution.tube.name} opposite ${end}`);
        }
      }
    }
  });

  test('within a setting has the shallower cope of a tube first', () => {
    const job = `copeleaf: 1
tubes:
  - { name: brace, od: 25, between: 900, ends: { A: { onto: { od: 42.4 }, angle: 40 }, B: { onto: { od: 42.4 }, angle: 80 } } }
  - { name: rung, od: 25, between: 900, ends: { A: { onto: { od: 42.4 }, angle: 90 }, B: { onto: { od: 42.4 }, angle: 70 } } }
`;
    const [stage] = stagesOf(job);
    expect(stage?.tasks.map(nameOf)).toEqual([
      'rung as-drawn A',
      'brace as-drawn B',
      'rung as-drawn B',
      'brace as-drawn A',
    ]);
  });

  test('cuts square ends before all, and counts them as no header', () => {
    const job = `copeleaf: 1
tubes:
  - { name: post, od: 25, between: 900, ends: { A: { onto: { od: 42.4 }, angle: 90 }, B: plain } }
`;
    expect(stagesOf(job).map(({ setting }) => setting)).toEqual(['plain', 'round 42.4000']);
  });
});

/** Tubes whose end B is marked with end A seated. */
function fittedUp(...headers: readonly (readonly [string, string])[]): string {
  const tubes = headers.map(
    ([a, b], i) =>
      `  - { name: stay ${i}, od: 25, between: mark, ends: { A: { onto: { od: ${a} }, angle: 60 }, B: { onto: { od: ${b} }, angle: 50, clock: mark } } }\n`,
  );
  return `copeleaf: 1\ntubes:\n${tubes.join('')}`;
}

function seatedFirst(stages: readonly Stage[]): boolean {
  const order = stages.flatMap(({ tasks }) => tasks);
  return order.every(({ solution, end }, i) => {
    const other = order.findIndex((task) => task.solution === solution && task.end === 'A');
    return end === 'A' || other < i;
  });
}

describe('an end that is marked with the other seated', () => {
  test('comes after it, with no more changes than headers where these lead round in no circle', () => {
    const stages = stagesOf(fittedUp(['48.3', '38.1'], ['38.1', '42.4'], ['48.3', '42.4'], ['42.4', '42.4']));
    expect(stages.map(({ setting }) => setting)).toEqual(['round 48.3000', 'round 38.1000', 'round 42.4000']);
    expect(seatedFirst(stages)).toBe(true);
  });

  test('takes one change more where they do', () => {
    const stages = stagesOf(fittedUp(['48.3', '38.1'], ['38.1', '48.3']));
    expect(stages.length).toBe(3);
    expect(seatedFirst(stages)).toBe(true);
  });

  test('is not the end that its tube begins with', () => {
    const stages = stagesOf(fittedUp(['60.3', '38.1']));
    expect([...firstEnds(stages).values()]).toEqual(['A']);
  });
});

/** The fewest settings that hold every pair in order, by trying all sequences, the shortest first. */
function fewest(settings: readonly string[], befores: readonly Before[]): number {
  let open: readonly (readonly string[])[] = [[]];
  for (let length = 0; ; length++) {
    const done = open.some(
      (sequence) =>
        settings.every((setting) => sequence.includes(setting)) &&
        befores.every(({ earlier, later }) => sequence.indexOf(earlier) < sequence.lastIndexOf(later)),
    );
    if (done) return length;
    open = open.flatMap((sequence) =>
      settings.filter((setting) => setting !== sequence.at(-1)).map((setting) => [...sequence, setting]),
    );
  }
}

/** Every web of befores between these settings. */
function webs(settings: readonly string[]): readonly (readonly Before[])[] {
  const all = settings.flatMap((earlier) =>
    settings.filter((later) => later !== earlier).map((later) => ({ earlier, later })),
  );
  return Array.from({ length: 2 ** all.length }, (_, web) => all.filter((_, i) => (web >> i) % 2 === 1));
}

function holds(order: readonly string[], befores: readonly Before[]): boolean {
  return befores.every(({ earlier, later }) => order.indexOf(earlier) < order.lastIndexOf(later));
}

describe('settings in a web of befores', () => {
  test('are the fewest there can be, of three settings', () => {
    const settings = ['a', 'b', 'c'];
    for (const befores of webs(settings)) {
      const order = settingsInOrder(settings, befores, () => 0);
      expect(holds(order, befores)).toBe(true);
      expect(order.length, JSON.stringify(befores)).toBe(fewest(settings, befores));
    }
  });

  test(`are at most one more than that, of four (JOINT_SEED=${SEED})`, () => {
    const settings = ['a', 'b', 'c', 'd'];
    const random = randomFrom(SEED + 13);
    const all = webs(settings);
    for (let n = 0; n < 150; n++) {
      const befores = pick(random, all);
      const order = settingsInOrder(settings, befores, () => 0);
      expect(holds(order, befores)).toBe(true);
      expect(order.length, JSON.stringify(befores)).toBeLessThanOrEqual(fewest(settings, befores) + 1);
    }
  });

  test('come once each where they lead round in no circle, the rather first of those that are free', () => {
    const befores = [
      { earlier: 'c', later: 'a' },
      { earlier: 'c', later: 'b' },
    ];
    expect(settingsInOrder(['a', 'b', 'c', 'd'], befores, (a, b) => (a < b ? 1 : -1))).toEqual([
      'd',
      'c',
      'b',
      'a',
    ]);
  });
});
