import { expect, test } from 'vitest';
import { breaksOf } from '../../src/saddle/breaks.ts';
import { wallLine } from '../../src/saddle/lines.ts';
import { BEVEL, endUnderTest } from '../fit/ends-under-test.ts';

// A tube of 20 mm whose axis lies 5 mm and a little more off that of a header of 25 mm passes beside it where
// 20 sin(phi) is more than 25 less the offset: within acos(19.9999 / 20) = 0.18 degrees of its outermost line.
test.each([5.0001, -5.0001])(
  'an end offset by %d mm has two breaks where it just passes beside its header',
  (offset) => {
    for (const clock of [0.7, 33.1, 121.3]) {
      const { joint } = endUnderTest({ od: 40, wall: 0, onto: 50, angle: 70, clock, offset }, BEVEL).cope;
      const half = Math.acos((25 - Math.abs(offset)) / 20);
      const degrees = breaksOf(joint, wallLine(joint, 0), undefined).map((at) => (at * 180) / Math.PI);
      const outermost = clock + (offset > 0 ? 270 : 90);
      const limits = [-1, 1].map((side) => (outermost + (side * half * 180) / Math.PI + 360) % 360);
      for (const limit of limits)
        expect(Math.min(...degrees.map((at) => Math.abs(at - limit)))).toBeLessThan(1e-6);
    }
  },
);
