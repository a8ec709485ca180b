import { describe, expect, test } from 'vitest';
import { dihedralAt } from '../../src/saddle/dihedral.ts';
import { jointUnderTest, linesUnderTest, tableJoint } from './joint-under-test.ts';

const DEGREE = Math.PI / 180;

describe('setbacks at stations from the heel, 22.5 degrees apart', () => {
  // Derived by brute force on implicit solids, by a second program; printed to 1e-4 mm.
  test.each([
    {
      name: '25/25/90',
      R: 25,
      r: 25,
      angle: 90,
      setbacks: [25, 23.097, 17.6777, 9.5671, 0, 9.5671, 17.6777, 23.097, 25],
    },
    {
      name: '30/20/90',
      R: 30,
      r: 20,
      angle: 90,
      setbacks: [30, 29.0073, 26.4575, 23.6343, 22.3607, 23.6343, 26.4575, 29.0073, 30],
    },
    {
      name: '30/20/60',
      R: 30,
      r: 20,
      angle: 60,
      setbacks: [46.188, 44.1627, 38.7155, 31.7094, 25.8199, 22.8717, 22.3855, 22.8267, 23.094],
    },
    {
      name: '25.4/19.05/45',
      R: 25.4,
      r: 19.05,
      angle: 45,
      setbacks: [54.971, 52.0096, 43.9239, 33.1901, 23.7595, 18.6098, 16.9831, 16.8098, 16.871],
    },
  ])('R/r/angle $name', ({ R, r, angle, setbacks }) => {
    const { outside } = linesUnderTest(tableJoint(R, r, angle));
    setbacks.forEach((setback, i) => {
      expect(
        Math.abs(outside(i * 22.5 * DEGREE).setback - setback),
        `station ${i * 22.5}`,
      ).toBeLessThanOrEqual(1e-4);
    });
  });
});

describe('shop examples', () => {
  test('NPS 8 schedule 40 set on NPS 12 at 90 degrees, laid out from the inside of the branch', () => {
    // A trade worked example (secondary source, its title not kept; tolerance 0.02 mm): R 161.9, r 101.37; depth from the long point at
    // 22.5, 45, 67.5 and 90 degrees from the heel's plane.
    const { outside } = linesUnderTest(tableJoint(161.9, 101.37, 90));
    const depths = [22.5, 45, 67.5, 90].map((phi) => outside(0).setback - outside(phi * DEGREE).setback);
    [4.716, 16.732, 29.837, 35.663].forEach((depth, i) => {
      expect(Math.abs((depths[i] ?? Number.NaN) - depth)).toBeLessThanOrEqual(0.02);
    });
  });

  test('equal tubes at 90 degrees, seen from the side, meet in two straight lines at 45 degrees', () => {
    // NAVEDTRA 14251, welded tee (seen): the side view shows the tube's x and the setback.
    const { outside } = linesUnderTest(tableJoint(30, 30, 90));
    for (let phi = 0; phi < 360; phi += 5) {
      const acrossTheView = 30 * Math.cos(phi * DEGREE);
      expect(Math.abs(outside(phi * DEGREE).setback - Math.abs(acrossTheView))).toBeLessThan(1e-9);
    }
  });
});

describe('the dihedral from heel to toe, at 0, 45, 90, 135 and 180 degrees', () => {
  // Derived by a second program from the two surfaces' normals; no published formula was found. Printed to 0.01.
  test.each([
    { beta: 0.5, angle: 90, dihedrals: [90, 104.48, 120, 104.48, 90] },
    { beta: 0.5, angle: 60, dihedrals: [60, 85.37, 120, 125.5, 120] },
    { beta: 0.75, angle: 45, dihedrals: [45, 87.2, 138.59, 143.02, 135] },
  ])('r/R $beta at $angle', ({ beta, angle, dihedrals }) => {
    const joint = jointUnderTest(tableJoint(40, 40 * beta, angle, 0, 70));
    dihedrals.forEach((dihedral, i) => {
      const ours = dihedralAt(joint, (70 + 45 * i) * DEGREE) / DEGREE;
      expect(Math.abs(ours - dihedral), `station ${45 * i}`).toBeLessThanOrEqual(0.005 + 1e-9);
    });
  });

  test('with an offset it is what the two surfaces make at the point', () => {
    // cos psi = cos(theta) cos(phi) sqrt(1 - q^2) - q sin(phi), q = (r sin(phi) - e)/R (derived, same program).
    const [R, r, angle, e] = [33, 21, 52, 9];
    const joint = jointUnderTest(tableJoint(R, r, angle, e));
    for (let phi = 0; phi < 360; phi += 7) {
      const q = (r * Math.sin(phi * DEGREE) - e) / R;
      const cosine =
        Math.cos(angle * DEGREE) * Math.cos(phi * DEGREE) * Math.sqrt(1 - q * q) - q * Math.sin(phi * DEGREE);
      expect(Math.abs(dihedralAt(joint, phi * DEGREE) - Math.acos(cosine))).toBeLessThan(1e-9);
    }
  });
});
