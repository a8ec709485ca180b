import { expect, test } from 'vitest';
import { ordinatesAsText } from '../../src/cli/ordinates-as-text.ts';
import { reportsAsData } from '../../src/fit/as-data.ts';
import { reportTube } from '../../src/fit/report.ts';
import { drawLeaf } from '../../src/leaf/draw-leaf.ts';
import { inOrder } from '../../src/saddle/ordinates.ts';
import { solveHands } from '../../src/saddle/solve.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { readSample } from '../job/sample.ts';

// Of a tube 2 mm across a whole turn is 2 pi in radians and once round is 2 pi in mm: the same number.
const FILE = 'copeleaf: 1\ntube: { od: 2mm, wall: 0.2mm, ends: { A: { onto: { od: 3mm }, angle: 60deg } } }';
const [SOLUTION = expect.fail('a tube was asked for')] = solveHands(readSample(FILE));
const [TABLE = expect.fail('its end is coped')] = inOrder([SOLUTION], { perTurn: 8, apart: 10 });

test('a round tube of 2 mm counts its stations in degrees, as every round tube does', () => {
  expect(TABLE.rows.map(({ place }) => place)).toEqual([0, 45, 90, 135, 180, 225, 270, 315]);
  // By the formula of a round header, at the heel.
  expect(TABLE.rows[0]?.outside).toBeCloseTo((Math.cos(Math.PI / 3) + 1.5) / Math.sin(Math.PI / 3), 9);
  expect(ordinatesAsText([TABLE], 'mm', ENGLISH)).toMatch(/^ *station +round +outside/m);
  expect(JSON.stringify(reportsAsData([reportTube(SOLUTION, ENGLISH)]))).toContain('"throat":{"phi":0,');
});

test('it has no corners to fold paper on', () => {
  expect(SOLUTION.section.cornersAt(0)).toEqual([]);
  const { wrap } = drawLeaf(SOLUTION, 'A', { words: ENGLISH, paperThickness: 0.1 });
  expect(wrap.marks.filter((mark) => 'purpose' in mark && mark.purpose === 'fold')).toEqual([]);
});
