import { describe, expect, test } from 'vitest';
import { checkReport } from '../../src/fit/check-report.ts';
import { ENGLISH } from '../../src/words/english.ts';
import {
  type Ask,
  BEVEL,
  codesFor,
  codesOf,
  copedEnd,
  FROM_INSIDE,
  reportOn,
  SQUARE,
  tubeWith,
  tubeWithEnds,
  withLand,
} from './ends-under-test.ts';

// Each warning just fires and just does not. The numbers come from the geometry of the case, worked by hand beside it:
// R and r are the header's and the tube's outside radius, t the wall, ri = r - t, phi counts from the heel.

const degrees = 180 / Math.PI;
const GOOD: Ask = { od: 30, wall: 2, onto: 60, angle: 60 };

describe('misses: the outside passes beside the header', () => {
  // R = 30, r = 15: with |e| = 15 the tube's side runs along the header's, and no more is allowed than 1e-9 mm.
  test.each([-1, 1])('at |e| + r = R + 1e-9, to side %d', (side) => {
    expect(codesFor({ ...GOOD, offset: side * (15 + 2e-9) })).toContain('misses');
    expect(codesFor({ ...GOOD, offset: side * (15 + 5e-10) })).not.toContain('misses');
    expect(codesFor({ ...GOOD, offset: side * 15 })).not.toContain('misses');
    expect(codesFor({ ...GOOD, offset: side * 15 }, BEVEL, 'B')).not.toContain('misses');
    expect(codesFor({ ...GOOD, offset: side * 15.001 }, SQUARE, 'B')).toContain('misses');
  });

  test('not for equal diameters in line', () => {
    expect(codesFor({ ...GOOD, onto: 30 })).not.toContain('misses');
  });
});

describe('wider: the tube is larger than the header', () => {
  test('from a hair above equal diameters', () => {
    expect(codesFor({ ...GOOD, onto: 30 }, SQUARE)).not.toContain('wider');
    expect(codesFor({ ...GOOD, onto: 30 - 1e-6 }, SQUARE)).toContain('wider');
    expect(codesFor({ ...GOOD, onto: 30 + 1e-6 }, SQUARE)).not.toContain('wider');
  });

  test('is told by how much', () => {
    const { warnings } = reportOn(tubeWith({ ...GOOD, onto: 26.5 }, SQUARE));
    expect(warnings.find(({ code }) => code === 'wider')?.text).toMatch(/\b3\.5 mm/);
  });

  test('says once how wide its header is', () => {
    const { warnings } = reportOn(tubeWith({ ...GOOD, onto: 26.5 }, SQUARE));
    const text = warnings.find(({ code }) => code === 'wider')?.text ?? '';
    expect(text.match(/26\.5/g)).toHaveLength(1);
  });
});

