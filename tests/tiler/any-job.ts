import type { CopedEnd, Preparation, Tube } from '../../src/job/job.ts';
import { mirroredTube } from '../../src/job/opposite.ts';
import { PAPERS, type Paper } from '../../src/job/paper/paper.ts';
import { drawLeaf } from '../../src/leaf/draw-leaf.ts';
import { drawFootprint, landings } from '../../src/leaf/footprint/leaf.ts';
import type { CardedLeaf } from '../../src/leaf/leaf.ts';
import { solveTube, type TubeSolution } from '../../src/saddle/solve.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { randomKind } from '../leaf/random-kinds.ts';
import { angle, length, PAPER, randomAsk, tubeOf } from '../leaf/random-tubes.ts';

/** A job as its sheets are laid: its tubes, their leaves, its paper and its name. */
export interface AnyJob {
  readonly tubes: readonly Tube[];
  readonly leaves: readonly CardedLeaf[];
  readonly paper: Paper;
  readonly name: string;
}

/** All papers by name, two rolls, and the smallest sheet that is taken. */
const ALL_PAPERS: readonly Paper[] = [
  ...PAPERS,
  { name: 'roll 610mm', width: 610, height: 5080, roll: true },
  { name: 'roll 160mm', width: 160, height: 5080, roll: true },
  { name: '130x137mm', width: 130, height: 137 },
];

const TITLES = [
  'kayak trailer',
  'Прицеп для морских каяков, '.repeat(6),
  'カヤック '.repeat(30),
  'x'.repeat(200),
];

/**
 * One to three tubes of any kind, round or rectangular, by numbers or by fit-up, each end onto one header or a union of any kinds,
 * with any preparation; now and then with the footprints too. Sizes in mm.
 */
export function anyJob(roll: () => number): AnyJob {
  const pick = <T>(list: readonly T[], otherwise: T): T =>
    list[Math.floor(roll() * list.length)] ?? otherwise;
  const tubes = Array.from({ length: pick([1, 1, 2, 3], 1) }, () => anyTube(roll));
  const footprints = roll() < 0.25;
  const name = pick(TITLES, 'rung');
  const leaves = tubes.flatMap((tube) => handsOf(tube).flatMap((each) => leavesOf(each, name, footprints)));
  return { tubes, leaves, paper: pick(ALL_PAPERS, { name: 'A4', width: 210, height: 297 }), name };
}

function handsOf(tube: Tube): TubeSolution[] {
  return [solveTube(tube), ...(tube.pair ? [solveTube(mirroredTube(tube), 'opposite')] : [])];
}

function leavesOf(solution: TubeSolution, job: string, footprints: boolean): CardedLeaf[] {
  const context = { words: ENGLISH, job, paperThickness: PAPER };
  return (['A', 'B'] as const).flatMap((end) => {
    const cope = solution.ends[end];
    if (cope?.kind !== 'coped') return [];
    const marked = footprints
      ? landings(cope).map((part) => drawFootprint(solution, end, part, context))
      : [];
    return [drawLeaf(solution, end, context), ...marked];
  });
}

function anyTube(roll: () => number): Tube {
  const kind = roll();
  if (kind < 0.35) return tubeOf(randomAsk(roll));
  if (kind < 0.5) return fittedUp(tubeOf(randomAsk(roll)), roll);
  const tube = randomKind(roll);
  const preparation = anyPreparation(tube, roll);
  const prepared = (end: CopedEnd): CopedEnd => ({ ...end, preparation });
  const { A, B } = tube.ends;
  return {
    ...tube,
    pair: roll() < 0.2,
    ends: {
      ...(A?.kind === 'coped' && { A: prepared(A) }),
      ...(B?.kind === 'coped' && { B: prepared(B) }),
    },
  };
}

function anyPreparation({ wall }: Tube, roll: () => number): Preparation {
  if (!wall) return { edge: 'bevel' };
  const ways: readonly Preparation[] = [
    { edge: 'bevel' },
    { edge: 'bevel', land: length(wall.mm / 2) },
    { edge: 'square', from: 'outside' },
    { edge: 'square', from: 'inside' },
  ];
  return ways[Math.floor(roll() * ways.length)] ?? { edge: 'bevel' };
}

/** The same tube with its second end marked at the frame: its rotation, its length, or both. */
function fittedUp(tube: Tube, roll: () => number): Tube {
  const { A, B } = tube.ends;
  const end = B?.kind === 'coped' ? B : A?.kind === 'coped' ? A : undefined;
  if (!A || !end) return tube;
  const clock = roll() < 0.7;
  const between = !clock || roll() < 0.7;
  const [first, ...others] = end.parts;
  const parts: CopedEnd['parts'] = clock ? [{ ...first, clock: angle(0) }, ...others] : end.parts;
  const { between: known, ...rest } = tube;
  const marked: CopedEnd = { ...end, parts, fitUp: { clock, between } };
  return { ...rest, ...(known && !between && { between: known }), ends: { A, B: marked } };
}
