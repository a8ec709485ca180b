import { describe, expect, test } from 'vitest';
import { reportEnd } from '../../src/fit/end-report.ts';
import type { EndName } from '../../src/job/job.ts';
import { solveTube } from '../../src/saddle/solve.ts';
import {
  JOINT_KINDS,
  type RandomJoint,
  randomFrom,
  randomJoint,
  SEED,
  spell,
} from '../outside/random-joints.ts';
import {
  type Ask,
  askOf,
  BEVEL,
  copedEnd,
  endUnderTest,
  FROM_INSIDE,
  SQUARE,
  tubeWithEnds,
} from './ends-under-test.ts';
import { landed, type Target, targetAt } from './followed-lines.ts';
import { deepestBetween } from './sampled-seat.ts';

const degrees = 180 / Math.PI;
const ENDS: readonly EndName[] = ['A', 'B'];

function targetOf(joint: RandomJoint, end: EndName): Target {
  const { angle, clock, offset } = joint;
  return targetAt({ end, angle, clock, offset }, joint.header, joint.tube);
}

describe(`extremes and stand-off against samples all round, followed on solids (seed ${SEED})`, () => {
  // 1800 stations: between two of them a smooth line hides under its curvature times (0.1 degrees)^2 / 2, 1.5e-6 of it.
  // Where a wall passes by, its line steps, and what lies beside the step is seen to within a station: sqrt(2 R r d).
  const STATIONS = 1800;
  const random = randomFrom(SEED + 6);
  const draws = JOINT_KINDS.map((kind, i) => {
    const joint = randomJoint(random, kind);
    return [kind, ENDS[i % 2] ?? 'A', joint] as const;
  });

  test.each(draws)('%s at %s', (_, end, joint) => {
    const target = targetOf(joint, end);
    const { tube, header, wall } = joint;
    const hides = Math.min(Math.sqrt((2 * tube * header * Math.PI) / STATIONS) / Math.sin(joint.angle), 1e9);
    const slope = ((tube + header) * 2e-6) / Math.sin(joint.angle);
    const passesBy = Math.abs(joint.offset) + tube > header - 1e-3 * header;
    const near = passesBy ? hides : slope;
    const heights = Array.from({ length: STATIONS }, (_, i) => {
      const station = (i * 2 * Math.PI) / STATIONS;
      return landed(target, station, tube).setback;
    });
    const { longPoint, throat } = endUnderTest(askOf(joint), BEVEL).cope;
    // The program may find what samples miss, never the other way round.
    const least = Math.min(...heights);
    const most = Math.max(...heights);
    expect(longPoint.setback, spell(joint)).toBeLessThanOrEqual(least + 1e-8);
    expect(longPoint.setback, spell(joint)).toBeGreaterThanOrEqual(least - near);
    expect(throat.setback, spell(joint)).toBeGreaterThanOrEqual(most - 1e-8);
    expect(throat.setback, spell(joint)).toBeLessThanOrEqual(most + near);
    expect(landed(target, longPoint.station, tube).setback).toBeCloseTo(longPoint.setback, 3);
    expect(landed(target, throat.station, tube).setback).toBeCloseTo(throat.setback, 3);

    for (const [preparation, line] of [
      [SQUARE, tube],
      [FROM_INSIDE, tube - wall],
    ] as const) {
      let held = 0;
      for (let i = 0; i < STATIONS / 5; i++) {
        const station = (i * 10 * Math.PI) / STATIONS;
        const cutTo = landed(target, station, line).setback;
        held = Math.max(held, deepestBetween(target, tube - wall, tube, station) - cutTo);
      }
      const { standOff = Number.NaN } = endUnderTest(askOf(joint), preparation).report;
      expect(standOff, `stand-off of ${spell(joint)}`).toBeGreaterThanOrEqual(held - 1e-6);
      // One station in five of the above.
      const hidden = passesBy ? hides * Math.sqrt(5) : slope * 25;
      expect(standOff, `stand-off of ${spell(joint)}`).toBeLessThanOrEqual(held + hidden);
    }
  });
});

