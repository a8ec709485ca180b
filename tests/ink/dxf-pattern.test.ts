import { expect, it } from 'vitest';
import { patternOf } from '../../src/ink/dxf-pattern.ts';
import type { Tube } from '../../src/job/job.ts';
import { drawLeaf } from '../../src/leaf/draw-leaf.ts';
import { drawFootprint } from '../../src/leaf/footprint/leaf.ts';
import { solveTube } from '../../src/saddle/solve.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { casesOf, dice, length, PAPER, randomAsk, tubeOf } from '../leaf/random-tubes.ts';
import { BRACE } from './exact-cut.ts';

it('every leaf of 25 random tubes has one contour to cut its pattern out by', () => {
  const roll = dice(77);
  const cases = Array.from({ length: 25 }, () => randomAsk(roll)).flatMap((ask) => casesOf(ask));
  const without = cases.filter(({ leaf }) => patternOf(leaf.wrap).length !== 1);
  expect(without.map(({ ask, end }) => ({ ask, end }))).toEqual([]);
});

it('so has a leaf of a rectangular tube', () => {
  const section = {
    kind: 'rectangular',
    wide: length(40),
    deep: length(25),
    corner: length(3),
  } as const;
  const tube: Tube = { ...tubeOf(BRACE), section };
  const solution = solveTube(tube);
  for (const end of ['A', 'B'] as const) {
    expect(patternOf(drawLeaf(solution, end, { words: ENGLISH, paperThickness: PAPER }).wrap)).toHaveLength(
      1,
    );
  }
});

it('a footprint, which is not cut to, is cut out along the edge of its sheet', () => {
  const [brace] = casesOf(BRACE);
  if (!brace) throw new Error('no leaf');
  const { wrap } = drawFootprint(brace.solution, 'A', 0, { words: ENGLISH, paperThickness: PAPER });
  const [edge, ...more] = patternOf(wrap);
  expect(more).toEqual([]);
  expect(edge?.pieces.map(({ to }) => to)).toEqual(
    [
      { x: wrap.box.left + 0.2, y: wrap.box.bottom + 0.2 },
      { x: wrap.box.right - 0.2, y: wrap.box.bottom + 0.2 },
      { x: wrap.box.right - 0.2, y: wrap.box.top - 0.2 },
    ].map(({ x, y }) => ({ x: expect.closeTo(x, 9), y: expect.closeTo(y, 9) })),
  );
});
