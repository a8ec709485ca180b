import { expect, test } from 'vitest';
import { standingFrame } from '../../src/together/frame-notes.ts';
import { readLines } from '../frame/read-lines.ts';

const RING = { a: '[0, 0, 0]', b: '[900, 0, 0]', c: '[900, 600, 0]', d: '[0, 600, 0]' };
const ROUND = 'od: 42.4, wall: 2.6';
const SIDES = ['a, b', 'b, c', 'c, d', 'd, a'].map(
  (along, i) => `name: side ${i}, along: [${along}], ${ROUND}`,
);

/** The tubes of which it is told that they hold their air in, by names. */
function sealedOf(...[points, tubes]: Parameters<typeof readLines>): readonly (readonly string[])[] {
  const job = readLines(points, tubes);
  const told = standingFrame(job)?.warnings.filter(({ code }) => code === 'sealed') ?? [];
  return told.map((warning) => warning.tubes.map((tube) => job.tubes[tube]?.name ?? ''));
}

// Common practice, no source: a closed tube is drilled to the open before it is welded shut.
test('a ring of mitred tubes holds its air in', () => {
  expect(sealedOf(RING, SIDES)).toEqual([['side 0', 'side 1', 'side 2', 'side 3']]);
});

test('a tube that is vented into it holds its air in with it; one that is open at an end does not', () => {
  const strut = `name: strut, along: [m, n], od: 21.3, wall: 2`;
  const within = { ...RING, m: '[450, 0, 0]', n: '[450, 600, 0]' };
  expect(sealedOf(within, [...SIDES, strut])).toEqual([['side 0', 'side 1', 'side 2', 'side 3', 'strut']]);
  const open = `name: hook, along: [m, t], od: 21.3, wall: 2`;
  expect(sealedOf({ ...within, t: '[450, 0, 400]' }, [...SIDES, open])).toEqual([
    ['side 0', 'side 1', 'side 2', 'side 3'],
  ]);
});

test('of two lengths that are spliced one open end lets the air out of both', () => {
  const points = { a: '[0, 0, 0]', b: '[500, 0, 0]', c: '[1000, 0, 0]' };
  const halves = [`name: one, along: [a, b], ${ROUND}`, `name: two, along: [b, c], ${ROUND}`];
  expect(sealedOf(points, halves)).toEqual([]);
});

test('a bar has no air to hold', () => {
  expect(
    sealedOf(
      RING,
      SIDES.map((side) => side.replace('wall: 2.6', 'wall: 21.2')),
    ),
  ).toEqual([]);
});
