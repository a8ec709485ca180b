import { expect, test } from 'vitest';
import { solveHands } from '../../src/saddle/solve.ts';
import { shopPack } from '../../src/shop/pack.ts';
import { readSample } from '../job/sample.ts';

function packOf(end: string, more = ''): string {
  const job = readSample(
    `copeleaf: 1\n${more}tube: { od: 30, wall: 2, between: 600, ends: { A: ${end}, B: plain } }\n`,
  );
  const boxes = shopPack(job, solveHands(job), false)({ left: 0, bottom: 0, right: 190, top: 2000 });
  return boxes
    .flatMap(({ draw }) => draw({ x: 0, y: 0 }, () => []))
    .flatMap((mark) => (mark.kind === 'words' ? [mark.text] : []))
    .join(' ');
}

// Seen from the clock's side with B up stations grow to the right, and a header with a positive offset passes at the clock + 90°.
test.each([
  ['angle: 60, offset: 3', 'from its heel: header to the right'],
  ['angle: 60, offset: -3', 'from its heel: header to the left'],
  ['angle: 120, offset: 3', 'from its toe: header to the right'],
])('the side to which an offset is stands in words under its picture: %s', (end, words) => {
  expect(packOf(`{ onto: { od: 42.4 }, ${end} }`)).toContain(words);
});

test('of a pair each hand has its own', () => {
  const pack = packOf('{ onto: { od: 42.4 }, angle: 60, offset: 3 }', 'pair: true\n');
  expect(pack.match(/A, from its heel: header to the (left|right)/g)).toEqual([
    'A, from its heel: header to the right',
    'A, from its heel: header to the left',
  ]);
});

test('without an offset no side is told', () => {
  const pack = packOf('{ onto: { box: { wide: 60, deep: 60, corner: 6, roll: 10 } }, angle: 60 }');
  expect(pack).toContain('from its heel');
  expect(pack).not.toContain('header to the');
});
