import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readAngle } from '../../src/measure/angle.ts';
import { degrees } from '../../src/measure/units.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { howMany } from '../count.ts';

describe('an angle is read as people write it', () => {
  test.each([
    ['60', 60],
    ['60deg', 60],
    ['60 degrees', 60],
    ['60°', 60],
    ['60º', 60],
    ['60,5', 60.5],
    ['35-1/2°', 35.5],
    ["60°30'", 60.5],
    ['60° 30′ 15″', 60 + 30 / 60 + 15 / 3600],
    ['60° 30’ 15”', 60 + 30 / 60 + 15 / 3600],
    ["-0°30'", -0.5],
    ['−35deg', -35],
    ['0', 0],
    ['６０°', 60],
  ])('%s is %d degrees', (text, expected) => {
    const reading = readAngle(text);
    expect(reading).toMatchObject({ ok: true, value: { wrote: text, unit: 'deg' } });
    expect(reading.ok ? degrees(reading.value.rad) : NaN).toBeCloseTo(expected, 12);
  });

  test('radians are taken as they stand', () => {
    expect(readAngle('1.05rad')).toStrictEqual({
      ok: true,
      value: { rad: 1.05, wrote: '1.05rad', unit: 'rad' },
    });
  });
});

describe('what is no angle is refused with its reason', () => {
  test.each([
    ['', 'nothing'],
    ['60 grad', 'grad'],
    ['5%', 'not a number'],
    ['60mm', 'mm'],
    ["30'", 'no degrees'],
    ['60°30', 'no sign'],
    ["60°70'", '60 minutes'],
    ["60.5°30'", 'decimals'],
    [`60°30.5'15"`, 'decimals'],
    ['60°15"', 'more than one'],
    ['1rad 2', 'more than one'],
    [`60°30'15"10"`, 'more than one'],
    ['60 30', 'several'],
    ['1,500', 'thousands'],
    ['NaN', 'not a number'],
    ['1e2', 'exponent'],
    ['99999', 'ten turns'],
  ])('%s', (text, why) => {
    const reading = readAngle(text);
    expect(reading.ok).toBe(false);
    expect(reading.ok ? '' : ENGLISH.faults.said(reading.fault).why).toContain(why);
  });
});

test('any text is read as a finite angle or refused, and never throws', () => {
  const signs = fc.constantFrom(...`0123456789.,/- '"½°degra`);
  fc.assert(
    fc.property(fc.string({ unit: signs, maxLength: 12 }), (text) => {
      const reading = readAngle(text);
      if (reading.ok) expect(Number.isFinite(reading.value.rad)).toBe(true);
      else expect(ENGLISH.faults.said(reading.fault).why).not.toBe('');
    }),
    { numRuns: howMany({ short: 200, deep: 5_000 }) },
  );
});
