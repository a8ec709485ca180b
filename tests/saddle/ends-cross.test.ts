import { expect, test } from 'vitest';
import { solveHands } from '../../src/saddle/solve.ts';
import { readSample, refusalOf } from '../job/sample.ts';

// Square onto a header of 50 mm the short point lies 25 mm from the work point: two such ends take 50, so that 50.1 mm to a tenth
// leaves some tube, and 50 none.
const job = (between: string): string => {
  const end = '{ onto: { od: 50mm }, angle: 90 }';
  return `copeleaf: 1\ntube: { od: 40mm, between: ${between}, ends: { A: ${end}, B: ${end} } }\n`;
};

test('ends whose cuts cross are refused with the least length that leaves some tube, and that length is taken', () => {
  for (const between of ['38mm', '50mm']) {
    const [complaint] = refusalOf(() => solveHands(readSample(job(between))));
    expect(complaint?.instead).toContain('at least 50.1 mm');
  }
  expect(solveHands(readSample(job('50.1mm')))).toHaveLength(1);
});
