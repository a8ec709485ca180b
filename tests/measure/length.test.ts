import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readLength } from '../../src/measure/length.ts';
import type { LengthUnit } from '../../src/measure/units.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { howMany } from '../count.ts';

// One inch is 25.4 mm exactly (international yard and pound agreement, 1959); the right-hand sides follow by hand.
const READ: readonly [text: string, mm: number, unit: LengthUnit][] = [
  ['38.1', 38.1, 'mm'],
  ['38,1 mm', 38.1, 'mm'],
  ['38.1mm', 38.1, 'mm'],
  ['38.1 MM', 38.1, 'mm'],
  ['38.1 millimetres', 38.1, 'mm'],
  ['1-1/2in', 38.1, 'in'],
  ['1 1/2"', 38.1, 'in'],
  ['1 1/2 inches', 38.1, 'in'],
  ['1½"', 38.1, 'in'],
  ['1 ½"', 38.1, 'in'],
  ['1-½in', 38.1, 'in'],
  ['½in', 12.7, 'in'],
  ['⅞″', 22.225, 'in'],
  ['1⁄2 in.', 12.7, 'in'],
  ['3.81cm', 38.1, 'cm'],
  ['1.2 m', 1200, 'm'],
  ['.095in', 2.413, 'in'],
  ['0.095 in', 2.413, 'in'],
  ['2ft 3-1/4in', 692.15, 'ft'],
  ['2\' 3-1/4"', 692.15, 'ft'],
  ['2\'-3 1/4"', 692.15, 'ft'],
  ['2′ 3¼″', 692.15, 'ft'],
  ["2’ 3 1/4''", 692.15, 'ft'],
  ['2 feet', 609.6, 'ft'],
  ['-3/32in', -2.38125, 'in'],
  ['−3/32in', -2.38125, 'in'],
  ['-1-1/2in', -38.1, 'in'],
  ['-½in', -12.7, 'in'],
  ['+5', 5, 'mm'],
  ['３８．１ｍｍ', 38.1, 'mm'],
  ['38.1\u00a0mm', 38.1, 'mm'],
  ['38.1\u2009mm', 38.1, 'mm'],
  ['1\u202f1/2in', 38.1, 'in'],
  ['0', 0, 'mm'],
  ['-0', 0, 'mm'],
  ['1 1/2', 1.5, 'mm'],
  ['1,5', 1.5, 'mm'],
  ['0,125', 0.125, 'mm'],
  [',125', 0.125, 'mm'],
  ['1.500', 1.5, 'mm'],
  ['1234,567', 1234.567, 'mm'],
];

