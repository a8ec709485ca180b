import { expect, test } from 'vitest';
import { standingFrame } from '../../src/together/frame-notes.ts';
import { frameReport } from '../../src/together/frame-report.ts';
import { readLines } from '../frame/read-lines.ts';

/** What `check` tells of the feet of a trestle whose legs stand here, a beam above them. */
function feetOf(...at: readonly string[]): readonly string[] {
  const job = readLines(
    Object.fromEntries(at.map((place, i) => [`f${i}`, place])),
    at.map(
      (_, i) =>
        `name: leg ${i}, along: [f${i}, [${100 * i}, 50, 900]], od: 33.7, wall: 2.6, ends: { A: { flat: z } }`,
    ),
  );
  const standing = standingFrame(job);
  const report = standing ? frameReport(job, standing) : '';
  const [, told = ''] = /^ {2}feet {3}(.*\n(?: {9}across.*\n)?)/m.exec(report) ?? [];
  return told
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
}

test('how far four feet stand apart is told, once round and across', () => {
  // 3, 4, 5 times 200; and one of them with its sign lost.
  const square = ['[-300, 0, 0]', '[300, 0, 0]', '[-300, 800, 0]', '[300, 800, 0]'];
  expect(feetOf(...square)).toEqual([
    'f0 to f1 600 mm, f1 to f3 800 mm, f3 to f2 600 mm, f2 to f0 800 mm',
    'across: f0 to f3 1000 mm, f1 to f2 1000 mm',
  ]);
  expect(feetOf(...square.with(1, '[-100, 0, 0]'))[0]).toMatch(/^f0 to f1 200 mm, /);
});

test('of two feet it is told, of three round; of a foot alone or of a step above the floor not', () => {
  expect(feetOf('[0, 0, 0]', '[400, 0, 0]')).toEqual(['f0 to f1 400 mm']);
  expect(feetOf('[0, 0, 0]', '[400, 0, 0]', '[0, 300, 0]')).toEqual([
    'f0 to f1 400 mm, f1 to f2 500 mm, f2 to f0 300 mm',
  ]);
  expect(feetOf('[0, 0, 0]', '[400, 0, 200]')).toEqual([]);
});
