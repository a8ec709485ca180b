import { describe, expect, test } from 'vitest';
import { readGauge } from '../../src/measure/gauge.ts';
import { BIRMINGHAM_THOUSANDTHS } from '../../src/measure/sizes/gauge.ts';
import { ENGLISH } from '../../src/words/english.ts';

// Birmingham gauge, wall in inches, as tube makers publish it (seen; no standard read); 25.4 mm to the inch, multiplied by hand.
test.each([
  ['16 BWG', 1.651],
  ['16BWG', 1.651],
  ['BWG 16', 1.651],
  ['bwg16', 1.651],
  ['16 B.W.G.', 1.651],
  ['16\u00a0bwg', 1.651],
  ['13 BWG', 2.413],
  ['7 BWG', 4.572],
  ['20 BWG', 0.889],
])('%s is %d mm', (text, mm) => {
  expect(readGauge(text, 'in')).toStrictEqual({
    ok: true,
    value: { mm, wrote: text, unit: 'in', byName: true },
  });
});

test('a gauge is told by its name, in millimetres and in inches', () => {
  const reading = readGauge('16 BWG', 'mm');
  expect(reading?.ok && ENGLISH.quantities.written(reading.value)).toBe('16 BWG (1.65 mm, ~1/16 in, 0.065)');
});

describe('a gauge that is not known to be a tube gauge is refused, with the three that differ', () => {
  test.each(['16 ga', '16ga.', '16 gauge', '16 gage', 'gauge 16', '16g', '16 SWG', '16 AWG'])(
    '%s',
    (text) => {
      const reading = readGauge(text, 'mm');
      expect(reading).toMatchObject({ ok: false, read: text });
      const said = reading?.ok === false ? ENGLISH.faults.said(reading.fault) : undefined;
      expect(said?.instead).toContain('16 BWG');
      expect(said?.why).toMatch(/Birmingham.*standard wire.*sheet/);
    },
  );
});

test.each([
  ['6 BWG', '7 BWG'],
  ['24 BWG', '20 BWG'],
  ['16.4 BWG', '16 BWG'],
  ['0 BWG', '7 BWG'],
])('%s is not in the table, and %s is the nearest that is', (text, nearest) => {
  const reading = readGauge(text, 'mm');
  const said = reading?.ok === false ? ENGLISH.faults.said(reading.fault) : undefined;
  expect(said?.instead).toContain(nearest);
  expect(`${said?.why} ${said?.instead}`).toMatch(/\b7\b.*\b20\b/);
});

test.each(['2.4', '.095in', '16', '', 'BWG', '16 mm', '16 bags'])('%s names no gauge', (text) => {
  expect(readGauge(text, 'mm')).toBeUndefined();
});

test('a higher number is a thinner wall', () => {
  const walls = [...BIRMINGHAM_THOUSANDTHS].sort(([a], [b]) => a - b).map(([, thousandths]) => thousandths);
  expect(walls).toEqual([...walls].sort((a, b) => b - a));
  expect(new Set(walls).size).toBe(walls.length);
});
