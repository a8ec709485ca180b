import { writeFile } from 'node:fs/promises';
import { readFrame } from '../../src/frame/read-frame.ts';
import type { End, Job } from '../../src/job/job.ts';
import { PAPERS } from '../../src/job/paper/paper.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { between, randomFrom, SEED } from '../outside/random-joints.ts';
import { type Bench, median, type Row } from './row.ts';
import { buildCommand, type ProcessRun, runNode } from './whole-process.ts';

const ROUNDS = 3;
const RAILS = 20;
const TUBES = 1000;

/** A thousand tubes of two ends each in a frame, all stays different and all of them the same, against the same tubes as a plain job. */
export const bench: Bench = async () => {
  buildCommand();
  const rows: Row[] = [];
  for (const kind of ['different', 'same'] as const) {
    const frame = frameOf(kind);
    await writeFile(`out/bench/frame-${kind}.yaml`, frame);
    await writeFile(`out/bench/plain-${kind}.yaml`, plainJob(frame));
    for (const command of ['check', 'print'] as const) rows.push(...compared(command, kind));
  }
  return rows;
};

function compared(command: 'check' | 'print', kind: string): readonly Row[] {
  const runs = Array.from({ length: ROUNDS }, () => ({
    framed: run(command, `frame-${kind}`),
    plain: run(command, `plain-${kind}`),
  }));
  const times = median(runs.map(({ framed, plain }) => framed.ms / plain.ms));
  const [framed, plain] = [runs.map((each) => each.framed), runs.map((each) => each.plain)];
  const seconds = (each: readonly ProcessRun[]): string =>
    (median(each.map(({ ms }) => ms)) / 1000).toFixed(1);
  const peak = (each: readonly ProcessRun[]): number => Math.max(...each.map(({ mib }) => mib));
  return [
    {
      what: `${command} of a frame of ${TUBES} tubes, all ${kind}, against a plain job of them`,
      measured: `${times.toFixed(2)} times (${seconds(framed)} s against ${seconds(plain)} s)`,
      bar: '1.5 times',
      holds: times <= 1.5,
    },
    {
      what: 'the most memory that took',
      measured: `${peak(framed).toFixed(0)} MiB (the plain job ${peak(plain).toFixed(0)})`,
      bar: '300 MiB',
      holds: peak(framed) <= 300,
    },
  ];
}

function run(command: 'check' | 'print', name: string): ProcessRun {
  const out = command === 'print' ? ['--out', `out/bench/${name}.pdf`] : [];
  return runNode('dist/copeleaf.js', [command, `out/bench/${name}.yaml`, ...out]);
}

/** Rails side by side, and stays from each to the next: askew and each of its own, or all square across and alike. */
function frameOf(kind: 'different' | 'same'): string {
  const random = randomFrom(SEED);
  const draw = (low: number, high: number): number => (kind === 'same' ? 0 : between(random, low, high));
  const number = (mm: number): string => mm.toFixed(3);
  const rails = Array.from(
    { length: RAILS },
    (_, i) =>
      `    - { name: rail ${i}, along: [[0, ${700 * i}, 0], [9000, ${700 * i}, 0]], od: 48.3, wall: 2.6, ends: { A: plain, B: plain } }`,
  );
  const stays = Array.from({ length: TUBES - RAILS }, (_, i) => {
    const rail = i % (RAILS - 1);
    const x = 100 + 160 * Math.floor(i / (RAILS - 1));
    const [from, to] = [0, 1].map(
      (k) => `[${number(x + draw(0, 60))}, ${700 * (rail + k)}, ${number(draw(-4, 4))}]`,
    );
    const od = kind === 'same' ? 30 : 22 + (i % 9);
    return `    - { name: stay ${i}, along: [${from}, ${to}], od: ${od}, wall: 2, ends: { A: { onto: [rail ${rail}] }, B: { onto: [rail ${rail + 1}] } } }`;
  });
  return ['copeleaf: 1', 'paper: A4', 'frame:', '  tubes:', ...rails, ...stays, ''].join('\n');
}

function plainJob(frame: string): string {
  const [paper] = PAPERS;
  if (!paper) throw new Error('there is no paper');
  const job = readFrame(frame, 'frame.yaml', { words: ENGLISH, paper });
  const tubes = job.tubes.map(({ name, section, wall, between: length, ends }) => {
    if (section.kind !== 'round' || !wall || !length || !('mm' in length))
      throw new Error(`no such tube: ${name}`);
    return `  - { name: ${name}, od: ${section.od.mm}, wall: ${wall.mm}, between: ${length.mm.toFixed(9)}, ends: { A: ${plainEnd(ends.A)}, B: ${plainEnd(ends.B)} } }`;
  });
  return ['copeleaf: 1', 'paper: A4', 'tubes:', ...tubes, ''].join('\n');
}

function plainEnd(end: Job['tubes'][number]['ends']['A'] | End): string {
  if (end?.kind !== 'coped') return 'plain';
  const { onto, angle, clock, offset } = end.parts[0];
  if (onto.kind !== 'round') throw new Error('no such header');
  const degrees = (rad: number): string => ((rad * 180) / Math.PI).toFixed(9);
  return `{ onto: { od: ${onto.od.mm} }, angle: ${degrees(angle.rad)}, clock: ${degrees(clock.rad)}, offset: ${offset.mm.toFixed(9)} }`;
}