describe('stand-off', () => {
  // At 90 degrees, no offset: sqrt(R^2 - ri^2) - sqrt(R^2 - r^2), at the sides. R 25, r 20, ri 15: 20 - 15.
  const ask: Ask = { od: 40, wall: 5, onto: 50, angle: 90 };

  test('is the most that the square line lies deeper than the outside line', () => {
    expect(endUnderTest(ask, SQUARE).report.standOff).toBeCloseTo(5, 9);
    expect(endUnderTest(ask, BEVEL).report.standOff).toBeCloseTo(5, 9);
  });

  test('from inside, than the inside line: none at 90 degrees, t cot(theta) at the heel of 45 degrees', () => {
    expect(endUnderTest(ask, FROM_INSIDE).report.standOff).toBeCloseTo(0, 9);
    expect(endUnderTest({ ...ask, angle: 45, clock: 77 }, FROM_INSIDE).report.standOff).toBeCloseTo(5, 9);
  });

  // Found by drawing many: beside the graze the inside line falls off to its trim plane, and the wall stands up.
  test('is seen where the tube misses in part and it stands up narrower than a degree', () => {
    const joint: RandomJoint = {
      tube: 43.59174966129719,
      wall: 7.8202577444903625,
      header: 75.40694840624928,
      angle: 1.0651481547284298,
      clock: 0.9969139164147086,
      offset: -76.22512568983883,
    };
    const target = targetOf(joint, 'A');
    const inner = joint.tube - joint.wall;
    let held = 0;
    for (let i = 0; i < 7200; i++) {
      const station = (i * Math.PI) / 3600;
      const inside = landed(target, station, inner);
      if (inside.contact) continue;
      held = Math.max(held, landed(target, station, joint.tube).setback - inside.setback);
    }
    const { standOff } = endUnderTest(askOf(joint), FROM_INSIDE).report;
    expect(standOff).toBeGreaterThanOrEqual(held);
  });

  // At the heel of 45 degrees an edge of the radius r lands at (R + r cos) / sin: 50.36 for the inside, 55.36 for the outside.
  test('the line to cut is the one that was asked for', () => {
    const cutAt = (preparation: typeof SQUARE): number =>
      endUnderTest({ ...ask, angle: 45 }, preparation).cope.cut(0).setback;
    expect(cutAt(FROM_INSIDE)).toBeCloseTo(25 * Math.SQRT2 + 15, 9);
    expect(cutAt(SQUARE)).toBeCloseTo(25 * Math.SQRT2 + 20, 9);
    expect(cutAt(BEVEL)).toBeCloseTo(25 * Math.SQRT2 + 20, 9);
  });

  test('is left out without a wall', () => {
    expect(endUnderTest({ ...ask, wall: 0 }, BEVEL).report).not.toHaveProperty('standOff');
  });
});

// Of a tube of 20 beside the axis of a header of 25 by 15, the wall within 25 of that axis touches: sin(phi) over -1/2.
test.each([90, 50])(
  'how much of the way round touches does not hang on the angle: two thirds, at %d',
  (angle) => {
    const { contact } = endUnderTest(
      { od: 40, wall: 2, onto: 50, angle, clock: 70, offset: 15 },
      BEVEL,
    ).report;
    expect(Math.abs(contact - 2 / 3)).toBeLessThan(1 / 360);
  },
);

describe('the corner between tube and header, least and most', () => {
  // cos psi = cos(theta) cos(phi) sqrt(1 - q^2) - q sin(phi), q = r sin(phi) / R (derived by a second program). On the
  // whole degrees of its tables: 1/2 at 90: 90 to 120, at phi 0 and 90. Least is at the heel: theta itself.
  test.each([
    [0.5, 90, 90, 120],
    [0.5, 60, 60, undefined],
    [0.75, 45, 45, undefined],
    // Equal tubes at 90: the side is level with the header's side, and the edge a knife of 0 degrees.
    [1, 90, 90, 180],
    // Read the other way: the heel is opposite, and the corner the same.
    [0.5, 120, 60, undefined],
  ] as const)('at %d of the header and %d degrees', (share, angle, least, most) => {
    const { dihedrals } = endUnderTest({ od: 60 * share, wall: 2, onto: 60, angle, clock: 40 }, BEVEL).report;
    expect((dihedrals?.least.angle ?? Number.NaN) * degrees).toBeCloseTo(least, 5);
    const highest = most ?? formulaMost(share, angle);
    // At 180 degrees a cosine hides 1e-8 radians of angle in its last digit.
    expect((dihedrals?.most.angle ?? Number.NaN) * degrees).toBeCloseTo(highest, 5);
  });

  function formulaMost(share: number, angle: number): number {
    let most = 0;
    for (let i = 0; i < 36_000; i++) {
      const phi = (i * Math.PI) / 18_000;
      const q = share * Math.sin(phi);
      const cosine = Math.cos(angle / degrees) * Math.cos(phi) * Math.sqrt(1 - q * q) - q * Math.sin(phi);
      most = Math.max(most, Math.acos(cosine) * degrees);
    }
    return most;
  }
});

