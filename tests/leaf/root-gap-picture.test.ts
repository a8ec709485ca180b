import { expect, test } from 'vitest';
import type { Point } from '../../src/draw/drawing.ts';
import { headerLines } from '../../src/leaf/picture/header-picture.ts';
import { tubeLines } from '../../src/leaf/picture/tube-picture.ts';
import { axesOf, fromSide } from '../../src/leaf/picture/view.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import { readSample } from '../job/sample.ts';

/** From a point to the line through two others. */
function apart({ x, y }: Point, from: Point, to: Point): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  return Math.abs((x - from.x) * dy - (y - from.y) * dx) / Math.hypot(dx, dy);
}

test.each([0, 2, 5])(
  'seen from its side, heel and toe stand a root gap of %d mm square off the header',
  (root) => {
    const [solution] = solveHands(
      readSample(
        `copeleaf: 1\ntube: { od: 40, wall: 2, root: ${root}, ends: { A: { onto: { od: 60 }, angle: 55 } } }\n`,
      ),
    );
    const cope = solution?.ends.A;
    if (cope?.kind !== 'coped') throw new Error('end A is coped');
    const [part] = cope.end.parts;
    const view = fromSide(1);
    const { saddle } = tubeLines(cope, 0, view, 120);
    const { lines } = headerLines(part, axesOf(part, 0), view, cope.joint.section.reach);
    const sides = lines.filter(({ length }) => length === 2);
    const off = (tip: Point): number => Math.min(...sides.map(([from, to = from]) => apart(tip, from, to)));
    for (const tip of [saddle[0], saddle.at(-1) ?? saddle[0]]) expect(off(tip)).toBeCloseTo(root, 2);
  },
);
