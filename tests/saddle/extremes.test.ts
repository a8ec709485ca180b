import { describe, expect, test } from 'vitest';
import { extremesOf } from '../../src/saddle/extremes.ts';
import type { Line } from '../../src/saddle/line.ts';
import { landLine } from '../../src/saddle/lines.ts';
import { howMany } from '../count.ts';
import { jointUnderTest, linesUnderTest, tableJoint } from '../outside/joint-under-test.ts';
import {
  between,
  JOINT_KINDS,
  type JointKind,
  type RandomJoint,
  randomFrom,
  randomJoint,
  SEED,
  spell,
} from '../outside/random-joints.ts';

const TURN = 2 * Math.PI;
const DEGREE = Math.PI / 180;
const AGREE = 1e-8;
const JOINTS_A_KIND = howMany({ short: 5, deep: 25 });

describe(`long point and throat (JOINT_SEED=${SEED})`, () => {
  test.each(JOINT_KINDS)('are the least and the greatest of a dense sampling, closed in on: %s', (kind) => {
    const random = randomFrom(SEED);
    for (let i = 0; i < JOINTS_A_KIND; i++) {
      const ask = randomJoint(random, kind);
      const land = ask.wall * between(random, 0.1, 1);
      const lines: [string, Line][] = Object.entries(linesUnderTest(ask));
      for (const [name, line] of [...lines, ['land', landLine(jointUnderTest(ask), land)] as const]) {
        const { longPoint, throat } = extremesOf(
          line,
          TURN,
          ask.clock,
          [],
          name === 'land' ? 1440 : undefined,
        );
        const what = `${name} ${land}, ${spell(ask)}`;
        const depth = (station: number): number => line(station).setback;
        const deepest = greatest(depth);
        const farthest = -greatest((station) => -depth(station));
        const near = toleranceOf(kind, ask);
        expect(Math.abs(throat.setback - deepest), what).toBeLessThanOrEqual(near);
        expect(Math.abs(longPoint.setback - farthest), what).toBeLessThanOrEqual(near);
        for (const { station, setback } of [longPoint, throat]) {
          expect(Math.abs(depth(station) - setback), what).toBeLessThanOrEqual(near);
          expect(station >= 0 && station < TURN, what).toBe(true);
        }
      }
    }
  });

  // By symmetry of the joint, not by our program: a joint at 90 degrees without offset repeats after half a turn, and
  // one without offset is its own mirror image about the clock.
  test.each([
    { clock: 0, longPoint: 90, throat: 0 },
    { clock: 30, longPoint: 120, throat: 30 },
    { clock: 100, longPoint: 10, throat: 100 },
    { clock: 180, longPoint: 90, throat: 0 },
    { clock: 200, longPoint: 110, throat: 20 },
    { clock: 270, longPoint: 0, throat: 90 },
    { clock: 359, longPoint: 89, throat: 179 },
  ])(
    'of two alike the one with the least station is told: 90 degrees at clock $clock',
    ({ clock, ...expected }) => {
      for (const header of [20, 20 + 1e-7, 30]) {
        const { outside } = linesUnderTest(tableJoint(header, 20, 90, 0, clock));
        const { longPoint, throat } = extremesOf(outside, TURN, clock * DEGREE);
        expect(longPoint.station / DEGREE).toBeCloseTo(expected.longPoint, 4);
        expect(throat.station / DEGREE).toBeCloseTo(expected.throat, 4);
      }
    },
  );

  test('a long point on each side of the heel is told at the lesser station', () => {
    // 30/20/60 has its least setbacks beside 135 degrees from the heel, alike on both sides.
    for (const clock of [0, 77, 140, 250]) {
      const { outside } = linesUnderTest(tableJoint(30, 20, 60, 0, clock));
      const { longPoint } = extremesOf(outside, TURN, clock * DEGREE);
      const other = (2 * clock * DEGREE - longPoint.station + 2 * TURN) % TURN;
      expect(Math.abs(outside(other).setback - longPoint.setback)).toBeLessThan(1e-9);
      expect(longPoint.station).toBeLessThan(other);
    }
  });
});

/**
 * Where a wall passes the header's side the setback is the root of a difference, of which rounding leaves some parts
 * in 1e15: an extreme that lies just there can be told no nearer. A `plain` joint keeps clear of it.
 */
function toleranceOf(kind: JointKind, { header, tube, angle }: RandomJoint): number {
  const lost = 16 * Number.EPSILON * header * Math.max(header, tube);
  return kind === 'plain' ? AGREE : Math.sqrt(lost) / Math.sin(angle);
}

const SAMPLES = 4_000;

/** The greatest of many samples, each high place among them closed in on by thirds. */
function greatest(height: (station: number) => number): number {
  const step = TURN / SAMPLES;
  const ring = Array.from({ length: SAMPLES }, (_, i) => height(i * step));
  const most = Math.max(...ring);
  let best = most;
  ring.forEach((here, i) => {
    const before = ring[(i + SAMPLES - 1) % SAMPLES] ?? here;
    const after = ring[(i + 1) % SAMPLES] ?? here;
    if (here < before || here < after) return;
    let [low, high] = [(i - 1) * step, (i + 1) * step];
    for (let round = 0; round < 80; round++) {
      const left = low + (high - low) / 3;
      const right = high - (high - low) / 3;
      if (height(left) < height(right)) low = left;
      else high = right;
    }
    best = Math.max(best, height((low + high) / 2));
  });
  return best;
}
