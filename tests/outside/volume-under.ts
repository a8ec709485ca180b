import { wallLine } from '../../src/saddle/lines.ts';
import { jointUnderTest } from './joint-under-test.ts';
import type { RandomJoint } from './random-joints.ts';

/**
 * The integral of the setback over the part of the tube's disc that meets the header. The disc is cut along chords
 * square to the offset, at one distance y from the tube's axis each: x and y take the place of radius and station.
 * The chord's ends and the header's sides are roots in y, which y = middle + half sin(t) takes out.
 */
export function volumeUnder(ask: RandomJoint): number {
  const joint = jointUnderTest(ask);
  const setback = (radius: number, station: number): number =>
    wallLine(joint, ask.tube - radius)(station).setback;
  const low = Math.max(-ask.tube, ask.offset - ask.header);
  const high = Math.min(ask.tube, ask.offset + ask.header);
  const middle = (low + high) / 2;
  const half = (high - low) / 2;
  return integral(-Math.PI / 2, Math.PI / 2, (t) => {
    const y = middle + half * Math.sin(t);
    const reach = Math.sqrt(Math.max(0, ask.tube ** 2 - y * y));
    const chord = integral(-reach, reach, (x) => setback(Math.hypot(x, y), ask.clock + Math.atan2(y, x)), 1);
    return chord * half * Math.cos(t);
  });
}

/** Gauss-Legendre of five points on each of equal parts. */
function integral(from: number, to: number, f: (x: number) => number, parts = 400): number {
  const step = (to - from) / parts;
  let sum = 0;
  for (let part = 0; part < parts; part++) {
    const middle = from + (part + 0.5) * step;
    for (const [node, weight] of GAUSS) {
      sum += weight * f(middle + (node * step) / 2);
    }
  }
  return (sum * step) / 2;
}

const GAUSS: readonly (readonly [node: number, weight: number])[] = [
  [0, 128 / 225],
  ...[1, -1].flatMap((side): [number, number][] => [
    [(side * Math.sqrt(5 - 2 * Math.sqrt(10 / 7))) / 3, (322 + 13 * Math.sqrt(70)) / 900],
    [(side * Math.sqrt(5 + 2 * Math.sqrt(10 / 7))) / 3, (322 - 13 * Math.sqrt(70)) / 900],
  ]),
];
