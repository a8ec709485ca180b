import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readFrame } from '../../src/frame/read-frame.ts';
import { bareLengths, unitWritten } from '../../src/page/form/bare.ts';
import { withValues } from '../../src/page/job/edit.ts';
import { docOf, unitsOfDoc } from '../../src/page/job/job-doc.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { DEEP } from '../count.ts';
import { A4 } from '../job/sample.ts';

// Each length is written with its unit, and numbers without one are then in the other: whatever was left out would change by 25.4.

/** Points in every way, a tube between places written out, an end that runs past, and a direction, which has no unit. */
const FRAME = `copeleaf: 1
units: mm
frame:
  points:
    wide: [0, 0, 0]
    at: [-900.5, 0, 0]
    by: { from: wide, by: [0, 0, 500] }
    half: { on: rail, at: 400, out: [0, 0, 1] }
    part: { middle: [wide, at], share: 0.25 }
    1: [0, 700, 500]
  mirror: { y: 900 }
  snap: 0.4
  tubes:
    - { name: rail, along: [wide, at], od: 31.75, wall: 2, ends: { B: { plain: true, past: 20 } } }
    - { name: post, along: [wide, by], od: 31.75, wall: 2, allowance: 12, ends: { B: { flat: [0, 0, 1] } } }
    - { name: stay, along: [half, by], od: 25.4, wall: 2, root: 1 }
    - { name: long, along: [by, 1], section: { wide: 30, deep: 20, corner: 4 }, wall: 2, face: [0, 0, 1] }
    - { name: far, along: [[0, 300, 500], [-450, 300, 500]], od: 20, wall: 2 }
`;

/** Every length and angle of a job, and the points of its frame. */
function sizesIn(text: string): readonly number[] {
  const { tubes, frame, stock, sheet } = readFrame(text, 'job.yaml', { words: ENGLISH, paper: A4 });
  const points = [...(frame?.points.values() ?? [])].flat();
  const told = JSON.stringify([tubes, stock, sheet.margins, sheet.paperThickness]);
  const sizes = [...told.matchAll(/"(?:mm|rad)":(-?[\d.e-]+)/g)].map(([, number]) => Number(number));
  return [...points, ...sizes];
}

const JOBS: readonly (readonly [string, string])[] = [
  ['a frame of every key', FRAME],
  ...['samples', 'templates'].flatMap((folder) =>
    readdirSync(folder)
      // The rack is long to write, and has no key that the smaller frames lack.
      .filter((file) => DEEP || file !== 'kayak-rack.yaml')
      .map((file) => [file, readFileSync(`${folder}/${file}`, 'utf8')] as const),
  ),
];

test.each(JOBS)('%s stays as large in the other unit with its sizes kept', (_, text) => {
  const doc = docOf(text);
  const [unit, other] = unitsOfDoc(doc) === 'in' ? (['in', 'mm'] as const) : (['mm', 'in'] as const);
  const kept = bareLengths(doc).map((length) => [length.path, unitWritten(length, unit)] as const);
  const switched = sizesIn(withValues(text, [...kept, [['units'], other]]));
  const before = sizesIn(text);
  expect(before.length).toBeGreaterThan(3);
  expect(switched.length).toBe(before.length);
  for (const [i, value] of before.entries()) expect(switched[i]).toBeCloseTo(value, 6);
});
