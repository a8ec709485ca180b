import { expect, test } from 'vitest';
import type { Tube } from '../../src/job/job.ts';
import { mirroredTube } from '../../src/job/opposite.ts';
import { readSample } from './sample.ts';

function braceWith(turned: string): Tube {
  const text = `copeleaf: 1\ntube:\n  od: 30\n  ends:\n    A: { onto: { od: 50 }, angle: 60, ${turned} }\n`;
  const [tube] = readSample(text).tubes;
  if (tube === undefined) throw new Error('no tube');
  return tube;
}

test.each([
  ['clock: 35deg, offset: 3/32in, seam: 90', 'clock: -35deg, offset: -3/32in, seam: -90'],
  ['clock: -5, offset: -1-1/2mm, seam: 0', 'clock: 5, offset: 1-1/2mm, seam: 0'],
  ['clock: −5, offset: 0', 'clock: 5, offset: 0'],
  ['clock: +5', 'clock: -5'],
])('the opposite hand of %s is %s', (drawn, opposite) => {
  expect(mirroredTube(braceWith(drawn))).toEqual(braceWith(opposite));
});

test.each([
  ['9.7mm', 'arc -9.7mm'],
  ['-9.7', 'arc 9.7 mm'],
])('a clocking measured as an arc of %s is, on the opposite hand, %s', (arc, words) => {
  const tube = braceWith(`clock: { arc: ${arc} }`);
  const { A } = mirroredTube(tube).ends;
  expect(A).toMatchObject({ parts: [{ clock: { wrote: words } }] });
  expect(mirroredTube(mirroredTube(tube))).toEqual(tube);
});

test('the opposite of the opposite is the tube', () => {
  const tube = braceWith('clock: 35deg, offset: -3/32in, seam: 90');
  expect(mirroredTube(mirroredTube(tube))).toEqual(tube);
});
