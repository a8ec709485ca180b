import { describe, expect, test } from 'vitest';
import { tableJoint } from './joint-under-test.ts';
import { volumeUnder } from './volume-under.ts';

// J. H. Hubbell, Common volume of two intersecting cylinders, J. Res. Nat. Bur. Standards 69C (1965), no. 2 (formula
// seen): V = R^3 v(k) / sin(theta), k = r/R, v(k) = (8/3) [ (1 + k^2) E(k) - (1 - k^2) K(k) ].

describe("Hubbell's v(k), against his own table", () => {
  test.each([
    [0.1, 0.06275321],
    [0.25, 0.38960667],
    [0.5, 1.52003999],
    [0.75, 3.26414571],
    [0.9, 4.49991288],
    [1, 16 / 3],
  ])('v(%d) is %d', (k, v) => {
    expect(Math.abs(hubbell(k) - v)).toBeLessThanOrEqual(0.5e-8 + 1e-12);
  });
});

describe('the setbacks over the tube’s disc add up to half the common volume', () => {
  test.each([
    { r: 20, R: 30, angle: 60, half: 40_954.98204 },
    { r: 12.7, R: 25.4, angle: 45, half: 17_613.31756 },
    { r: 25, R: 25, angle: 90, half: 41_666.66667 },
  ])('r $r on R $R at $angle', ({ r, R, angle, half }) => {
    const volume = volumeUnder(tableJoint(R, r, angle));
    expect(Math.abs(volume - half)).toBeLessThanOrEqual(1e-5);
    const published = (R ** 3 * hubbell(r / R)) / Math.sin((angle * Math.PI) / 180) / 2;
    expect(Math.abs(volume / published - 1)).toBeLessThan(1e-9);
  });

  test.each([
    [4, 27, 71, 0.1],
    [18, 24, 120, 0.75],
    [27, 30, 35, 0.9],
  ])('any r %d on R %d at %d, whose ratio is not in the table', (r, R, angle) => {
    const published = (R ** 3 * hubbell(r / R)) / Math.sin((angle * Math.PI) / 180) / 2;
    expect(Math.abs(volumeUnder(tableJoint(R, r, angle, 0, 33)) / published - 1)).toBeLessThan(1e-9);
  });

  test('Steinmetz: two equal tubes crossing square have 16/3 R^3 in common', () => {
    expect(Math.abs(2 * volumeUnder(tableJoint(10, 10, 90)) - (16 / 3) * 1000)).toBeLessThan(1e-6);
  });

  test.each([2, 9, 25, 38])(
    'equal radii 20 with offset %d have the volume of radii R - e/2 and R + e/2 with none',
    (e) => {
      // Hubbell, the same paper: the offset identity.
      const offset = volumeUnder(tableJoint(20, 20, 55, e));
      const published =
        ((20 + e / 2) ** 3 * hubbell((20 - e / 2) / (20 + e / 2))) / Math.sin((55 * Math.PI) / 180) / 2;
      expect(Math.abs(offset / published - 1)).toBeLessThan(1e-8);
    },
  );
});

function hubbell(k: number): number {
  if (k === 1) return 16 / 3;
  const { K, E } = completeElliptic(k);
  return (8 / 3) * ((1 + k * k) * E - (1 - k * k) * K);
}

/** K and E by the arithmetic-geometric mean (DLMF 19.8). */
function completeElliptic(k: number): { K: number; E: number } {
  let a = 1;
  let b = Math.sqrt(1 - k * k);
  let c = k;
  let sum = (c * c) / 2;
  for (let n = 0; Math.abs(c) > 1e-17 && n < 20; n++) {
    [a, b, c] = [(a + b) / 2, Math.sqrt(a * b), (a - b) / 2];
    sum += 2 ** n * c * c;
  }
  const K = Math.PI / (2 * a);
  return { K, E: K * (1 - sum) };
}
