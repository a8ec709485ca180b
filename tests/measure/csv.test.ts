import { expect, test } from 'vitest';
import { csvCell } from '../../src/measure/csv.ts';

test.each([
  ['bunk stay', 'bunk stay'],
  ['stay, short', '"stay, short"'],
  ['the "long" one', '"the ""long"" one"'],
  ['=cmd|x', "'=cmd|x"],
  ['=1,2', `"'=1,2"`],
  ['@sum', "'@sum"],
  ['-stay', "'-stay"],
  ['-2.5', '-2.5'],
  ['-1e-9', '-1e-9'],
])('%s is written %s', (text, cell) => {
  expect(csvCell(text)).toBe(cell);
});
