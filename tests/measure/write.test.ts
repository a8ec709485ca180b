import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readAngle } from '../../src/measure/angle.ts';
import { readLength } from '../../src/measure/length.ts';
import { degrees, MM_PER_INCH, radians } from '../../src/measure/units.ts';
import { inchFraction, writeAngle } from '../../src/measure/write.ts';
import { ENGLISH } from '../../src/words/english.ts';

const { inOne, written } = ENGLISH.quantities;

describe('a length is written in millimetres and on the marks of a tape', () => {
  test.each([
    [38.1, '38.1 mm', '1-1/2 in (1.500)'],
    [31.75, '31.75 mm', '1-1/4 in (1.250)'],
    [25.4, '25.4 mm', '1 in (1.000)'],
    [60, '60 mm', '~2-3/8 in (2.362)'],
    [0.396875, '0.4 mm', '1/64 in (0.016)'],
    [2.413, '2.41 mm', '~3/32 in (0.095)'],
    [-2.38125, '-2.38 mm', '-3/32 in (-0.094)'],
    [0, '0 mm', '0 in (0.000)'],
    [-0.001, '0 mm', '~0 in (0.000)'],
    [25.3, '25.3 mm', '~1 in (0.996)'],
    [1000, '1000 mm', '~39-3/8 in (39.370)'],
  ])('%d', (mm, metric, inches) => {
    expect([inOne(mm, 'mm'), inOne(mm, 'in')]).toEqual([metric, inches]);
  });

  test('64ths where they are asked for', () => {
    expect(inchFraction(60, 64)).toBe('~2-23/64');
  });
});

test.each([
  ['1-1/4in', '1-1/4in (31.75 mm)'],
  ['38.1', '38.1 mm (1-1/2 in, 1.500)'],
  ['38,1 mm', '38,1 mm (1-1/2 in, 1.500)'],
  ['1.2 m', '1.2 m (~47-1/4 in, 47.244)'],
  ['2\' 3-1/4"', '2\' 3-1/4" (692.15 mm)'],
])("%s is told in the person's words, then in the other unit", (text, both) => {
  const reading = readLength(text, 'mm');
  expect(reading.ok && written(reading.value)).toBe(both);
});

test.each([
  [60, '60°'],
  [60.25, '60.25°'],
  [60.5, '60.5°'],
  [-35, '-35°'],
  [-0.0001, '0°'],
  [180, '180°'],
])('%d degrees are written %s', (angle, text) => {
  expect(writeAngle(radians(angle))).toBe(text);
});

describe('what is written is read back', () => {
  test('millimetres to half of the last decimal', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e5, max: 1e5, noNaN: true }), (mm) => {
        const reading = readLength(inOne(mm, 'mm'), 'in');
        expect(reading.ok && Math.abs(reading.value.mm - mm)).toBeLessThan(0.005 + 1e-9);
      }),
    );
  });

  test('inches to half a mark, and exactly where the length is on a mark', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -640_000, max: 640_000 }),
        fc.double({ min: 0, max: 0.4, noNaN: true }),
        (marks, off) => {
          const mm = (marks / 64) * MM_PER_INCH;
          const words = inchFraction(mm);
          expect(words).not.toContain('~');
          const exact = readLength(words, 'in');
          expect(exact.ok && exact.value.mm).toBeCloseTo(mm, 9);

          const near = readLength(inchFraction(mm + off, 64).replace('~', ''), 'in');
          expect(near.ok && Math.abs(near.value.mm - mm - off)).toBeLessThan(MM_PER_INCH / 128 + 1e-9);
        },
      ),
    );
  });

  test('degrees to half of the last decimal', () => {
    fc.assert(
      fc.property(fc.double({ min: -360, max: 360, noNaN: true }), (angle) => {
        const reading = readAngle(writeAngle(radians(angle)));
        expect(reading.ok && Math.abs(degrees(reading.value.rad) - angle)).toBeLessThan(0.005 + 1e-9);
      }),
    );
  });
});
