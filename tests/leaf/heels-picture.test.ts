import { expect, test } from 'vitest';
import type { Words } from '../../src/draw/drawing.ts';
import { heelsPicture } from '../../src/leaf/picture/heels-picture.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { readSample } from '../job/sample.ts';

const BOX = { left: 0, right: 40, bottom: 0, top: 40 };

/** What the ticket says of the twist, and where the letters of the heels stand, from the middle of the circle. */
function seen(heelA: number, heelB: number): { says: string; A: readonly number[]; B: readonly number[] } {
  const end = (clock: number): string => `{ onto: { od: 60.3 }, angle: 60, clock: ${clock} }`;
  const tube = `{ od: 42.4, between: 500, ends: { A: ${end(heelA)}, B: ${end(heelB)} } }`;
  const [solution] = solveHands(readSample(`copeleaf: 1\ntube: ${tube}\n`));
  const marks = solution && heelsPicture(solution, ENGLISH)?.(BOX);
  const letter = (name: string): readonly number[] => {
    const found = marks?.find((mark): mark is Words => mark.kind === 'words' && mark.text === name);
    return found ? [found.at.x - 20, found.at.y - 20] : [];
  };
  return { says: ENGLISH.quantities.twist(solution?.twist ?? 0), A: letter('A'), B: letter('B') };
}

test('seen from end A with the spine up, heel B stands on the side of heel A that the twist names', () => {
  // Stations are right-handed about A to B: to one who looks that way, from A, they grow clockwise.
  const right = seen(0, 35);
  expect(right.says).toBe('35° right');
  expect(right.B[0]).toBeGreaterThan((right.A[0] ?? 0) + 5);
  const left = seen(0, -35);
  expect(left.says).toBe('35° left');
  expect(left.B[0]).toBeLessThan((left.A[0] ?? 0) - 5);
});

test('a heel at 90° stands at the right, one at 180° at the foot, and the spine is up', () => {
  const { A, B } = seen(90, 180);
  expect(A[0]).toBeGreaterThan(12);
  expect(B[1]).toBeLessThan(-12);
  expect(seen(0, 90).A[1]).toBeGreaterThan(12);
});
