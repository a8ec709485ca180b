import { describe, expect, it } from 'vitest';
import { contextOf, leavesOf } from '../../src/leaf/leaves-of.ts';
import { baseEdgeOf } from '../../src/leaf/wrap/base-edge.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import { readSample } from '../job/sample.ts';
import { textsOf } from './collisions.ts';

const ROUND = 'onto: { od: 40 }';
const LEANING = `{ ${ROUND}, angle: 50, clock: 35 }`;

function pairOf(a: string, b: string, od = 30) {
  const job = readSample(
    `copeleaf: 1\npair: true\ntube: { name: stay, od: ${od}, wall: 2, between: 400, ends: { A: ${a}, B: ${b} } }\n`,
  );
  return { hands: solveHands(job), context: { ...contextOf(job), ticketed: true } };
}

function printed(a: string, b: string, footprints = false): string[] {
  const { hands, context } = pairOf(a, b);
  return hands.flatMap((hand) =>
    leavesOf(hand, context, footprints).map(({ title, wrap }) => {
      const [whose] = textsOf(wrap).flatMap((text) => /(both hands|as drawn|opposite hand)/.exec(text) ?? []);
      return `${title}: ${whose}`;
    }),
  );
}

describe('a leaf that both hands of a pair have alike', () => {
  it('is printed once, for both, as is its footprint', () => {
    expect(printed(`{ ${ROUND}, angle: 60 }`, LEANING)).toEqual([
      'stay, end A: both hands',
      'stay, end B: as drawn',
      'stay, end B, opposite hand: opposite hand',
    ]);
    expect(printed(`{ ${ROUND}, angle: 60 }`, LEANING, true)).toHaveLength(6);
    // Whose each is stands on it, for a small tube too.
    const { hands, context } = pairOf(`{ ${ROUND}, angle: 60 }`, LEANING, 16);
    const prints = hands.flatMap((hand) => leavesOf(hand, context, true));
    const footprints = prints.filter(({ wrap }) => wrap.of?.place === 'footprint');
    expect(footprints).toHaveLength(3);
    for (const { wrap } of footprints) expect(textsOf(wrap)).toContain('stay');
  });

  it.each([
    ['beside the middle', `{ ${ROUND}, angle: 60, offset: 1 }`],
    ['clocked', `{ ${ROUND}, angle: 60, clock: 1 }`],
    ['on a rolled box', '{ onto: { box: { wide: 60, deep: 60, wall: 3, roll: 3 } }, angle: 60 }'],
  ])('is not one that lies %s', (_, end) => {
    expect(printed(end, LEANING).filter((each) => each.startsWith('stay, end A'))).toEqual([
      'stay, end A: as drawn',
      'stay, end A, opposite hand: opposite hand',
    ]);
  });

  it('has the same lines from the same spine, and the same base edge', () => {
    const { hands } = pairOf(`{ ${ROUND}, angle: 60, clock: 180 }`, LEANING);
    const [drawn, opposite] = hands.map((hand) => {
      const { A } = hand.ends;
      if (A?.kind !== 'coped') throw new Error('a coped end');
      const lines = [0.3, 1.1, 2.9, 4.2, 6].flatMap((station) =>
        [A.cut, A.other].map((at) => at?.(station).setback),
      );
      return [...lines, baseEdgeOf(hand, 'A').setback, baseEdgeOf(hand, 'A').distance];
    });
    expect(drawn?.length).toBe(12);
    for (const [i, mm] of drawn?.entries() ?? []) expect(mm).toBeCloseTo(opposite?.[i] ?? Number.NaN, 6);
  });

  it('is one of each hand where a card tells one hand’s numbers', () => {
    const { hands, context } = pairOf(`{ ${ROUND}, angle: 60 }`, LEANING);
    expect(hands.flatMap((hand) => leavesOf(hand, { ...context, ticketed: false }, false))).toHaveLength(4);
  });
});
