import { beforeAll, describe, expect, test } from 'vitest';
import type { Point, Stroke } from '../../src/draw/drawing.ts';
import { inkPdf } from '../../src/ink/pdf.ts';
import { A4, drawing, INFO, LETTER, line, sheet } from './drawn.ts';
import { inksFrom, middleOfInk, type Raster, rasterOf } from './raster.ts';

const DPI = 1200;
const PIXEL = 25.4 / DPI;
const FOUR_INCHES = 101.6;

/** Two ticks, square to the axis, so far apart; the foot of the first at (x, y). */
function ticks(axis: 'across' | 'up', x: number, y: number, apart: number): Stroke[] {
  return [0, apart].map((step) =>
    axis === 'across'
      ? line('bar', { x: x + step, y }, { x: x + step, y: y + 6 })
      : line('bar', { x, y: y + step }, { x: x + 6, y: y + step }),
  );
}

/** Steep everywhere, so that a level line crosses it almost squarely. */
const CURVE: readonly [Point, Point, Point, Point] = [
  { x: 150, y: 150 },
  { x: 175, y: 185 },
  { x: 135, y: 215 },
  { x: 162, y: 250 },
];

/** Bernstein's form of the cubic. */
function onCurve(t: number): Point {
  const weights = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3];
  const sum = (pick: (point: Point) => number) =>
    CURVE.reduce((total, point, index) => total + (weights[index] ?? 0) * pick(point), 0);
  return { x: sum((point) => point.x), y: sum((point) => point.y) };
}

/** The curve's height grows with t throughout, so halving finds the point at a height. */
function curveAtHeight(y: number): Point {
  let low = 0;
  let high = 1;
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (onCurve(middle).y < y) low = middle;
    else high = middle;
  }
  return onCurve(low);
}

const [start, c1, c2, to] = CURVE;
const TEST_SHEET = sheet(
  drawing(
    'scale',
    ...ticks('across', 20, 20, 100),
    ...ticks('across', 20, 40, FOUR_INCHES),
    ...ticks('up', 20, 60, 100),
    ...ticks('up', 40, 60, FOUR_INCHES),
    {
      kind: 'stroke',
      purpose: 'cut',
      path: { start, pieces: [{ kind: 'cubic', c1, c2, to }], closed: false },
    },
    line('cut', { x: 190, y: 60 }, { x: 190, y: 100 }),
    line('other-edge', { x: 60, y: 200 }, { x: 120, y: 200 }),
  ),
);

describe.each([
  ['A4', A4],
  ['letter', LETTER],
])('rastered by another program at 1200 dpi, on %s', (_, paper) => {
  let raster: Raster;
  beforeAll(async () => {
    raster = await rasterOf(await inkPdf({ ...paper, sheets: [TEST_SHEET] }, INFO), 0, DPI);
  });

  test.each([
    ['across', 100, 20, 23],
    ['across', FOUR_INCHES, 20, 43],
    ['up', 100, 60, 23],
    ['up', FOUR_INCHES, 60, 43],
  ] as const)(
    'a bar %s of %d mm is exact to one pixel, and stands where it should',
    (axis, length, first, beside) => {
      const start = middleOfInk(raster, axis, beside, first - 2, first + 2);
      const end = middleOfInk(raster, axis, beside, first + length - 2, first + length + 2);
      expect(Math.abs(end - start - length)).toBeLessThan(PIXEL);
      expect(Math.abs(start - first)).toBeLessThan(PIXEL);
    },
  );

  test("a curve's middle lies within one pixel of the cubic it was drawn from", () => {
    for (let y = 152; y < 249; y += 0.5) {
      const row = raster.height - 1 - Math.floor(y * raster.up);
      const rowCentre = (raster.height - row - 0.5) / raster.up;
      const exact = curveAtHeight(rowCentre);
      const drawn = middleOfInk(raster, 'across', y, exact.x - 1, exact.x + 1);
      expect(Math.abs(drawn - exact.x)).toBeLessThan(PIXEL);
    }
  });

  test('the line to cut is 0.35 wide, black to the core, and ends at its end points', () => {
    const across = inksFrom(raster, 'across', 80, 185, 195);
    const up = inksFrom(raster, 'up', 190, 55, 105);
    expect(Math.max(...across)).toBe(1);
    expect(Math.abs(across.reduce((sum, ink) => sum + ink, 0) * PIXEL - 0.35)).toBeLessThan(PIXEL);
    expect(Math.abs(up.reduce((sum, ink) => sum + ink, 0) * PIXEL - 40)).toBeLessThan(PIXEL);
  });

  test("the other edge's line is dashed, 3 on and 1.5 off", () => {
    const ink = (x: number) => inksFrom(raster, 'across', 200, x, x)[0];
    for (let period = 0; period < 13; period++) {
      expect(ink(60 + period * 4.5 + 1.5)).toBe(1);
      expect(ink(60 + period * 4.5 + 3.75)).toBe(0);
    }
  });
});
