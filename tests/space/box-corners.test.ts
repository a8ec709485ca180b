import { expect, test } from 'vitest';
import { cornersOf } from '../../src/space/outline.ts';

// A box 60 wide and 40 deep with corners of 5 mm, walked from the side of the body: each corner begins where one flat ends and ends
// where the next begins, and its middle lies 5 (sqrt 2 - 1) short of where the flats would meet.
const SHORT = 5 / Math.SQRT2;
const CORNERS = [
  { from: [20, 25], middle: [15 + SHORT, 25 + SHORT], to: [15, 30] },
  { from: [-15, 30], middle: [-15 - SHORT, 25 + SHORT], to: [-20, 25] },
  { from: [-20, -25], middle: [-15 - SHORT, -25 - SHORT], to: [-15, -30] },
  { from: [15, -30], middle: [15 + SHORT, -25 - SHORT], to: [20, -25] },
] as const;

test.each([0, 20, 90, -135])('the corners of a box rolled by %d degrees join its flats', (degrees) => {
  const roll = (degrees * Math.PI) / 180;
  const corners = cornersOf({ wide: 60, deep: 40, corner: 5, roll });
  expect(corners).toHaveLength(4);
  for (const [i, corner] of corners.entries()) {
    for (const name of ['from', 'middle', 'to'] as const) {
      const [off, beside] = corner[name];
      const [x, y] = CORNERS[i]?.[name] ?? [0, 0];
      // As it lies before it is rolled.
      expect(off * Math.cos(roll) + beside * Math.sin(roll), `corner ${i}, ${name}`).toBeCloseTo(x, 9);
      expect(beside * Math.cos(roll) - off * Math.sin(roll), `corner ${i}, ${name}`).toBeCloseTo(y, 9);
    }
  }
});
