import { describe, expect, test } from 'vitest';
import { rectangularSection } from '../../src/space/sections/rectangular.ts';

// A tube of 60 by 40 mm with corners of 6 mm, walked from the middle of a wide face to the right: half that face 24, a quarter
// of a circle 9.42, a narrow face 28, and so on round: 2 (48 + 28) + 2 pi 6.
const [WIDE, DEEP, CORNER] = [60, 40, 6];
const QUARTER = (Math.PI / 2) * CORNER;
const GIRTH = 2 * (WIDE + DEEP - 4 * CORNER) + 4 * QUARTER;
const tube = rectangularSection({ wide: WIDE, deep: DEEP, corner: CORNER });
const sharp = rectangularSection({ wide: WIDE, deep: DEEP, corner: 0 });

const MIDDLES: readonly (readonly [station: number, x: number, y: number])[] = [
  [0, 20, 0],
  [24 + QUARTER + 14, 0, 30],
  [GIRTH / 2, -20, 0],
  [GIRTH - 24 - QUARTER - 14, 0, -30],
];

describe('the outline of a rectangular tube', () => {
  test('is as long as its faces and its four quarters of a circle, and reaches to its corners', () => {
    expect(tube.girth).toBeCloseTo(GIRTH, 9);
    expect(tube.reach).toBeCloseTo(Math.hypot(24, 14) + 6, 9);
    expect(sharp.girth).toBeCloseTo(200, 9);
    expect(sharp.reach).toBeCloseTo(Math.hypot(30, 20), 9);
  });

  test.each(MIDDLES)('is at the middle of a face at %d, for any number of turns', (station, x, y) => {
    for (const turns of [-2, -1, 0, 1, 3]) {
      const point = tube.at(station + turns * tube.girth);
      expect(point.x).toBeCloseTo(x, 9);
      expect(point.y).toBeCloseTo(y, 9);
    }
    const direction = Math.atan2(y, x);
    expect(Math.cos(tube.directionOf(station) - direction)).toBeCloseTo(1, 12);
    for (const turns of [-1, 0, 2]) {
      // To the bit at the spine, a direction a hair short of it is one at the end of the turn before.
      const found = tube.towards(direction + 2 * Math.PI * turns + 1e-9);
      const around = (found - station) / tube.girth;
      expect(Math.abs(around - Math.round(around))).toBeLessThan(1e-9);
    }
  });

  test('points lie a mm apart for each mm of it, on the outline, with the normal square to the way', () => {
    for (let i = 0; i < 400; i++) {
      const station = ((i + 0.37) * GIRTH) / 400;
      const here = tube.at(station);
      const on = tube.at(station + 1e-5);
      const [dx, dy] = [(on.x - here.x) / 1e-5, (on.y - here.y) / 1e-5];
      expect(Math.hypot(dx, dy)).toBeCloseTo(1, 4);
      expect(dx * here.nx + dy * here.ny).toBeCloseTo(0, 4);
      expect(dy * here.nx - dx * here.ny).toBeCloseTo(1, 4);
      const [across, up] = [Math.max(0, Math.abs(here.y) - 24), Math.max(0, Math.abs(here.x) - 14)];
      expect(Math.hypot(across, up)).toBeCloseTo(6, 9);
    }
  });

  test('bends at its four corners, each a quarter of a circle long or sharp', () => {
    const starts = [24, 24 + QUARTER + 28, 24 + 2 * QUARTER + 76, 24 + 3 * QUARTER + 104];
    expect(tube.corners).toEqual(
      starts.map((from) => ({ from: expect.closeTo(from, 9), to: expect.closeTo(from + QUARTER, 9) })),
    );
    expect(sharp.corners).toEqual(
      [30, 70, 130, 170].map((at) => ({ from: expect.closeTo(at, 9), to: expect.closeTo(at, 9) })),
    );
  });

  test('paper round it goes further only round its corners: a quarter of a larger circle each', () => {
    for (const outside of [0.05, 1]) {
      const more = (Math.PI / 2) * outside;
      expect(tube.wayRound(24, outside)).toBeCloseTo(24, 9);
      expect(tube.wayRound(24 + QUARTER / 2, outside)).toBeCloseTo(24 + QUARTER / 2 + more / 2, 9);
      expect(tube.wayRound(24 + QUARTER + 5, outside)).toBeCloseTo(24 + QUARTER + 5 + more, 9);
      expect(tube.wayRound(GIRTH, outside)).toBeCloseTo(GIRTH + 4 * more, 9);
      expect(tube.wayRound(-5, outside)).toBeCloseTo(-5, 9);
      expect(sharp.wayRound(31, outside)).toBeCloseTo(31 + more, 9);
    }
  });
});
