import { expect, test } from 'vitest';
import { standingFrame } from '../../src/together/frame-notes.ts';
import { frameReport } from '../../src/together/frame-report.ts';
import { readLines } from '../frame/read-lines.ts';

const RING = { a: '[0, 0, 0]', b: '[900, 0, 0]', c: '[900, 1200, 0]', d: '[0, 1200, 0]' };
const SIDES = ['a, b', 'b, c', 'c, d', 'd, a'];

function reportOf(points: Readonly<Record<string, string>>, sides: readonly string[]): string {
  const job = readLines(
    points,
    sides.map((along, i) => `name: side ${i}, along: [${along}], od: 42.4, wall: 2.6`),
  );
  const standing = standingFrame(job);
  if (!standing) throw new Error('no frame');
  return frameReport(job, standing);
}

test('the diagonals of a rectangle of tubes are told, once, as a tape reads them', () => {
  const report = reportOf(RING, SIDES);
  // 3, 4, 5.
  expect(report.match(/a to c and b to d: 1500 mm each/g)).toHaveLength(1);
});

test.each([
  ['a side is lacking', RING, SIDES.slice(0, 3)],
  ['it leans', { ...RING, c: '[1000, 1200, 0]', d: '[100, 1200, 0]' }, SIDES],
  ['a corner stands up', { ...RING, c: '[900, 1200, 40]' }, SIDES],
])('none are told where %s', (_, points, sides) => {
  expect(reportOf(points, sides)).not.toContain(' each');
});
