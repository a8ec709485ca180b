import { expect, test } from 'vitest';
import { readJob } from '../../src/job/read-job.ts';
import { curveOf } from '../../src/saddle/cope.ts';
import type { Line } from '../../src/saddle/line.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { howMany } from '../count.ts';
import { A4 } from '../job/sample.ts';
import type { AskedEnd } from '../outside/asked-end.ts';
import { copeUnderTest } from '../outside/end-under-test.ts';
import { END_KINDS, randomEnd, spellEnd } from '../outside/random-ends.ts';
import { randomFrom, SEED } from '../outside/random-joints.ts';

// The line itself is held to solids in tests/outside. Here: what is told of it and drawn of it leaves nothing out. A union's
// teeth and the kinks at edges are often narrower than a tube's corner.

const ENDS_A_KIND = howMany({ short: 5, deep: 30 });
const LOOKS = 1500;
const CASES = END_KINDS.flatMap((kind) => [
  { kind, tube: 'round' as const },
  { kind, tube: 'rectangular' as const },
]);

test.each(CASES)(
  `$tube tube on $kind: nothing reaches further than the long point or cuts deeper than the throat, JOINT_SEED=${SEED}`,
  ({ kind, tube }) => {
    const random = randomFrom(SEED + 500 + END_KINDS.indexOf(kind) * 2 + (tube === 'round' ? 0 : 1));
    for (let i = 0; i < ENDS_A_KIND; i++) {
      const ask = randomEnd(random, kind, tube);
      const { longPoint, throat, cut, joint } = copeUnderTest(ask);
      for (const setback of looksAt(cut, joint.section.turn)) {
        if (setback > throat.setback + 1e-6 || setback < longPoint.setback - 1e-6) {
          const told = `${longPoint.setback} to ${throat.setback}`;
          expect.fail(`${setback} is not within ${told}: ${spellEnd(ask)}`);
        }
      }
      expect(Math.abs(cut(longPoint.station).setback - longPoint.setback)).toBeLessThan(1e-6);
      expect(Math.abs(cut(throat.station).setback - throat.setback)).toBeLessThan(1e-6);
    }
  },
);

function looksAt(line: Line, turn: number): readonly number[] {
  return Array.from({ length: LOOKS }, (_, i) => line((i * turn) / LOOKS).setback);
}

/** A sharp box stands above the round header over 1.2 mm of the girth, and 1.7 mm high. */
const TOOTH: AskedEnd = {
  tube: { kind: 'rectangular', wide: 48.655191916041076, deep: 31.780351526103914, corner: 0 },
  wall: 8.321430467555533,
  parts: [
    {
      header: { kind: 'box', wide: 119.03170177434833, deep: 35.56262873366381, corner: 0, roll: 0 },
      angle: 0.7808257360155898,
      clock: 4.302484602542035,
      offset: 0,
      shift: -13.919894205577714,
    },
    {
      header: { kind: 'box', wide: 78.43887128265861, deep: 112.81517419742667, corner: 0, roll: 0 },
      angle: 0.5171113581357661,
      clock: 3.4560881490181043,
      offset: -23.463421823213714,
      shift: -12.377581498245434,
    },
    {
      header: { kind: 'round', radius: 72.2581499628349 },
      angle: 2.234222720014089,
      clock: 4.5598539881528595,
      offset: 0,
      shift: -2.1625234755848677,
    },
  ],
};

test('a tooth of a union that is narrower than any look is drawn', () => {
  const cope = copeUnderTest(TOOTH);
  const pieces = curveOf(cope, cope.outside, 0, 1);
  const tooth = pieces.filter(({ stations: [from, , , to] }) => from > 149.4 && to < 150.7);
  expect(tooth.length).toBeGreaterThan(0);
  for (const { stations, setbacks } of tooth) {
    expect(Math.abs(cope.outside(stations[0] + 1e-9).setback - setbacks[0])).toBeLessThan(1e-5);
  }
});

/** The wall's inner edge just leaves the bend, and what it is trimmed to there lies deeper than what is met. */
const BRINK = `copeleaf: 1
units: mm
tube:
  od: 36.29
  wall: 1.8617
  edge: square
  ends:
    B: { onto: { bend: { od: 34.8384, radius: 200.3208, centre: 4.098731rad } }, angle: 60.67, clock: 205.26, offset: 6.1693 }
`;

test('a square line beside a bend is not torn where the wall leaves it', () => {
  const [solution] = solveHands(readJob(BRINK, 'limit.yaml', { words: ENGLISH, paper: A4 }));
  const cope = solution?.ends.B;
  if (cope?.kind !== 'coped') throw new Error('the end was asked to be coped');
  expect(curveOf(cope, cope.cut, 0, 18).length).toBeLessThan(60);
});
