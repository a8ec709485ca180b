import { describe, expect, test } from 'vitest';
import type { Cope } from '../../src/saddle/cope.ts';
import { dihedralAt } from '../../src/saddle/dihedral.ts';
import { copeOf } from './asked-as-job.ts';
import type { AskedPart, Onto } from './asked-in-degrees.ts';

const DEGREE = Math.PI / 180;
const INCH = 25.4;

/** The cope of a round tube on one header. Lengths in mm, angles in degrees. */
function roundTubeOn(od: number, onto: Onto, rest: Partial<AskedPart> = {}): Cope {
  const part: AskedPart = { onto, angle: 90, clock: 0, offset: 0, shift: 0, ...rest };
  return copeOf({ tube: { od }, wall: 1, end: 'A', parts: [part] });
}

function setbackAt(cope: Cope, degrees: number): number {
  return cope.outside(degrees * DEGREE).setback;
}

describe('a plate: the line unrolls to a sine (Apostol, Mnatsakanian, Amer. Math. Monthly 114, 2007)', () => {
  test.each([22.5, 30, 45])('tilted by %d degrees, with the tilt as its height', (tilt) => {
    const plate = roundTubeOn(50, { kind: 'plate' }, { angle: 90 - tilt });
    for (let phi = 0; phi < 360; phi += 7.5) {
      const sine = 25 * Math.tan(tilt * DEGREE) * Math.cos(phi * DEGREE);
      expect(setbackAt(plate, phi)).toBeCloseTo(sine, 10);
    }
  });

  // Printed to 1e-9 of a radius: half a last digit, and what 4096 chords leave of the arc.
  test.each([
    { tilt: 22.5, length: 6.54458864 },
    { tilt: 30, length: 6.777917613 },
    { tilt: 45, length: 7.640395578 },
  ])('tilted by $tilt degrees it is as long as the ellipse, 4 a E(sin alpha) (DLMF 19.30)', (row) => {
    const plate = roundTubeOn(50, { kind: 'plate' }, { angle: 90 - row.tilt });
    expect(Math.abs(lengthOf(plate) / 25 - row.length)).toBeLessThan(0.6e-9);
  });
});

/** The line's length unrolled, by chords of n and of 2n steps, extrapolated. */
function lengthOf(cope: Cope): number {
  const chords = (count: number): number => {
    const step = (2 * Math.PI) / count;
    let sum = 0;
    for (let i = 0; i < count; i++) {
      const rise = cope.outside((i + 1) * step).setback - cope.outside(i * step).setback;
      sum += Math.hypot(25 * step, rise);
    }
    return sum;
  };
  return (4 * chords(4096) - chords(2048)) / 3;
}

describe('mitres and elbows', () => {
  // NAVEDTRA 14119, Hull Technician, text at fig. 12-42: N pieces that turn T are cut at T / (2N - 2).
  test('five pieces that turn 90 are cut at 11.25 degrees', () => {
    const { end } = roundTubeOn(60, { kind: 'mitre', turn: 90, elbow: { pieces: 5, radius: 200 } });
    expect(90 - end.parts[0].angle.rad / DEGREE).toBeCloseTo(11.25, 12);
  });

  // Longfield, Sheet Metal Drafting (1921), problem 13: the mitre lines of five pieces that turn 90.
  test('each mitre plane of five pieces, turned into the bend, lies on Longfield’s line', () => {
    const cut = roundTubeOn(60, { kind: 'mitre', turn: 90, elbow: { pieces: 5, radius: 200 } });
    const tilt = Math.atan((setbackAt(cut, 0) - setbackAt(cut, 180)) / 60) / DEGREE;
    const lines = [0, 1, 2, 3].map((piece) => tilt + piece * 2 * tilt);
    for (const [i, line] of [11.25, 33.75, 56.25, 78.75].entries()) {
      expect(lines[i]).toBeCloseTo(line, 10);
    }
  });

  // Rose, Layout Procedures for Metals (Open Oregon, 2019, CC BY 4.0), chapter 3: 4 in pipe in two pieces at 90, 16
  // element lines; derived from its construction to 1e-4 in, so half a last digit. Ordinates are from the long point.
  test('Rose’s sixteen ordinates of a 4 in pipe that turns 90 in two pieces', () => {
    const half = [0, 0.1713, 0.659, 1.389, 2.25, 3.111, 3.841, 4.3287, 4.5];
    const cut = roundTubeOn(4.5 * INCH, { kind: 'mitre', turn: 90 });
    const longest = setbackAt(cut, 180);
    for (let line = 0; line < 16; line++) {
      const ordinate = (setbackAt(cut, 180 + line * 22.5) - longest) / INCH;
      expect(Math.abs(ordinate - (half[Math.min(line, 16 - line)] ?? NaN))).toBeLessThanOrEqual(0.5e-4);
    }
  });

  test('the clock of a mitre is the station of the corner’s inside: the cut is deepest there', () => {
    const cut = roundTubeOn(60, { kind: 'mitre', turn: 70 }, { clock: 123 });
    expect(setbackAt(cut, 123)).toBeCloseTo(30 * Math.tan(35 * DEGREE), 10);
    expect(setbackAt(cut, 303)).toBeCloseTo(-30 * Math.tan(35 * DEGREE), 10);
  });
});

