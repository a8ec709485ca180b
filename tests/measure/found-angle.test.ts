import { expect, test } from 'vitest';
import { angleOffSquare, angleOfRise, angleOfTriangle } from '../../src/measure/found-angle.ts';
import { diameterOfGirth } from '../../src/measure/girth.ts';
import { degrees, radians } from '../../src/measure/units.ts';

test.each([
  ['3, 4, 5 is square', 3, 4, 5, 90],
  ['equal sides', 200, 200, 200, 60],
  ['5, 8, 7: 60 degrees between 5 and 8', 5, 8, 7, 60],
  ['3, 5, 7: 120 degrees between 3 and 5', 3, 5, 7, 120],
])('a triangle of known angle, %s', (_, first, second, across, angle) => {
  expect(degrees(angleOfTriangle(first, second, across) ?? Number.NaN)).toBeCloseTo(angle, 12);
});

test('a slim triangle keeps its digits', () => {
  // Two sides of 1 m and a microradian between them: the chord is 2 sin(half the angle).
  const angle = angleOfTriangle(1000, 1000, 2000 * Math.sin(0.5e-6)) ?? Number.NaN;
  expect(angle / 1e-6).toBeCloseTo(1, 9);
});

test.each([
  ['that does not close', 100, 100, 208],
  ['that lies flat', 100, 100, 200],
  ['whose third side is too short', 200, 100, 90],
  ['folded flat', 200, 100, 100],
])('a triangle %s has no angle', (_, first, second, across) => {
  expect(angleOfTriangle(first, second, across)).toBeUndefined();
});

test('a rise as long as its run is 45 degrees, a run to the other side is obtuse', () => {
  expect(degrees(angleOfRise(7, 7))).toBeCloseTo(45, 12);
  expect(degrees(angleOfRise(7, 0))).toBeCloseTo(90, 12);
  expect(degrees(angleOfRise(7, -7))).toBeCloseTo(135, 12);
});

test('off square counts from 90 degrees, with its sign', () => {
  expect(degrees(angleOffSquare(radians(28)))).toBeCloseTo(62, 12);
  expect(degrees(angleOffSquare(radians(-28)))).toBeCloseTo(118, 12);
});

test('a girth of pi times 38.1 is a diameter of 38.1, and of a tape less', () => {
  expect(diameterOfGirth(Math.PI * 38.1, 0)).toBeCloseTo(38.1, 12);
  expect(diameterOfGirth(Math.PI * 38.1, 0.1)).toBeCloseTo(38, 12);
});
