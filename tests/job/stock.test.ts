import { describe, expect, test } from 'vitest';
import { complaintsAbout, readSample, SAMPLE } from './sample.ts';

function stockOf(lines: string) {
  return readSample(`${SAMPLE}${lines}\n`).stock;
}

describe('the lengths that the shop has', () => {
  test('are read with how many there are, one where no number stands', () => {
    const stock = stockOf('stock: [6m x 3, 2.4m, 20 ft × 12, 96]');
    expect(stock?.lengths.map(({ length, count }) => [length.mm, count])).toEqual([
      [6000, 3],
      [2400, 1],
      [6096, 12],
      // The job is in inches.
      [2438.4, 1],
    ]);
    expect(stock?.kerf.mm).toBe(3);
  });

  test('may be one alone, and the kerf is told as any length', () => {
    expect(stockOf('stock: 6m x 3\nkerf: 1/8in')).toMatchObject({
      lengths: [{ count: 3 }],
      kerf: { mm: 3.175 },
    });
  });

  test('are none where the job tells none', () => {
    expect(stockOf('')).toBeUndefined();
  });
});

describe('what can not be read as stock is told at its line, with what to write instead', () => {
  test.each([
    ['stock: []', 'stock', '6m x 3'],
    ['stock: long ones', 'length', '6m x 3'],
    ['stock: [0m x 3]', 'not-positive', '6m x 3'],
    ['stock: [6m x 0]', 'stock', '6m x 3'],
    ['stock: [6m x many]', 'stock', '6m x 3'],
    ['stock: [3 x 6m]', 'stock', '6m x 3'],
    ['stock: [6m x 2.5]', 'stock', '6m x 3'],
    ['stock: { length: 6m }', 'shape', '6m x 3'],
    ['stock: [[6m]]', 'shape', '6m x 3'],
    ['stock:', 'shape', '6m x 3'],
    ['kerf: -1', 'negative', '0 or more'],
    ['kerf: thin', 'length', 'a number'],
  ])('%s', (line, code, instead) => {
    const found = complaintsAbout(`${SAMPLE}${line}\n`);
    expect(found).toMatchObject([{ code, line: 14, instead: expect.stringContaining(instead) }]);
  });

  test('`3 x 6m` is told which comes first', () => {
    expect(complaintsAbout(`${SAMPLE}stock: [3 x 6m]\n`)[0]?.why).toContain('the length comes first');
  });
});
