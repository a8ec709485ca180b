import { expect, test } from 'vitest';
import { firstEnds, orderOfWork } from '../../src/shop/lists/order.ts';
import { shopPack } from '../../src/shop/pack.ts';
import { ticketsOf } from '../../src/shop/ticket/ticket.ts';
import { solvePieces } from '../../src/together/pieces.ts';
import { readLines } from '../frame/read-lines.ts';

/** The words of the pack of a post under the first of two lengths that run from `a` over `b` to `c`. */
function packOf(c: string, halves: readonly string[]): string {
  const points = { a: '[0, 0, 0]', b: '[500, 0, 0]', c, foot: '[250, 0, -400]', top: '[250, 0, 0]' };
  const job = readLines(points, [...halves, 'name: post, along: [foot, top], od: 33.7, wall: 2.6']);
  const boxes = shopPack(job, solvePieces(job), false, false)({ left: 0, bottom: 0, right: 190, top: 2000 });
  return boxes
    .flatMap(({ draw }) => draw({ x: 0, y: 0 }, () => []))
    .flatMap((mark) => (mark.kind === 'words' ? [mark.text] : []))
    .join(' ');
}

const ROUND = 'od: 42.4, wall: 2.6';

// What a sign lost in a point would change, on paper too: the rail's length and size, and from the post's foot to the rail's top 400 + 42.4 / 2.
test('what the whole measures is told before it is welded up', () => {
  expect(packOf('[1000, 0, 0]', [`name: rail, along: [a, c], ${ROUND}`])).toContain(
    'Measure it before you weld it up: 1000 mm to the right, 42.5 mm back, 421 mm up over all',
  );
});

// What is spliced goes on in the other length, and has no end to cap.
test('only an end that is left open is asked to be vented before it is capped', () => {
  const whole = packOf('[1000, 0, 0]', [`name: rail, along: [a, c], ${ROUND}`]);
  expect(whole).toContain('If both its ends are capped later');
  expect(whole).toContain('If end A is capped later');
  const halves = packOf('[1000, 0, 0]', [
    `name: one, along: [a, b], ${ROUND}`,
    `name: two, along: [b, c], ${ROUND}`,
  ]);
  expect(halves).toContain('meets two');
  expect(halves).not.toContain('If both its ends are capped later');
  expect(halves).toContain('If end A is capped later');
});

test('no step seats an end before all are cut, for its header may be cut later', () => {
  const job = readLines(
    {
      a: '[0, 0, 0]',
      b: '[500, 0, 0]',
      c: '[500, 0, 400]',
      d: '[0, 0, 400]',
      low: '[200, 0, 0]',
      high: '[200, 0, 400]',
    },
    [
      ...['[a, b]', '[b, c]', '[c, d]', '[d, a]'].map(
        (along, i) => `name: side ${i + 1}, along: ${along}, ${ROUND}`,
      ),
      'name: post, along: [low, high], od: 33.7, wall: 2.6',
    ],
  );
  const solutions = solvePieces(job);
  const stages = orderOfWork(solutions);
  const tickets = ticketsOf(solutions, firstEnds(stages), false, job.words);
  const rows = tickets.map(({ steps }) =>
    steps.map(({ fact }) => fact).filter((fact) => fact === 'step:cut' || fact === 'step:seat'),
  );
  expect(rows.length).toBeGreaterThan(1);
  for (const row of rows) expect(row).toEqual(['step:cut', 'step:cut', 'step:seat', 'step:seat']);
  const pack = shopPack(job, solutions, false, false)({ left: 0, bottom: 0, right: 190, top: 2000 });
  const told = pack.flatMap(({ draw }) => draw({ x: 0, y: 0 }, () => []));
  const said = told.flatMap((mark) => (mark.kind === 'words' ? [mark.text] : [])).join(' ');
  expect(said.match(/Cut all ends before you seat any/g)).toHaveLength(1);
});

test('what lands on one tube stands apart from where the next one goes', () => {
  const points = {
    a: '[0, 0, 0]',
    b: '[500, 0, 0]',
    c: '[0, 0, 400]',
    d: '[500, 0, 400]',
    low: '[250, 0, 0]',
    high: '[250, 0, 400]',
  };
  const job = readLines(points, [
    `name: one, along: [a, b], ${ROUND}`,
    `name: two, along: [c, d], ${ROUND}`,
    'name: post, along: [low, high], od: 33.7, wall: 2.6',
  ]);
  const pack = shopPack(job, solvePieces(job), false, false)({ left: 0, bottom: 0, right: 190, top: 2000 });
  const marks = pack.flatMap(({ draw }) => [...draw({ x: 0, y: 0 }, () => [])]);
  const rows = marks.flatMap((mark) =>
    mark.kind === 'words' && mark.at.x === 0 && (mark.fact === 'place' || mark.fact === 'landing')
      ? [{ text: mark.text, y: mark.at.y }]
      : [],
  );
  expect(rows.map(({ text }) => text)).toEqual(['one', 'post A lands', 'two', 'post B lands', 'post']);
  const [one, onOne, two] = rows.map(({ y }) => y);
  expect((onOne ?? 0) - (two ?? 0)).toBeGreaterThan((one ?? 0) - (onOne ?? 0) + 1);
});