describe('a bend', () => {
  // A tube at right angles to the bend's plane, through its centre line; phi 0 away from the bend's centre. Derived.
  test('met square to its plane: the torus formula and its numbers', () => {
    const [header, tube, radius] = [25.4, 19.05, 152.4];
    const onto: Onto = { kind: 'bend', od: 2 * header, radius, centre: 90 };
    const cope = roundTubeOn(2 * tube, onto);
    const table = [16.8005, 21.1825, 25.3723, 21.928, 16.8005];
    for (const [i, phi] of [0, 45, 90, 135, 180].entries()) {
      // The centre lies towards w, at station 90 here: phi is counted from station 270.
      const ours = setbackAt(cope, 270 + phi);
      const [x, y] = [tube * Math.cos(phi * DEGREE), tube * Math.sin(phi * DEGREE)];
      const formula = Math.sqrt(header ** 2 - (Math.hypot(radius + x, y) - radius) ** 2);
      expect(ours).toBeCloseTo(formula, 9);
      expect(Math.abs(ours - (table[i] ?? NaN))).toBeLessThanOrEqual(0.5e-4);
    }
  });

  test('whose radius grows becomes the straight header, ten times the radius ten times as near', () => {
    const rest = { angle: 62, clock: 20, offset: 4 };
    const straight = roundTubeOn(40, { kind: 'round', od: 60 }, rest);
    for (const centre of [0, 37, 90, 180, -120]) {
      const apart = [1e3, 1e4, 1e5].map((radius) => {
        const bend = roundTubeOn(40, { kind: 'bend', od: 60, radius, centre }, rest);
        const stations = Array.from({ length: 24 }, (_, i) => 5 + i * 15);
        return Math.max(...stations.map((phi) => Math.abs(setbackAt(bend, phi) - setbackAt(straight, phi))));
      });
      const [coarse = 0, middle = 0, fine = 0] = apart;
      expect(coarse).toBeGreaterThan(0.05);
      // The next term of the series is a hundredth of the first at a radius of 1 m.
      for (const ratio of [coarse / middle, middle / fine]) {
        expect(ratio).toBeGreaterThan(9);
        expect(ratio).toBeLessThan(11);
      }
    }
  });
});

describe('a box with sharp corners is four planes', () => {
  // By hand: in the plane square to h, a face whose outward normal is turned from the body's side towards w by g, `out`
  // from the axis, is p cos(g) + q sin(g) = out, with q = y - e and p = z sin(theta) - x cos(theta). Of a convex solid
  // a line is inside where it is behind all four; it enters at the last of the planes that face it.
  test.each([
    { roll: 0, angle: 90, offset: 0 },
    { roll: 0, angle: 55, offset: 6 },
    { roll: 30, angle: 55, offset: 6 },
    { roll: -70, angle: 120, offset: 3 },
    { roll: 45, angle: 140, offset: 0 },
  ])('rolled by $roll, at $angle, offset $offset', ({ roll, angle, offset }) => {
    const [wide, deep, clock, radius] = [60, 40, 25, 15];
    const onto: Onto = { kind: 'box', wide, deep, corner: 0, roll };
    const cope = roundTubeOn(2 * radius, onto, { angle, clock, offset });
    const planes = [0, 90, 180, 270].map((turn) => ({
      g: (roll + turn) * DEGREE,
      out: turn % 180 === 0 ? deep / 2 : wide / 2,
    }));
    const [cos, sin] = [Math.cos(angle * DEGREE), Math.sin(angle * DEGREE)];
    const patches = new Set<number>();
    for (let phi = 0.5; phi < 360; phi++) {
      const x = radius * Math.cos((phi - clock) * DEGREE);
      const q = radius * Math.sin((phi - clock) * DEGREE) - offset;
      const facing = planes.filter(({ g }) => Math.cos(g) > 1e-9);
      const p = Math.min(...facing.map(({ g, out }) => (out - q * Math.sin(g)) / Math.cos(g)));
      const met = cope.outside(phi * DEGREE);
      expect(met.contact).toBe(true);
      expect(met.setback).toBeCloseTo((p + x * cos) / sin, 9);
      patches.add(met.region);
    }
    expect(patches.size).toBe(roll % 90 === 0 ? 1 : 2);
  });
});

describe('the dihedral', () => {
  // cos psi = cos(theta) cos(phi) sqrt(1 - q^2) - q sin(phi), q = (r sin(phi) - e) / R: derived, to 1e-2 degrees.
  test.each([
    { beta: 0.5, angle: 90, table: [90, 104.48, 120, 104.48, 90] },
    { beta: 0.5, angle: 60, table: [60, 85.37, 120, 125.5, 120] },
    { beta: 0.75, angle: 45, table: [45, 87.2, 138.59, 143.02, 135] },
  ])('beta $beta at $angle degrees', ({ beta, angle, table }) => {
    const { joint } = roundTubeOn(80 * beta, { kind: 'round', od: 80 }, { angle });
    for (const [i, dihedral] of table.entries()) {
      const ours = dihedralAt(joint, i * 45 * DEGREE) / DEGREE;
      expect(Math.abs(ours - dihedral)).toBeLessThanOrEqual(0.5e-2 + 1e-9);
    }
  });

  // The normals of a cylinder and of a plane, by hand: cos psi = cos(theta) cos(phi).
  test('on a plate and on the flat of a box it is that of the two normals', () => {
    const box: Onto = { kind: 'box', wide: 90, deep: 40, corner: 3, roll: 0 };
    for (const onto of [{ kind: 'plate' } as const, box]) {
      const { joint } = roundTubeOn(40, onto, { angle: 52, clock: 40 });
      for (let phi = 0; phi < 360; phi += 15) {
        const cosine = Math.cos(52 * DEGREE) * Math.cos((phi - 40) * DEGREE);
        expect(Math.cos(dihedralAt(joint, phi * DEGREE))).toBeCloseTo(cosine, 12);
      }
    }
  });
});
