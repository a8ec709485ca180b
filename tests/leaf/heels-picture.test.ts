import { expect, test } from 'vitest';
import type { Mark, Words } from '../../src/draw/drawing.ts';
import { headerFacts } from '../../src/leaf/card/header-facts.ts';
import { heelsPicture } from '../../src/leaf/picture/heels-picture.ts';
import { viewsOf } from '../../src/leaf/picture/side-view.ts';
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

/** Of two round headers in one plane, their angles and on which side of the tube their clocks are, 1 for the spine's. */
type Pair = readonly (readonly [angle: number, side: 1 | -1])[];

/** The header whose setback is the greater on the spine and opposite it, by the formula for a round one of 30 mm, tube of 20 mm. */
function metAt(pair: Pair, side: 1 | -1): number {
  const setbacks = pair.map(([degrees, clock]) => {
    const angle = (degrees * Math.PI) / 180;
    return (20 * clock * side * Math.cos(angle) + 30) / Math.sin(angle);
  });
  return setbacks.indexOf(Math.max(...setbacks));
}

test.each([
  [
    [
      [90, 1],
      [45, 1],
    ],
  ],
  [
    [
      [45, 1],
      [90, 1],
    ],
  ],
  [
    [
      [90, -1],
      [45, 1],
    ],
  ],
  [
    [
      [45, 1],
      [45, -1],
    ],
  ],
  [
    [
      [80, 1],
      [40, 1],
    ],
  ],
  [
    [
      [118, 1],
      [90, 1],
    ],
  ],
] as const)(
  'of several headers the pictures and the words show each on the side where the leaf names it: %j',
  (pair: Pair) => {
    const parts = pair.map(
      ([angle, side]) => `{ onto: { od: 60 }, angle: ${angle}, clock: ${side === 1 ? 0 : 180} }`,
    );
    const [solution] = solveHands(
      readSample(`copeleaf: 1\ntube: { od: 40, ends: { A: [${parts.join(', ')}] } }\n`),
    );
    const cope = solution?.ends.A;
    if (!solution || cope?.kind !== 'coped') throw new Error('one end');
    const wordsOf = (marks: readonly Mark[] = []) =>
      marks.flatMap((mark) => (mark.kind === 'words' ? [mark] : []));
    const [side] = viewsOf(cope, 'A', ENGLISH);
    const [across, along] = [heelsPicture(solution, ENGLISH)?.(BOX), side.draw(BOX)].map(wordsOf);
    const told = headerFacts(cope, 'mm', ENGLISH).filter(({ fact }) => fact === 'clocking');
    for (const way of [1, -1] as const) {
      const header = metAt(pair, way);
      const letter = across?.find(({ text }) => text.split(', ').includes(`A${header + 1}`));
      expect(Math.sign((letter?.at.y ?? 20) - 20), 'from end A').toBe(way);
      // The side view has the clock of the first header at its right.
      const number = along?.find(({ text }) => text === `${header + 1}`);
      const middle = along?.find(({ text }) => text === 'to B');
      const right = (number?.at.x ?? 0) > (middle?.at.x ?? 0) + 4 ? 1 : -1;
      expect(right * (pair[0]?.[1] ?? 1), 'from the side').toBe(way);
      expect(told[header]?.text).toContain(way === 1 ? 'on the spine' : 'opposite the spine');
    }
  },
);
