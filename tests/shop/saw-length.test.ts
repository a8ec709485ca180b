import { expect, test } from 'vitest';
import { cardFactsOf } from '../../src/leaf/card/facts.ts';
import { sawLength } from '../../src/measure/saw-length.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import { cutList } from '../../src/shop/lists/cut-list.ts';
import { firstEnds, orderOfWork } from '../../src/shop/lists/order.ts';
import { ticketsOf } from '../../src/shop/ticket/ticket.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { readSample } from '../job/sample.ts';

test('a blank is sawn to the next half millimetre or 32nd of an inch, never short, and a length on a mark stays there', () => {
  expect([431.947, 432, 432 + 1e-9, 432.01, 475.5].map((mm) => sawLength(mm, 'mm'))).toEqual([
    432, 432, 432, 432.5, 475.5,
  ]);
  // 24-25/32 in are 629.44 mm.
  expect(sawLength(629.4, 'in')).toBeCloseTo((24 + 25 / 32) * 25.4, 9);
  expect(sawLength(25.4, 'in')).toBeCloseTo(25.4, 9);
  expect(ENGLISH.quantities.sawn(431.947, 'mm')).toBe('432 mm');
});

test.each([
  ['in', 'od: 1-1/4in', 'between: 24in'],
  ['mm', 'od: 42.4', 'between: 612.34'],
])('the ticket, the leaf’s card and the cut list tell one blank, %s', (units, od, between) => {
  const job = readSample(
    `copeleaf: 1\nunits: ${units}\ntube: { name: rung, ${od}, wall: 2.1mm, ${between}, ends: { A: { onto: { od: 60mm }, angle: 50 }, B: { onto: { od: 60mm }, angle: 80 } } }\n`,
  );
  const solutions = solveHands(job);
  const [solution] = solutions;
  const cope = solution?.ends.A;
  const [ticket] = ticketsOf(solutions, firstEnds(orderOfWork(solutions)), false, ENGLISH);
  const [row] = cutList(solutions, ENGLISH);
  if (cope?.kind !== 'coped' || !solution || !row || !solution.lengths) throw new Error('not coped');
  const blank = ticket?.saw.find(({ label }) => label === 'blank')?.text ?? 'none';
  const card = cardFactsOf(solution, cope, undefined, job.units, ENGLISH).find(
    ({ label }) => label === 'blank',
  )?.text;
  expect(card).toBe(`${blank} of stock`);
  const listed = ENGLISH.lists.cut.blankOf(row, job.units);
  expect(blank).toContain(listed.replace(/\.0$/, ''));
  // Neither length lies on a mark of the tape, so that a figure that was not taken up would show.
  expect(blank).not.toBe(ENGLISH.quantities.one(solution.lengths.blank, job.units));
});
