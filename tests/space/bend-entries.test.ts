import { describe, expect, test } from 'vitest';
import { type InBend, nearestEntry, type PassingLine } from '../../src/space/bend-entries.ts';
import { between, randomFrom, SEED } from '../outside/random-joints.ts';

// A bent tube as an inequality: nearer than its radius to its centre line, which is half a circle where n is negative and runs
// on straight from both its ends. Lines are walked down in small steps, and where they go in is halved to the last bit.

const RADII = { tubeRadius: 20, bendRadius: 70 };
const REACH = 150;

function toCentreLine({ t, n, b }: InBend): number {
  const arc = n <= 0 ? Math.hypot(Math.hypot(t, n) - RADII.bendRadius, b) : Number.POSITIVE_INFINITY;
  const straight = (side: number): number =>
    n >= 0 ? Math.hypot(t - side * RADII.bendRadius, b) : Number.POSITIVE_INFINITY;
  return Math.min(arc, straight(-1), straight(1));
}

function walked({ start, way }: PassingLine): number | undefined {
  const inside = (at: number): boolean =>
    toCentreLine({ t: start.t + at * way.t, n: start.n + at * way.n, b: start.b + at * way.b }) <=
    RADII.tubeRadius;
  const entries: number[] = [];
  const step = 0.02;
  for (let at = REACH; at - step >= -REACH; at -= step) {
    let [out, into] = [at, at - step];
    if (inside(out) || !inside(into)) continue;
    for (let i = 0; i < 60; i++) {
      const middle = (out + into) / 2;
      if (inside(middle)) into = middle;
      else out = middle;
    }
    entries.push(into);
  }
  return entries.sort((a, b) => Math.abs(a) - Math.abs(b))[0];
}

describe(`where a line goes into a bent tube, nearest to its start (JOINT_SEED=${SEED})`, () => {
  const random = randomFrom(SEED + 91);
  const direction = (): InBend => {
    for (;;) {
      const [t, n, b] = [between(random, -1, 1), between(random, -1, 1), between(random, -1, 1)];
      const size = Math.hypot(t, n, b);
      if (size > 0.2 && size < 1) return { t: t / size, n: n / size, b: b / size };
    }
  };

  test('is where walking down it finds it first inside', () => {
    const counts = { met: 0, missed: 0, onArc: 0, onTangents: 0 };
    for (let i = 0; i < 60; i++) {
      const start = { t: between(random, -90, 90), n: between(random, -90, 60), b: between(random, -20, 20) };
      const line = { start, way: direction() };
      const expected = walked(line);
      const found = nearestEntry(RADII, line, REACH);
      const said = JSON.stringify(line);
      if (expected === undefined) expect(found, said).toBeUndefined();
      else expect(found, said).toBeCloseTo(expected, 6);
      if (expected === undefined) counts.missed++;
      else if (start.n + expected * line.way.n <= 0) counts.onArc++;
      else counts.onTangents++;
    }
    expect(Math.min(counts.missed, counts.onArc, counts.onTangents)).toBeGreaterThan(3);
  });

  test('and where a line lies level with the bend, beside its arc or beside its tangents', () => {
    for (const n of [-60, -10, 0, 25]) {
      for (const b of [0, 12]) {
        for (const t of [-40, 5]) {
          const line = { start: { t, n, b }, way: { t: 1, n: 0, b: 0 } };
          expect(nearestEntry(RADII, line, REACH), JSON.stringify(line)).toBeCloseTo(walked(line) ?? 0, 6);
        }
      }
    }
  });

  test('a line that only touches goes in there: across the top of the arc, and across a tangent', () => {
    const over = { start: { t: 0, n: -70, b: 20 }, way: { t: 0, n: 1, b: 0 } };
    expect(nearestEntry(RADII, { ...over, start: { ...over.start, n: -75 } }, REACH)).toBeCloseTo(5, 4);
    const across = { start: { t: 60, n: 30, b: 20 }, way: { t: 1, n: 0, b: 0 } };
    expect(nearestEntry(RADII, across, REACH)).toBeCloseTo(10, 4);
  });
});
