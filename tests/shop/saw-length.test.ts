import { expect, test } from 'vitest';
import { factsOf } from '../../src/leaf/card/facts.ts';
import { inBoth, sawWords } from '../../src/leaf/names.ts';
import { sawLength } from '../../src/measure/saw-length.ts';
import { solveJob } from '../../src/saddle/solve.ts';
import { blankInWords, cutList } from '../../src/shop/lists/cut-list.ts';
import { firstEnds, orderOfWork } from '../../src/shop/lists/order.ts';
import { ticketsOf } from '../../src/shop/ticket/ticket.ts';
import { readSample } from '../job/sample.ts';

test('a blank is sawn to the next half millimetre or 32nd of an inch, never short, and a length on a mark stays there', () => {
  expect([431.947, 432, 432 + 1e-9, 432.01, 475.5].map((mm) => sawLength(mm, 'mm'))).toEqual([
    432, 432, 432, 432.5, 475.5,
  ]);
  // 24-25/32 in are 629.44 mm.
  expect(sawLength(629.4, 'in')).toBeCloseTo((24 + 25 / 32) * 25.4, 9);
  expect(sawLength(25.4, 'in')).toBeCloseTo(25.4, 9);
  expect(sawWords(431.947, 'mm')).toBe('432 mm (~17 in)');
});

test.each([
  ['in', 'od: 1-1/4in', 'between: 24in'],
  ['mm', 'od: 42.4', 'between: 612.34'],
])('the ticket, its step, the leaf’s card and the cut list tell one blank, %s', (units, od, between) => {
  const job = readSample(
    `copeleaf: 1\nunits: ${units}\ntube: { name: rung, ${od}, wall: 2.1mm, ${between}, ends: { A: { onto: { od: 60mm }, angle: 50 }, B: { onto: { od: 60mm }, angle: 80 } } }\n`,
  );
  const solutions = solveJob(job);
  const [solution] = solutions;
  const cope = solution?.ends.A;
  const [ticket] = ticketsOf(solutions, firstEnds(orderOfWork(solutions)));
  const [row] = cutList(solutions);
  if (cope?.kind !== 'coped' || !solution || !row || !solution.lengths) throw new Error('not coped');
  const blank = ticket?.saw.find(({ label }) => label === 'blank')?.text ?? 'none';
  const card = factsOf(solution, cope, undefined, job.units).find(({ label }) => label === 'blank')?.text;
  expect(card).toBe(`${blank} of stock`);
  expect(ticket?.steps.map(({ text }) => text).join('\n')).toContain(`Cut the blank ${blank} long`);
  expect(blank).toContain(blankInWords(row, job.units).replace(/\.0$/, ''));
  // Neither length lies on a mark of the tape, so that a figure that was not taken up would show.
  expect(blank).not.toBe(inBoth(solution.lengths.blank, job.units));
});
