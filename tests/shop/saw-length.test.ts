import { expect, test } from 'vitest';
import { sawLength, sawWords } from '../../src/shop/saw-length.ts';

test('a blank is sawn to the next half millimetre or 32nd of an inch, never short, and a length on a mark stays there', () => {
  expect([431.947, 432, 432 + 1e-9, 432.01, 475.5].map((mm) => sawLength(mm, 'mm'))).toEqual([
    432, 432, 432, 432.5, 475.5,
  ]);
  // 24-25/32 in are 629.44 mm.
  expect(sawLength(629.4, 'in')).toBeCloseTo((24 + 25 / 32) * 25.4, 9);
  expect(sawLength(25.4, 'in')).toBeCloseTo(25.4, 9);
  expect(sawWords(431.947, 'mm')).toBe('432 mm (~17 in)');
});