describe('a length is read as people write it', () => {
  test.each(READ)('%s is %d mm', (text, mm, unit) => {
    expect(readLength(text, 'mm')).toStrictEqual({
      ok: true,
      value: { mm, wrote: text, unit, ...(/[\p{L}"'″′]/u.test(text) ? {} : { bare: true }) },
    });
  });

  test('a bare number takes the unit it is told', () => {
    expect(readLength('1-1/2', 'in')).toMatchObject({ value: { mm: 38.1, unit: 'in' } });
    expect(readLength('1-1/2mm', 'in')).toMatchObject({ value: { mm: 1.5, unit: 'mm' } });
  });

  test('zero has no sign', () => {
    expect(readLength('-0in', 'mm')).toMatchObject({ value: { mm: 0 } });
    expect(readLength('-0in', 'mm')).not.toMatchObject({ value: { mm: -0 } });
  });
});

// The fractions that Unicode has in one sign, as its tables decompose each (NFKC): numerator, fraction slash, denominator.
test.each([...'½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞'])(
  '%s alone and after a whole is the fraction that Unicode says it is',
  (sign) => {
    const [top, bottom] = sign.normalize('NFKC').split('\u2044').map(Number);
    if (!top || !bottom) throw new Error(`${sign} is no fraction`);
    expect(mmOf(`${sign}in`)).toBeCloseTo((25.4 * top) / bottom, 12);
    expect(mmOf(`2${sign}in`)).toBeCloseTo(25.4 * (2 + top / bottom), 12);
  },
);

function mmOf(text: string): number {
  const reading = readLength(text, 'mm');
  if (!reading.ok) throw new Error(`${text} is refused`);
  return reading.value.mm;
}

describe('a spelling with two meanings is refused with both', () => {
  test.each([
    ['1,500', '1.500', '1500'],
    ['12,500mm', '12.500', '12500'],
    ['1.234,5', '1.2345', '1234.5'],
    ['1,234.5', '1.2345', '1234.5'],
    ['1,234,567', '1.234567', '1234567'],
  ])('%s may be %s or %s', (text, decimal, grouped) => {
    const reading = readLength(text, 'mm');
    expect(reading).toMatchObject({ ok: false, read: text });
    expect(reading.ok ? [] : ENGLISH.faults.said(reading.fault).instead.match(/[\d.]+/g)).toEqual([
      decimal,
      grouped,
    ]);
  });
});

describe('a fraction of 1 or more is refused with what it can have meant', () => {
  test.each([
    ['11/2in', ['1-1/2', '5-1/2']],
    ['101/2', ['10-1/2', '50-1/2']],
    ['15/8', ['1-5/8', '1-7/8']],
    ['3/2', ['1-1/2']],
    ['13/16in', []],
    ['8/4', ['2']],
  ])('%s: %j', (text, readings) => {
    const reading = readLength(text, 'mm');
    expect(reading.ok).toBe(readings.length === 0);
    const instead = reading.ok ? '' : ENGLISH.faults.said(reading.fault).instead;
    expect(instead.match(/[\d/-]+/g) ?? []).toEqual(readings);
  });
});

describe('what is no length is refused with its reason', () => {
  test.each([
    ['', 'nothing'],
    ['   ', 'nothing'],
    ['mm', 'no number'],
    ['1e3', 'exponent'],
    ['62.5.3', 'more than one decimal point'],
    [',125,5', 'more than one decimal point'],
    ['1E+3mm', 'exponent'],
    ['NaN', 'not a number'],
    ['.nan', 'not a number'],
    ['Infinity', 'not a number'],
    ['-.inf', 'not a number'],
    ['∞', 'not a number'],
    ['0x1F', 'hexadecimal'],
    ['1/0', 'divided by 0'],
    ['1-1/0in', 'divided by 0'],
    ['5 / ', 'not finished'],
    ['/5', 'not a number'],
    ['1 - 1/2', 'sum'],
    ['1 5/4', 'not less than 1'],
    ['1 4/4', 'not less than 1'],
    ['1.5 1/2', 'not a number'],
    ['1,5/8', 'not a number'],
    ['10²', 'not a number'],
    ['1_000', 'not a number'],
    ['1 500', 'space'],
    ['--5', 'not a number'],
    ['38.', 'not a number'],
    ['5 furlong', 'furlong'],
    ['5 мм', 'мм'],
    ['1m 20cm', 'more than one'],
    ['3in 2ft', 'more than one'],
    ['2ft 3in 1in', 'more than one'],
    ["2' 3", 'no unit'],
    ['2.5ft 3in', 'whole'],
    ['99999999', 'kilometre'],
    ['9'.repeat(400), 'too long'],
    ['60deg', 'deg'],
  ])('%s', (text, why) => {
    const reading = readLength(text, 'mm');
    expect(reading.ok).toBe(false);
    const said = reading.ok ? undefined : ENGLISH.faults.said(reading.fault);
    expect(said?.why).toContain(why);
    expect(said?.instead).not.toBe('');
  });
});

test('any text is read as a finite length or refused, and never throws', () => {
  const signs = fc.constantFrom(...`0123456789.,/-+ '"½°eximnft\u2033\u2212\u00a0,`);
  const text = fc.oneof(
    fc.string({ unit: signs, maxLength: 12 }),
    fc.string({ unit: 'binary', maxLength: 20 }),
  );
  fc.assert(
    fc.property(text, (any) => {
      const reading = readLength(any, 'in');
      if (reading.ok) {
        expect(Number.isFinite(reading.value.mm)).toBe(true);
        return;
      }
      const { why, instead } = ENGLISH.faults.said(reading.fault);
      expect(Math.min(why.length, instead.length)).toBeGreaterThan(0);
    }),
    { numRuns: howMany({ short: 100, deep: 10_000 }) },
  );
});
