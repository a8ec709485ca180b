import { expect, test } from 'vitest';
import { readJob } from '../../src/job/read-job.ts';
import { reportJob } from '../../src/together/report-job.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { someOf } from '../count.ts';
import { A4 } from '../job/sample.ts';

// Whatever edge is asked for on whatever header, on either section, a report comes.

const TUBES = ['od: 21.5', 'section: { wide: 40, deep: 30 }'];
const EDGES = ['edge: square', 'edge: square, from: inside', 'edge: bevel', 'edge: bevel, land: 0.5'];
const HEADERS = [
  '{ od: 78.3 }',
  '{ plate: {} }',
  '{ box: { wide: 60, deep: 60, corner: 5, roll: 20 } }',
  '{ bend: { od: 56.1, radius: 325, centre: 150 } }',
  '{ bend: { od: 75.4, radius: 284, centre: 180 } }',
];

const JOINTS = HEADERS.flatMap((onto) =>
  TUBES.flatMap((tube) => EDGES.map((edge) => ({ onto, tube, edge }))),
);

test.each(someOf(JOINTS, { short: 6 }))('$tube, $edge, onto $onto: is reported', ({ onto, tube, edge }) => {
  const offset = onto.includes('plate') ? '' : ', offset: -3.4';
  const end = `{ onto: ${onto}, angle: 60, clock: -130.9${offset}, ${edge} }`;
  const job = `copeleaf: 1\nunits: mm\ntube:\n  ${tube}\n  wall: 2\n  ends: { A: ${end} }\n`;
  const [report] = reportJob(readJob(job, 'every.yaml', { words: ENGLISH, paper: A4 }));
  const told = report?.ends.A;
  expect(told).toBeDefined();
  for (const number of numbersIn(told)) expect(Number.isFinite(number)).toBe(true);
});

function numbersIn(data: unknown): readonly number[] {
  if (typeof data === 'number') return [data];
  if (typeof data !== 'object' || data === null) return [];
  return Object.values(data).flatMap(numbersIn);
}
