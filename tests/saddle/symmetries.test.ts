import { describe, expect, test } from 'vitest';
import { dihedralAt } from '../../src/saddle/dihedral.ts';
import { landLine } from '../../src/saddle/lines.ts';
import { jointUnderTest, linesUnderTest } from '../outside/joint-under-test.ts';
import {
  between,
  JOINT_KINDS,
  type RandomJoint,
  randomFrom,
  randomJoint,
  SEED,
  spell,
} from '../outside/random-joints.ts';

// That A and B share one formula is not shown here but by the brute force, which builds each end from its own frame.

type Twin = (joint: RandomJoint) => RandomJoint;

const otherWayRound: Twin = (joint) => ({
  ...joint,
  angle: Math.PI - joint.angle,
  clock: joint.clock + Math.PI,
  offset: -joint.offset,
});

const otherHand: Twin = (joint) => ({ ...joint, clock: -joint.clock, offset: -joint.offset });

describe(`a joint and its twin have the same lines (JOINT_SEED=${SEED})`, () => {
  test('an angle and 180 less it, with the clock half a turn on and the offset reversed, are the same joint', () => {
    eachJoint((joint, station) => {
      expectSame(joint, station, otherWayRound(joint), station);
    });
  });

  test('the opposite hand has its clock and offset reversed, and its stations', () => {
    eachJoint((joint, station) => {
      expectSame(joint, station, otherHand(joint), -station);
    });
  });

  test('turning the header round the tube turns the lines with it', () => {
    eachJoint((joint, station, random) => {
      const turn = between(random, -10, 10);
      expectSame(joint, station, { ...joint, clock: joint.clock + turn }, station + turn);
    });
  });

  test('a joint twice the size has setbacks twice as long', () => {
    eachJoint((joint, station) => {
      const { tube, wall, header, offset } = joint;
      const large = { ...joint, tube: 2 * tube, wall: 2 * wall, header: 2 * header, offset: 2 * offset };
      expectSame(joint, station, large, station, 2);
    });
  });
});

function eachJoint(check: (joint: RandomJoint, station: number, random: () => number) => void): void {
  const random = randomFrom(SEED);
  for (let i = 0; i < 100 * JOINT_KINDS.length; i++) {
    const joint = randomJoint(random, JOINT_KINDS[i % JOINT_KINDS.length] ?? 'plain');
    for (let s = 0; s < 5; s++) check(joint, between(random, 0, 2 * Math.PI), random);
  }
}

/** What rounding alone moves the wall sideways by, relative to the sizes at hand. */
const ROUNDING = 2e-13;

function expectSame(a: RandomJoint, atA: number, b: RandomJoint, atB: number, times = 1): void {
  const linesA = { ...linesUnderTest(a), land: landLine(jointUnderTest(a), a.wall / 2) };
  const linesB = { ...linesUnderTest(b), land: landLine(jointUnderTest(b), b.wall / 2) };
  for (const name of ['outside', 'inside', 'square', 'land'] as const) {
    const [left, right] = [linesA[name](atA), linesB[name](atB)];
    const apart = Math.abs(left.setback * times - right.setback);
    // Beside a header the setback runs off as a square root, so rounding counts for its root there.
    const size = a.tube + a.header;
    const moved = size * ROUNDING * (1 + Math.abs(left.slope) / size);
    if (!(apart <= times * Math.min(Math.sqrt(size * size * ROUNDING), 20 * moved))) {
      expect.fail(
        `${name} ${left.setback} and ${right.setback}, ${apart} apart: station ${atA}, ${spell(a)}`,
      );
    }
  }
  const angles = [dihedralAt(jointUnderTest(a), atA), dihedralAt(jointUnderTest(b), atB)] as const;
  expect(Math.abs(angles[0] - angles[1])).toBeLessThan(1e-5);
}
