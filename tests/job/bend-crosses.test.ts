import { expect, test } from 'vitest';
import { solveHands } from '../../src/saddle/solve.ts';
import { readSample, refusalOf } from './sample.ts';

// A bend of 30 mm on a radius of 25 that curls back to both sides of a tube of 30: its arms stand from 10 mm off the tube's axis, in
// its body. Turned away from the body, or on a radius of 45, from 30 mm off, they clear it.
test.each([
  ['radius: 25, centre: 0', true],
  ['radius: 25, centre: 180', false],
  ['radius: 45, centre: 0', false],
])('a bend of %s crosses the body of the tube that lands on it: %s', (bend, crosses) => {
  const told = refusalOf(() =>
    solveHands(
      readSample(`copeleaf: 1
tube:
  od: 30
  between: 400
  ends:
    A: { onto: { od: 40 }, angle: 90 }
    B: { onto: { bend: { od: 30, ${bend} } }, angle: 90 }
`),
    ),
  );
  expect(told.map(({ code, line }) => [code, line])).toEqual(crosses ? [['bend-crosses', 7]] : []);
});
