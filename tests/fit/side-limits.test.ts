import { expect, test } from 'vitest';
import { sideLimitsOfLine } from '../../src/fit/side-limits.ts';

test('where a line begins and ceases to touch is found, wherever on the way round that is', () => {
  const touchesBetween = (from: number, to: number) => (station: number) => ({
    setback: 0,
    slope: 0,
    contact: station > from && station < to,
    part: 0,
    region: 0,
  });
  for (const [from, to] of [
    [1, 2.5],
    [0.013, 6.2],
    [3.1, 3.2],
  ] as const) {
    const found = [...sideLimitsOfLine(touchesBetween(from, to), 2 * Math.PI)].sort((a, b) => a - b);
    expect(found).toEqual([expect.closeTo(from, 9), expect.closeTo(to, 9)]);
  }
  expect(sideLimitsOfLine(touchesBetween(-1, 7), 2 * Math.PI)).toEqual([]);
});