describe('twist', () => {
  // From A's heel to B's. The heel is at the clock up to 90 degrees, opposite above.
  test.each([
    [60, 0, 60, 35, 35],
    [60, 35, 60, 0, -35],
    [60, 0, 60, 180, 180],
    [60, 180, 60, 0, 180],
    [60, 350, 60, 10, 20],
    [60, 10, 60, 350, -20],
    [60, 0, 120, 35, -145],
    [120, 0, 120, 35, 35],
    [90, 0, 120, 0, 180],
    [60, 0, 60, -190, 170],
    [60, 0, 60, 541, -179],
  ])('A %d at clock %d, B %d at clock %d: %d', (angleA, clockA, angleB, clockB, twist) => {
    const ask = { od: 30, wall: 2, onto: 60 };
    const A = copedEnd({ ...ask, angle: angleA, clock: clockA }, BEVEL);
    const B = copedEnd({ ...ask, angle: angleB, clock: clockB }, BEVEL);
    const solution = solveTube(tubeWithEnds(ask, { A, B }, 500));
    expect((solution.twist ?? Number.NaN) * degrees).toBeCloseTo(twist, 9);
  });

  test('is left out beside a plain end, and of one end alone', () => {
    const ask = { od: 30, wall: 2, onto: 60, angle: 60 };
    const A = copedEnd(ask, BEVEL);
    expect(solveTube(tubeWithEnds(ask, { A, B: { kind: 'plain' } }, 500))).not.toHaveProperty('twist');
    expect(solveTube(tubeWithEnds(ask, { A }))).not.toHaveProperty('twist');
  });
});

describe('lengths', () => {
  const between = 500;

  function lengthsFor(ask: Ask, root = 0) {
    const end = copedEnd(ask, BEVEL, root);
    const { lengths } = solveTube(tubeWithEnds(ask, { A: end, B: end }, between));
    if (!lengths) throw new Error('a tube with two ends has lengths');
    return lengths;
  }

  // At 90 degrees, no offset, the long point is at the sides: sqrt(R^2 - r^2). R 25, r 20: 15.
  test('overall is long point to long point; the blank is the longer of the two and 10 mm', () => {
    const lengths = lengthsFor({ od: 40, wall: 2, onto: 50, angle: 90 });
    expect(lengths.between).toBe(500);
    expect(lengths.overall).toBeCloseTo(470, 9);
    expect(lengths.blank).toBeCloseTo(510, 9);
    expect(lengths.throats).toBeCloseTo(450, 9);
  });

  // The same on a header 2 mm larger: sqrt(27^2 - 20^2) at each end.
  test('with a root gap lengths are taken on the lines to cut', () => {
    const lengths = lengthsFor({ od: 40, wall: 2, onto: 50, angle: 90 }, 2);
    expect(lengths.overall).toBeCloseTo(500 - 2 * Math.sqrt(27 ** 2 - 20 ** 2), 9);
    expect(lengths.blank).toBeCloseTo(510, 9);
  });

  // A wide tube on a thin header at 30 degrees, trimmed at the toe side where it misses: the plane through the header's
  // axis climbs by cot(30) = sqrt(3), and the edge of the hit, |y| = R, still lies at x = -sqrt(r^2 - R^2):
  // setback -sqrt(3) sqrt(40^2 - 20^2) = -60 there. The long point is at or beyond, so centre to centre is too short.
  test('a long point beyond the work point lengthens the blank', () => {
    const ask: Ask = { od: 80, wall: 2, onto: 40, angle: 30 };
    const { overall, blank } = lengthsFor(ask);
    const { longPoint } = endUnderTest(ask, BEVEL).cope;
    expect(longPoint.setback).toBeCloseTo(-60, 3);
    expect(overall).toBeCloseTo(500 + 120, 2);
    expect(blank).toBeCloseTo(overall + 10, 9);
  });

  test('of one end alone, none', () => {
    const ask = { od: 40, wall: 2, onto: 50, angle: 90 };
    expect(solveTube(tubeWithEnds(ask, { A: copedEnd(ask, BEVEL) }))).not.toHaveProperty('lengths');
  });

  test('a report needs no wall', () => {
    const ask = { od: 40, wall: 0, onto: 50, angle: 70 };
    const tube = tubeWithEnds(ask, { A: copedEnd(ask, BEVEL) });
    const end = solveTube(tube).ends.A;
    if (end?.kind !== 'coped') throw new Error('a coped end was asked for');
    expect(reportEnd(tube, end).gap).toEqual({ station: 0, mm: 0 });
  });
});
