import { describe, expect, test } from 'vitest';
import { endPieceLength, mitredEnds, wholeBend } from '../../src/leaf/bend-pieces.ts';
import { drawLeaf } from '../../src/leaf/draw-leaf.ts';
import { radians } from '../../src/measure/units.ts';
import { solveHands, type TubeSolution } from '../../src/saddle/solve.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { asWritten } from '../../src/words/said.ts';
import { readSample } from '../job/sample.ts';

function solved(tube: string): TubeSolution {
  const [solution] = solveHands(readSample(`copeleaf: 1\ntube: { name: stay, od: 30, ${tube} }\n`));
  if (!solution) throw new Error('no tube');
  return solution;
}

describe('a bend of straight pieces', () => {
  const BEND = 'ends: { A: { onto: { mitre: { turn: 90, pieces: 5, radius: 150 } } } }';

  test('is cut by one leaf at every mitred end, and the leaf says how often', () => {
    const solution = solved(`copies: 2, ${BEND}`);
    const bend = wholeBend(solution.tube);
    expect(bend && mitredEnds(bend)).toBe(8);
    const said = drawLeaf(solution, 'A', { words: ENGLISH, paperThickness: 0.1 }).card.marks.flatMap(
      (mark) => (mark.kind === 'words' ? [mark.text] : []),
    );
    expect(said.join(' ')).toContain('for 16 ends');
  });

  test('has pieces that lie on the polygon round its centre line', () => {
    const bend = wholeBend(solved(BEND).tube);
    const half = bend ? endPieceLength(bend) : 0;
    // Walked along: half a side, three whole ones turned by 22.5° each, half a side; it has to end on the far tangent.
    let [x, y] = [0, 0];
    for (const [i, long] of [half, 2 * half, 2 * half, 2 * half, half].entries()) {
      x += long * Math.cos(radians(22.5 * i));
      y += long * Math.sin(radians(22.5 * i));
    }
    expect(x).toBeCloseTo(150, 9);
    expect(y).toBeCloseTo(150, 9);
  });

  test('is not meant by a tube with two ends, which is one piece of its own length', () => {
    const two = `between: 60, ends: { A: { onto: { mitre: { turn: 90, pieces: 5, radius: 150 } } }, B: plain }`;
    expect(wholeBend(solved(two).tube)).toBeUndefined();
  });
});

test('an angle has one sign for its degrees, however it was written', () => {
  expect(ENGLISH.card.degreeSigns(asWritten('62deg; 0.5 degrees, 7 deg off square; 12°'))).toBe(
    '62°; 0.5°, 7° off square; 12°',
  );
});

test('a twist has a side and no sign, and none on one line or opposite', () => {
  expect([35, -35, 0, 180, -180].map((each) => ENGLISH.quantities.twist(radians(each)))).toEqual([
    '35° right',
    '35° left',
    '0°',
    '180°',
    '180°',
  ]);
});
