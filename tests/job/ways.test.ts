import { describe, expect, test } from 'vitest';
import { degrees } from '../../src/measure/units.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import { readSample, refusalOf } from './sample.ts';

interface Asked {
  readonly od?: string;
  readonly between?: string;
  readonly A?: string;
  readonly angle?: string;
  readonly clock?: string;
  readonly B?: string;
}

/** A tube with one value of its end B, or its own, written in another way. Each stands on a line of its own. */
function jobOf({ od = '31.75', between = '600', A, angle = '60', clock = '0', B }: Asked): string {
  return `copeleaf: 1
tube:
  od: ${od}
  between: ${between}
  ends:
    A: ${A ?? '{ onto: { od: 38.1 }, angle: 62deg }'}
    B: ${B ?? `{ onto: { od: 38.1 }, angle: ${angle}, clock: ${clock} }`}
`;
}

const LINE: Readonly<Record<keyof Asked, number>> = { od: 3, between: 4, A: 6, angle: 7, clock: 7, B: 7 };

describe('a value is read in each of the ways that people measure it', () => {
  test.each([
    ['118deg', 118],
    ['{ off-square: 28deg }', 62],
    ['{ off-square: -28 }', 118],
    ['{ rise: 12in, run: 12in }', 45],
    ['{ rise: 12in, run: -12in }', 135],
    ['{ triangle: [3in, 4in, 5in] }', 90],
    ['{ acute: 62deg, read-at: heel }', 62],
    ['{ acute: 62deg, read-at: toe }', 118],
    ['[62deg, { off-square: 27.5deg }]', 62],
  ])('angle: %s', (angle, theta) => {
    const end = readSample(jobOf({ angle })).tubes[0]?.ends.B;
    expect(end?.kind === 'coped' && degrees(end.parts[0].angle.rad)).toBeCloseTo(theta, 10);
  });

  test.each([
    ['{ arc: 9.7mm }', (9.7 / (31.75 * Math.PI)) * 360],
    ['{ arc: -1in }', (-25.4 / (31.75 * Math.PI)) * 360],
    ['[350deg, -9.5deg]', 350],
  ])('clock: %s', (clock, station) => {
    const end = readSample(jobOf({ clock })).tubes[0]?.ends.B;
    expect(end?.kind === 'coped' && degrees(end.parts[0].clock.rad)).toBeCloseTo(station, 10);
  });

  test.each([
    ['{ girth: 100mm }', 100 / Math.PI],
    ['{ girth: 4in, tape: 0.01in }', 101.6 / Math.PI - 0.254],
    ['[31.8, { girth: 100mm }]', 31.8],
  ])('od: %s', (od, diameter) => {
    const section = readSample(jobOf({ od })).tubes[0]?.section;
    expect(section?.kind === 'round' && section.od.mm).toBeCloseTo(diameter, 10);
  });

  test('what each was read as, and what it came to, is noted in words', () => {
    const end = readSample(jobOf({ angle: '[62deg, { off-square: 27.5deg }]' })).tubes[0]?.ends.B;
    expect(end?.kind === 'coped' && end.parts[0].angle.readings).toEqual([
      '62deg; this one is taken',
      '27.5deg off square, that is 62.5°; 0.5° more',
    ]);
  });
});

// 1/16 in is what a tape and an eye tell, 1.5 mm where the job is in mm: our choice, no source.
test.each([
  ['in', '[24in, 24-1/16in]', '[24in, 24-5/64in]'],
  ['mm', '[600mm, 601.5mm]', '[600mm, 601.51mm]'],
])('in a job in %s the readings %s agree and %s do not', (units, agree, differ) => {
  const end = '{ onto: { od: 38.1mm }, angle: 60 }';
  const told = (between: string): string[] => {
    const job = `${jobOf({ od: '31.75mm', between, A: end, B: end })}units: ${units}\n`;
    return refusalOf(() => solveHands(readSample(job))).map(({ code }) => code);
  };
  expect(told(agree)).toEqual([]);
  expect(told(differ)).toEqual(['readings-differ']);
});

test('readings of an angle agree within 1 degree: what a bevel and an eye tell; our choice, no source', () => {
  const told = (angle: string) => refusalOf(() => readSample(jobOf({ angle }))).map(({ code }) => code);
  expect(told('[60, 61]')).toEqual([]);
  expect(told('[60, 61.01]')).toEqual(['readings-differ']);
});

