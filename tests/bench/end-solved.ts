import type { CopedEnd, Tube } from '../../src/job/job.ts';
import { readJob } from '../../src/job/read-job.ts';
import { curveOf, solveEnd } from '../../src/saddle/cope.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { type JointKind, type RandomJoint, randomFrom, randomJoint, SEED } from '../outside/random-joints.ts';
import { type Body, type BRepKernel, headerBody, loadBRepKernel } from '../outside/solids/b-rep-kernel.ts';
import { headerFrame } from '../outside/solids/implicit-solids.ts';
import { type Bench, median, timeEach } from './row.ts';

const BAR = 1000;
const ROUNDS = 60;
/** Ours is timed over this many runs a round, for one is too short for the clock. */
const RUNS = 60;
const KINDS: readonly JointKind[] = ['plain', 'offset', 'wider', 'thick'];

interface Case {
  readonly ask: RandomJoint;
  readonly tube: Tube;
  readonly end: CopedEnd;
}

/**
 * One end solved: outside, inside and square line, their extremes, and all three as curves to 0.002 mm; against the
 * kernel cutting the header off the same tube with its bore. A round times both on one joint; the joints take turns.
 */
export const bench: Bench = async () => {
  const kernel = await loadBRepKernel();
  const random = randomFrom(SEED);
  const cases = Array.from({ length: 12 }, (_, i) =>
    caseOf(randomJoint(random, KINDS[i % KINDS.length] ?? 'plain')),
  );
  for (const one of cases) {
    timeEach(RUNS, () => solve(one));
    timeBoolean(kernel, one.ask);
  }
  const ratios: number[] = [];
  const ours: number[] = [];
  const theirs: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const one = cases[round % cases.length];
    if (!one) continue;
    const solving = timeEach(RUNS, () => solve(one));
    const cutting = timeBoolean(kernel, one.ask);
    ratios.push(cutting / solving);
    ours.push(solving);
    theirs.push(cutting);
  }
  const ratio = median(ratios);
  const least = Math.min(...ratios);
  const us = (median(ours) * 1000).toFixed(0);
  return [
    {
      what: `one end solved against the B-rep kernel's boolean of the same joint, warm, ${ROUNDS} rounds, seed ${SEED}`,
      measured: `${ratio.toFixed(0)} times faster at the median, ${least.toFixed(0)} at least (${us} us against ${median(theirs).toFixed(0)} ms)`,
      bar: `${BAR} times`,
      holds: ratio >= BAR,
    },
  ];
};

/** Gives back something of all that it solved, so that no part is left out as unused. */
function solve({ tube, end, ask }: Case): number {
  const cope = solveEnd(tube, end);
  if (cope.kind !== 'coped' || !cope.inside || !cope.square)
    throw new Error('an end with a wall has three lines');
  const scale = ask.tube + 0.05;
  let pieces = 0;
  for (const line of [cope.outside, cope.inside, cope.square]) {
    pieces += curveOf(cope, line, ask.clock + Math.PI, scale).length;
  }
  return pieces + cope.throat.setback;
}

/** Cutting the header off the tube, which is made beforehand; in ms. */
function timeBoolean(kernel: BRepKernel, ask: RandomJoint): number {
  const reach = 3 * ((ask.header + ask.tube) / Math.sin(ask.angle) + ask.tube);
  const outer = kernel.cylinder([0, 0, -reach], [0, 0, 1], ask.tube, 2 * reach);
  const bore = kernel.cylinder([0, 0, -2 * reach], [0, 0, 1], ask.tube - ask.wall, 4 * reach);
  const tube = kernel.cut(outer, bore);
  const header = headerBody(kernel, headerFrame({ end: 'A', ...ask }), ask.header, 2 * reach);
  let coped: Body | undefined;
  const time = timeEach(1, () => {
    coped = kernel.cut(tube, header);
  });
  for (const body of [outer, bore, tube, header, coped]) body?.free();
  return time;
}

function caseOf(ask: RandomJoint): Case {
  const degrees = (angle: number): number => (angle * 180) / Math.PI;
  const job = readJob(
    [
      'copeleaf: 1',
      'tube:',
      `  od: ${(2 * ask.tube).toFixed(9)}`,
      `  wall: ${ask.wall.toFixed(9)}`,
      '  ends:',
      '    A:',
      `      onto: { od: ${(2 * ask.header).toFixed(9)} }`,
      `      angle: ${degrees(ask.angle).toFixed(9)}`,
      `      clock: ${degrees(ask.clock).toFixed(9)}`,
      `      offset: ${ask.offset.toFixed(9)}`,
      '',
    ].join('\n'),
    'bench.yaml',
    { words: ENGLISH, paper: { name: 'A4', width: 210, height: 297 } },
  );
  const tube = job.tubes[0];
  const end = tube?.ends.A;
  if (!tube || end?.kind !== 'coped') throw new Error('the bench asked for one coped end');
  return { ask, tube, end };
}
