import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readPipe } from '../../src/measure/pipe.ts';
import { NPS_SIZES } from '../../src/measure/sizes/pipe.ts';
import { MM_PER_INCH } from '../../src/measure/units.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { howMany } from '../count.ts';

// ASME B36.10M in inches, from memory: outside diameter, walls of schedule 40 and 80.
const IN_INCHES: readonly [string, number, number, number][] = [
  ['1/2', 0.84, 0.109, 0.147],
  ['3/4', 1.05, 0.113, 0.154],
  ['1', 1.315, 0.133, 0.179],
  ['1-1/4', 1.66, 0.14, 0.191],
  ['1-1/2', 1.9, 0.145, 0.2],
  ['2', 2.375, 0.154, 0.218],
  ['2-1/2', 2.875, 0.203, 0.276],
  ['3', 3.5, 0.216, 0.3],
  ['4', 4.5, 0.237, 0.337],
  ['5', 5.563, 0.258, 0.375],
  ['6', 6.625, 0.28, 0.432],
  ['8', 8.625, 0.322, 0.5],
  ['10', 10.75, 0.365, 0.594],
  ['12', 12.75, 0.406, 0.688],
];

describe('the millimetres of ASME B36.10M are its inches, rounded', () => {
  test('for every size in the table', () => {
    expect(NPS_SIZES.map(({ name }) => name)).toEqual(IN_INCHES.map(([name]) => name));
  });

  // Diameters are rounded to 0.1 mm and walls to 0.01 mm; a half goes either way.
  test.each(IN_INCHES)('NPS %s', (name, od, wall40, wall80) => {
    for (const [schedule, inches] of [
      ['40', wall40],
      ['80', wall80],
    ]) {
      const reading = readPipe(`NPS ${name} sch ${schedule}`, 'in');
      if (!reading.ok) throw new Error(reading.fault.kind);
      expect(Math.abs(reading.value.od.mm - od * MM_PER_INCH)).toBeLessThan(0.0501);
      expect(Math.abs((reading.value.wall?.mm ?? 0) - Number(inches) * MM_PER_INCH)).toBeLessThan(0.00501);
    }
  });
});

// The scope of ASME B36.10M: to NPS 12 the outside diameter is larger than the number of the size.
test('pipe is larger than its name', () => {
  for (const { inches, od } of NPS_SIZES) expect(od).toBeGreaterThan(inches * MM_PER_INCH);
});

// ASME B36.10M, rows as cited in open data; EN 10220 series 1 as cited beside them.
test.each([
  ['NPS 1-1/2 sch 40', 48.3, 3.68, 'NPS 1-1/2', 'sch 40'],
  ['nps 1½ Sch. 80', 48.3, 5.08, 'nps 1½', 'Sch. 80'],
  ['NPS 1 1/2", schedule 40', 48.3, 3.68, 'NPS 1 1/2"', 'schedule 40'],
  ['NPS1.5sch40', 48.3, 3.68, 'NPS1.5', 'sch40'],
  ['NPS 2 in sch 40', 60.3, 3.91, 'NPS 2 in', 'sch 40'],
  ['NPS 1/2', 21.3, undefined, 'NPS 1/2', undefined],
  ['EN 48.3 x 2.6', 48.3, 2.6, 'EN 48.3', '2.6'],
  ['EN 76,1mm × 3.2 mm', 76.1, 3.2, 'EN 76,1mm', '3.2 mm'],
  ['EN 33.7', 33.7, undefined, 'EN 33.7', undefined],
])('%s is %d mm with a wall of %s', (text, od, wall, odWrote, wallWrote) => {
  const reading = readPipe(text, 'in');
  expect(reading).toMatchObject({ ok: true, value: { od: { mm: od, wrote: odWrote, unit: 'in' } } });
  expect(reading.ok && [reading.value.wall?.mm, reading.value.wall?.wrote]).toEqual([wall, wallWrote]);
});

test('a pipe is told by its name, in millimetres and in inches', () => {
  const reading = readPipe('NPS 1-1/2 sch 40', 'mm');
  expect(
    reading.ok &&
      reading.value.wall &&
      [reading.value.od, reading.value.wall].map(ENGLISH.quantities.written),
  ).toEqual(['NPS 1-1/2 (48.3 mm, ~1-29/32 in, 1.902)', 'sch 40 (3.68 mm, ~5/32 in, 0.145)']);
});

test.each([
  ['NPS 1-3/4', 'NPS 1-1/2 or NPS 2'],
  ['NPS 14 sch 40', 'NPS 12'],
  ['NPS 0', 'NPS 1/2'],
  ['NPS 2 sch 10', 'sch 40 or sch 80, or `NPS 2` and the wall'],
  ['NPS 2 sch', 'sch 40 or sch 80'],
  ['EN 48', 'EN 42.4 or EN 48.3'],
  ['EN 10220', 'EN 323.9'],
  ['NPS x', 'NPS 1-1/2 sch 40'],
  ['EN 48.3 x 0', 'EN 48.3 x 2.6'],
  ['EN 48.3 x', 'EN 48.3 x 2.6'],
  ['DN 40', 'EN 48.3 x 2.6'],
  ['1-1/2 sch 40', 'NPS 1-1/2 sch 40'],
  ['', 'NPS 1-1/2 sch 40'],
])('%s is refused, and leads to %s', (text, instead) => {
  const reading = readPipe(text, 'mm');
  expect(reading.ok ? '' : ENGLISH.faults.said(reading.fault).instead).toContain(instead);
});

test('any text is read as a finite size or refused, and never throws', () => {
  const words = fc.constantFrom('NPS ', 'EN', 'sch', ' 40', ' x ', '1-1/2', '48.3', ',', '½', '"', 'mm', '0');
  const text = fc.oneof(
    fc.array(words, { maxLength: 7 }).map((all) => all.join('')),
    fc.string({ unit: 'binary' }),
  );
  const bad: string[] = [];
  const check = fc.property(text, (any) => {
    const reading = readPipe(any, 'mm');
    const fine = reading.ok
      ? [reading.value.od, reading.value.wall].every(
          (each) => each === undefined || (each.mm > 0 && each.mm < 1e6),
        )
      : !Object.values(ENGLISH.faults.said(reading.fault)).includes('');
    if (!fine) bad.push(any);
  });
  fc.assert(check, { numRuns: howMany({ short: 200, deep: 5_000 }) });
  expect(bad).toEqual([]);
});