/** The key, what is written there, then the code of the complaint and words of what to write instead. */
const MISTAKES: readonly [keyof Asked, string, string, string][] = [
  ['angle', '{}', 'no-reading', '{ off-square: 28deg }'],
  ['angle', '{ faces: 3 }', 'unknown-key', 'under `between`'],
  ['angle', '{ of-square: 28 }', 'unknown-key', '`off-square`'],
  ['angle', '{ off-square: wide }', 'angle', 'a number'],
  ['angle', '{ off-square: 90 }', 'angle-range', 'between -90 and 90'],
  ['angle', '{ rise: 7in }', 'missing', '{ rise: 7in, run: 12in }'],
  ['angle', '{ run: 7in }', 'missing', '{ rise: 7in, run: 12in }'],
  ['angle', '{ rise: 0, run: 7in }', 'not-positive', 'over 0'],
  ['angle', '{ rise: 7in, run: 12deg }', 'length', '38.1mm'],
  ['angle', '{ rise: 7, off-square: 3 }', 'two-ways', 'a list'],
  ['angle', '{ triangle: 200 }', 'shape', 'three lengths'],
  ['angle', '{ triangle: [200, 200] }', 'triangle', 'three lengths'],
  ['angle', '{ triangle: [200, 200, 400] }', 'triangle', 'three lengths'],
  ['angle', '{ triangle: [200, 100, 90] }', 'triangle', 'three lengths'],
  ['angle', '{ triangle: [200, 0, 90] }', 'not-positive', 'over 0'],
  ['angle', '{ acute: 62 }', 'missing', 'read-at: heel'],
  ['angle', '{ read-at: toe }', 'missing', 'read-at: heel'],
  ['angle', '{ acute: 62, read-at: side }', 'choice', 'heel or toe'],
  ['angle', '{ acute: 118, read-at: heel }', 'angle-range', 'the acute angle'],
  ['angle', '[]', 'no-reading', '60deg'],
  ['angle', '[60, 61.1]', 'readings-differ', 'measured again'],
  ['angle', '[[60]]', 'shape', '60deg'],
  ['angle', 'mark', 'angle', 'a number'],
  ['clock', '{}', 'no-reading', '{ arc: 9.7mm }'],
  ['clock', '{ arc: 9deg }', 'length', '38.1mm'],
  ['clock', '{ arc: 100 }', 'arc', 'up to 99.74 mm'],
  ['clock', '[10, mark]', 'mark', 'the mark alone'],
  ['clock', '[10, 12]', 'readings-differ', 'measured again'],
  ['clock', '[]', 'no-reading', '35deg'],
  ['od', '{}', 'no-reading', '{ girth: 4-3/4in }'],
  ['od', '{ girth: 0 }', 'not-positive', 'over 0'],
  ['od', '{ tape: 0.1 }', 'missing', '{ girth: 4-3/4in }'],
  ['od', '{ girth: 3, tape: 1 }', 'girth', 'the thickness of the tape'],
  ['od', '{ girth: 100, tape: -1 }', 'negative', '0 or more'],
  ['od', '[31.75, { girth: 105 }]', 'readings-differ', 'measured again'],
  ['od', '[1, 1, 1, 1, 1, 1, 1, 1, 1, 1]', 'shape', 'up to 9'],
  ['between', '{}', 'no-reading', '{ faces: 22-1/2in }'],
  ['between', '{ faces: 0 }', 'not-positive', 'over 0'],
  ['between', '{ straightedge: 500 }', 'missing', 'at: 90deg'],
  ['between', '{ at: 90deg }', 'missing', 'straightedge'],
  ['between', '{ straightedge: 500, at: 90mm }', 'angle', '60deg'],
  ['between', '{ faces: 500, overall: 550 }', 'two-ways', 'a list'],
  ['between', '[600, mark]', 'mark', 'the mark alone'],
  ['between', '[600, 601.6]', 'readings-differ', 'measured again'],
  ['between', '[]', 'no-reading', '600mm'],
  ['A', '{ onto: { od: 38.1 }, angle: 62, clock: mark }', 'mark', 'at end B'],
  ['B', '[{ onto: { od: 38.1 }, angle: 62, clock: mark }]', 'mark', 'for each'],
];

describe('a malformed measurement is told once, at its line, with what to write instead', () => {
  test.each(MISTAKES)('%s: %s', (key, value, code, instead) => {
    const told = refusalOf(() => solveHands(readSample(jobOf({ [key]: value }))));
    expect(told).toMatchObject([{ code, line: LINE[key], instead: expect.stringContaining(instead) }]);
    expect(told[0]?.column).toBeGreaterThan(1);
  });
});

describe('what can not be measured so on this tube is told where the length stands', () => {
  const beside = '{ onto: { od: 38.1 }, angle: 60, offset: 25 }';
  const turning = '{ onto: { od: 38.1 }, angle: 60, clock: mark }';
  test.each([
    ['faces, the axis passing beside', '{ faces: 500 }', beside, 'no-reading', '`straightedge`'],
    ['a straight edge beside', '{ straightedge: 500, at: -90deg }', beside, 'no-reading', 'another station'],
    ['a straight edge, B still turning', '{ straightedge: 500, at: 0deg }', turning, 'no-reading', '`faces`'],
    ['a length mark beside', 'mark', beside, 'mark', 'less offset'],
    ['a length mark on a square end', 'mark', 'plain', 'mark', 'a coped end B'],
    ['a length mark on a union', 'mark', `[${beside}, ${beside}]`, 'mark', 'one header'],
  ])('%s', (_, between, B, code, instead) => {
    const told = refusalOf(() => solveHands(readSample(jobOf({ between, B }))));
    expect(told).toMatchObject([{ code, line: 4, column: 3, instead: expect.stringContaining(instead) }]);
  });

  test('both ends are needed', () => {
    const one = 'copeleaf: 1\ntube:\n  od: 30\n  ends: { B: { onto: { od: 50 }, angle: 60 } }\n';
    const told = (between: string) =>
      refusalOf(() => readSample(one.replace('od: 30', `od: 30\n  between: ${between}`)));
    expect(told('{ faces: 500 }')).toMatchObject([{ code: 'one-end', line: 4 }]);
    expect(told('mark')).toEqual([]);
  });

  test('the rotation of a rectangular tube is not marked: its faces tell it', () => {
    const job = jobOf({ clock: 'mark' }).replace('od: 31.75', 'section: { wide: 40, deep: 30, corner: 4 }');
    expect(refusalOf(() => readSample(job))).toMatchObject([{ code: 'mark', line: 7 }]);
  });
});
