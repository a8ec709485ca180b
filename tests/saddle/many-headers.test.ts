import { expect, test } from 'vitest';
import { curveOf } from '../../src/saddle/cope.ts';
import { faceOf } from '../../src/saddle/lines.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import { readSample } from '../job/sample.ts';

/** Headers side by side up the tube, so that each is met by nobody but the last. */
const HEADERS = Array.from(
  { length: 40 },
  (_, i) => `      - { onto: { od: 60 }, angle: 80, clock: ${i * 9}, shift: ${i % 2} }`,
).join('\n');

test('an end on forty headers tells each from its neighbours, and a miss of one from the face of another', () => {
  const [solution] = solveHands(
    readSample(`copeleaf: 1\ntube:\n  od: 40\n  wall: 2\n  ends:\n    A:\n${HEADERS}\n`),
  );
  const cope = solution?.ends.A;
  if (cope?.kind !== 'coped') throw new Error('not coped');
  const faces = new Map<number, number>();
  for (let station = 0; station < 2 * Math.PI; station += 0.01) {
    const point = cope.outside(station);
    const known = faces.get(faceOf(point)) ?? point.part;
    expect(known).toBe(point.part);
    faces.set(faceOf(point), point.part);
  }
  expect(faces.size).toBeGreaterThan(10);
  expect(curveOf(cope, cope.cut, 0, 20).length).toBeGreaterThan(faces.size);
});
