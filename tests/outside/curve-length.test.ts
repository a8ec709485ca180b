import { describe, expect, test } from 'vitest';
import { linesUnderTest, tableJoint } from './joint-under-test.ts';
import type { RandomJoint } from './random-joints.ts';
import { dot, headerFrame, less, type Point } from './solids/implicit-solids.ts';

describe('the pattern’s curve is as long as the hole’s curve on the header', () => {
  // "The girth around the hole should be the same as the length of curve on pattern": a rule of the old sheet-metal
  // pattern books (their text seen). The lengths were derived by a second program; printed to 1e-5 mm.
  test.each([
    { R: 30, r: 20, angle: 90, e: 0, length: 130.12891 },
    { R: 30, r: 20, angle: 60, e: 0, length: 140.33302 },
    { R: 30, r: 20, angle: 60, e: 8, length: 147.90843 },
    { R: 25.4, r: 19.05, angle: 45, e: 0, length: 152.36078 },
  ])('R $R r $r angle $angle offset $e: $length', ({ R, r, angle, e, length }) => {
    const ask = tableJoint(R, r, angle, e);
    expect(Math.abs(lengthOf(onPattern(ask)) - length)).toBeLessThanOrEqual(1e-5);
    expect(Math.abs(lengthOf(onHeaderUnrolled(ask)) - length)).toBeLessThanOrEqual(1e-5);
  });
});

describe('the line over the tube’s girth is the intersection length factor Ka', () => {
  // Exact values derived by a second program, printed to 1e-4. In brackets, for comparison only and not an oracle, the
  // approximation Ka = x + y + 3 sqrt(x^2 + y^2) of the AWS D1.1 tubular provisions (from memory).
  test.each([
    { angle: 90, beta: 0.25, exact: 1.004, bracket: 0.9989 },
    { angle: 90, beta: 0.5, exact: 1.0177, bracket: 1.0174 },
    { angle: 90, beta: 0.75, exact: 1.0491, bracket: 1.0597 },
    { angle: 90, beta: 1, exact: 1.216, bracket: 1.1671 },
    { angle: 60, beta: 0.25, exact: 1.083, bracket: 1.0774 },
    { angle: 60, beta: 0.5, exact: 1.0977, bracket: 1.0949 },
    { angle: 60, beta: 0.75, exact: 1.1313, bracket: 1.1352 },
    { angle: 60, beta: 1, exact: 1.3104, bracket: 1.2382 },
    { angle: 45, beta: 0.25, exact: 1.2206, bracket: 1.2159 },
    { angle: 45, beta: 0.5, exact: 1.2364, bracket: 1.2321 },
    { angle: 45, beta: 0.75, exact: 1.2729, bracket: 1.2694 },
    { angle: 45, beta: 1, exact: 1.4697, bracket: 1.3653 },
    { angle: 30, beta: 0.25, exact: 1.547, bracket: 1.5491 },
    { angle: 30, beta: 0.5, exact: 1.5641, bracket: 1.563 },
    { angle: 30, beta: 0.75, exact: 1.6045, bracket: 1.5951 },
    { angle: 30, beta: 1, exact: 1.8327, bracket: 1.6782 },
  ])('at $angle, r/R $beta: $exact ($bracket)', ({ angle, beta, exact }) => {
    const ask = tableJoint(50, 50 * beta, angle);
    const factor = lengthOf(onPattern(ask)) / (2 * Math.PI * ask.tube);
    expect(Math.abs(factor - exact)).toBeLessThanOrEqual(0.5e-4 + 1e-9);
  });
});

type FlatCurve = (station: number) => readonly [number, number];

/** The outside line on the tube's outside, unrolled: girth across, setback up. */
function onPattern(ask: RandomJoint): FlatCurve {
  const { outside } = linesUnderTest(ask);
  return (station) => [ask.tube * station, outside(station).setback];
}

/** The same points on the header's outside, unrolled: girth round the header across, along its axis up. */
function onHeaderUnrolled(ask: RandomJoint): FlatCurve {
  const { outside } = linesUnderTest(ask);
  const frame = headerFrame({ end: 'A', ...ask });
  return (station) => {
    const { setback } = outside(station);
    const point: Point = [ask.tube * Math.cos(station), ask.tube * Math.sin(station), setback];
    const from = less(point, frame.origin);
    const round = Math.atan2(dot(from, frame.aside), dot(from, frame.up));
    return [ask.header * round, dot(from, frame.along)];
  };
}

/** By chords of n and 2n parts, the rest taken off (Richardson); kinks of equal tubes fall on the stations. */
function lengthOf(curve: FlatCurve): number {
  const coarse = chords(curve, CHORDS);
  const fine = chords(curve, 2 * CHORDS);
  return fine + (fine - coarse) / 3;
}

const CHORDS = 7_200;

function chords(curve: FlatCurve, parts: number): number {
  let length = 0;
  let before = curve(0);
  for (let i = 1; i <= parts; i++) {
    const here = curve((i * 2 * Math.PI) / parts);
    length += Math.hypot(here[0] - before[0], here[1] - before[1]);
    before = here;
  }
  return length;
}