test('a warning names the key that mends it where a job file is edited, and nowhere else', () => {
  const reports = [
    reportOn(tubeWith({ ...GOOD, od: 59, angle: 90 }, BEVEL)),
    reportOn(tubeWith({ ...GOOD, od: 59, angle: 40 }, SQUARE)),
    reportOn(tubeWith({ ...GOOD, od: 59, angle: 40 }, withLand(1.9))),
  ];
  const warnings = reports.flatMap((each) => each.warnings);
  expect(warnings.filter(({ text }) => /[`{}]|\bland:|edge:/.test(text))).toEqual([]);
  expect(warnings.filter(({ inFile }) => inFile.includes('`land`')).map(({ code }) => code)).toContain(
    'feather',
  );
  expect(warnings.filter(({ inFile }) => inFile.includes('`edge: bevel`'))).toHaveLength(1);
  for (const report of reports) {
    expect(checkReport(report, ENGLISH, 'text')).not.toContain('`');
    expect(checkReport(report, ENGLISH).replace(/\s+/g, ' ')).toContain('In a job file: `');
  }
});

// AISC 360 table K2.1A (secondary).
describe('heel-angle: under 30 degrees', () => {
  test.each([
    [30, false],
    [29.9999, true],
    [150, false],
    [150.0001, true],
    [90, false],
  ])('angle %d: %s', (angle, fires) => {
    expect(codesFor({ ...GOOD, angle }).includes('heel-angle')).toBe(fires);
  });
});

// 15 degrees: common practice, no source.
describe('feather: thinner than 15 degrees', () => {
  // At 90 degrees with no offset the thinnest place is the side, where the wedge is acos(r / R).
  const at = (thin: number): Ask => ({ ...GOOD, angle: 90, od: 60 * Math.cos(thin / degrees) });

  test('fires at 14.999 degrees and not at 15.001', () => {
    expect(codesFor(at(14.999))).toEqual(['feather']);
    expect(codesFor(at(15.001))).toEqual([]);
  });

  test('is told with its angle and a place at the side', () => {
    const [warning] = reportOn(tubeWithEnds(at(12), { A: copedEnd(at(12), BEVEL) })).warnings;
    expect(warning?.text).toMatch(/\b12/);
    expect(warning?.text).toMatch(/\b90°/);
  });

  test('not for an edge that is given a land or left square', () => {
    expect(codesFor(at(5), withLand(1))).not.toContain('feather');
    expect(codesFor(at(5), SQUARE)).not.toContain('feather');
  });

  // Dihedral along the line, no published formula: cos psi = cos(theta) cos(phi) sqrt(1 - q^2) - q sin(phi),
  // q = r sin(phi) / R, derived by a second program. Its most at phi 135, 3/4 and 45 degrees, is 143.02: 36.98 thin.
  test('not at 3/4 of the header and 45 degrees', () => {
    expect(codesFor({ ...GOOD, od: 45, angle: 45 })).toEqual([]);
  });
});

// 1 mm: common practice, no source.
describe('stand-off: over 1 mm as it will be cut', () => {
  // At 90 degrees with no offset the wall lands at sqrt(R^2 - (rho sin phi)^2): most is between inside and outside at
  // the sides. R = 25, r = 20: sqrt(625 - 400) = 15 outside, so 16 inside: ri^2 = 625 - 256 = 369, t = 20 - sqrt(369).
  const wall = 20 - Math.sqrt(369);
  const ask = (t: number): Ask => ({ od: 40, wall: t, onto: 50, angle: 90 });

  test('of a square edge on its own line it follows what a wrong cut would do, which is no warning', () => {
    const cut = ask(wall + 1e-6);
    const report = reportOn(tubeWithEnds(cut, { A: copedEnd(cut, SQUARE) }));
    expect(codesOf(report)).toEqual([]);
    expect(checkReport(report, ENGLISH)).toMatch(
      /cut square to the outside line by mistake, it would stand off 1 mm/,
    );
  });

  test('not for a bevelled edge', () => {
    expect(codesFor(ask(5), BEVEL)).toEqual([]);
  });

  // Cut to the inside line, the outer edge of the heel is what fouls: (x cos(theta) + R) / sin(theta) at rho = r less
  // at ri is t cot(theta), and nowhere is it more. At 45 degrees that is t. At 90 degrees nothing fouls.
  test('from inside, by t cot(theta) at the heel', () => {
    const at = (t: number): Ask => ({ od: 40, wall: t, onto: 60, angle: 45 });
    expect(codesFor(at(1.0001), FROM_INSIDE)).toContain('stand-off');
    expect(codesFor(at(0.9999), FROM_INSIDE)).not.toContain('stand-off');
    expect(codesFor(ask(wall + 1), FROM_INSIDE)).not.toContain('stand-off');
  });
});

// A 1/16 in filler rod: common practice, no source.
describe('gap: over 1.6 mm stays', () => {
  // At 90 degrees with no offset a square face lies on the inside line and touches all round; at the sides its outer
  // edge is sqrt(R^2 - ri^2) up and r aside: gap sqrt(R^2 - ri^2 + r^2) - R. R = 25, r = 20: 1.6 where
  // r^2 - ri^2 = 3.2 * 25 + 2.56 = 82.56.
  const wall = 20 - Math.sqrt(400 - 82.56);
  const ask = (t: number): Ask => ({ od: 40, wall: t, onto: 50, angle: 90 });

  test.each([
    ['outside', SQUARE],
    ['inside', FROM_INSIDE],
  ] as const)('by the wall that makes it 1.6 mm, from %s', (_, preparation) => {
    expect(codesFor(ask(wall + 1e-5), preparation)).toContain('gap');
    expect(codesFor(ask(wall - 1e-5), preparation)).not.toContain('gap');
  });

  // Rooted, the face lies on a header larger by 2: R = 27, ri = 14 gives 23.09 at the sides, whose outer edge is
  // hypot(20, 23.09) - 25 = 5.55 off the header, where a rod feels it; 3.55 of that are beyond the root.
  test('tells with a root gap what it comes to in all', () => {
    const ask = { ...{ od: 40, wall: 6, onto: 50, angle: 90 } };
    const end = { ...copedEnd(ask, SQUARE), root: { mm: 2, wrote: '2', unit: 'mm' } } as const;
    const report = reportOn(tubeWithEnds(ask, { A: end }));
    const told = report.warnings.find(({ code }) => code === 'gap')?.text ?? '';
    expect(told).toMatch(/^The root gap of 2 mm opens to 5\.55 mm at station 90°\. Bevel/);
    expect(told).not.toContain('rod');
    expect(checkReport(report, ENGLISH).replace(/\s+/g, ' ')).toMatch(
      /wider by 3\.5 mm .* at 90°, 5\.5 mm .* in all/,
    );
  });

  test('not for a bevelled edge, however thick the wall', () => {
    expect(codesFor(ask(8), BEVEL)).toEqual([]);
  });

  // All of the wall a land: where it is thinner than 45 degrees all round the widest place, it is a square face there.
  // R = 25, r = 24 at 90 degrees: 16 degrees thin at the sides.
  test('fires for a land as thick as makes it', () => {
    expect(codesFor({ od: 48, wall: 3, onto: 50, angle: 90 }, withLand(3))).toContain('gap');
    expect(codesFor({ od: 48, wall: 3, onto: 50, angle: 90 }, withLand(0.3))).not.toContain('gap');
  });
});

// The land's inner side seats, and its outer edge is no further off than it is thick.
describe('the land that a feather edge is told to have leaves no gap for a rod', () => {
  test.each([45, 60, 90])('in any wall, at %d degrees', (angle) => {
    for (const wall of [1.2, 2.6, 3.2, 4.5, 8]) {
      const ask = { od: 114.3, wall, onto: 114.3, angle };
      const told =
        reportOn(tubeWith(ask, BEVEL)).warnings.find(({ code }) => code === 'feather')?.inFile ?? '';
      expect(told).toMatch(
        wall > 3.2 ? /leave a land of 1\.6 mm .* at most\..*`land`/ : /about half the wall\..*`land`/,
      );
      const codes = codesFor(ask, withLand(Math.min(1.6, wall / 2)));
      expect(codes).not.toContain('gap');
      expect(codes).not.toContain('feather');
    }
  });

  // Half of 0.7 mm is as thin as what it would blunt.
  test('and none is told in a wall under 1 mm', () => {
    const { warnings } = reportOn(tubeWith({ od: 15.9, wall: 0.7, onto: 15.9, angle: 60 }, BEVEL));
    const told = warnings.find(({ code }) => code === 'feather')?.inFile ?? '';
    expect(told).toContain('file it until it cuts no more');
    expect(told).not.toContain('land');
  });
});

describe('short: less than a diameter from throat to throat', () => {
  // With no offset the throat is at the heel: (r cos(theta) + R) / sin(theta). At 90 degrees R; at 30 degrees
  // r sqrt(3) + 2 R.
  const tubeOf = (between: number, angle: number) => {
    const ask = { ...GOOD, angle };
    const end = copedEnd(ask, BEVEL);
    return tubeWithEnds(ask, { A: end, B: end }, between);
  };

  test.each([
    [90, 2 * 30 + 30],
    [30, 2 * (15 * Math.sqrt(3) + 60) + 30],
  ])('at %d degrees, work points %d mm apart', (angle, least) => {
    expect(codesOf(reportOn(tubeOf(least - 1e-6, angle)))).toEqual(['short']);
    expect(codesOf(reportOn(tubeOf(least + 1e-6, angle)))).toEqual([]);
  });

  test('a plain end takes nothing off', () => {
    const ends = { A: copedEnd({ ...GOOD, angle: 90 }, BEVEL), B: { kind: 'plain' } } as const;
    expect(codesOf(reportOn(tubeWithEnds(GOOD, ends, 30 + 30 - 1e-6)))).toEqual(['short']);
    expect(codesOf(reportOn(tubeWithEnds(GOOD, ends, 30 + 30 + 1e-6)))).toEqual([]);
  });

  test('is said of the tube and not of an end', () => {
    const [warning] = reportOn(tubeOf(80, 90)).warnings;
    expect(warning).not.toHaveProperty('end');
  });
});

describe('every warning about an end', () => {
  test('names it, and says a number and what to do', () => {
    // A hair wider than its header: where it grazes, the two surfaces run on into each other.
    const bad: Ask = { od: 50.2, wall: 4, onto: 50, angle: 25 };
    const report = reportOn(tubeWithEnds(bad, { A: copedEnd(bad, BEVEL), B: copedEnd(bad, SQUARE) }, 250));
    expect(new Set(codesOf(report))).toEqual(
      new Set(['misses', 'wider', 'heel-angle', 'feather', 'gap', 'short']),
    );
    for (const { code, end, text } of report.warnings) {
      expect(end === undefined, code).toBe(code === 'short');
      expect(text, code).toMatch(/\d/);
      expect(text, code).toMatch(/\. [A-Z]|: [a-z]/);
    }
  });
});
