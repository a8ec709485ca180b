import { expect, test } from 'vitest';
import type { Line } from '../../src/saddle/line.ts';
import { landLine, squareLine } from '../../src/saddle/lines.ts';
import { copeUnderTest } from '../outside/end-under-test.ts';
import { type EndKind, randomEnd, spellEnd } from '../outside/random-ends.ts';
import { randomFrom, SEED } from '../outside/random-joints.ts';

const KINDS: readonly EndKind[] = ['round', 'plate', 'mitre', 'box', 'sharp', 'rolled'];
const ENDS_A_KIND = 25;
const STATIONS = 40;
/** Of a whole turn. */
const HAIR = 1e-6;

// A derivative by central differences, wherever the line is one line on both sides.
test.each(
  KINDS.flatMap((kind) => [
    { kind, tube: 'round' as const },
    { kind, tube: 'rectangular' as const },
  ]),
)(`$tube tube on $kind: a line rises as it says, JOINT_SEED=${SEED}`, ({ kind, tube }) => {
  const random = randomFrom(SEED + 700 + KINDS.indexOf(kind) * 2 + (tube === 'round' ? 0 : 1));
  let compared = 0;
  for (let i = 0; i < ENDS_A_KIND; i++) {
    const ask = randomEnd(random, kind, tube);
    const { joint, outside, inside, square } = copeUnderTest(ask);
    const { turn, girth, cornersAt } = joint.section;
    const kinks = [...cornersAt(0), ...cornersAt(ask.wall)];
    for (let s = 0; s < STATIONS; s++) {
      const station = random() * turn;
      if (kinks.some((kink) => Math.abs(kink - station) < 2 * HAIR * turn)) continue;
      for (const line of [outside, inside, square]) {
        const rates = line && ratesAt(line, station, HAIR * turn);
        if (!rates) continue;
        const [told, before, after] = rates.map((rate) => (rate * turn) / girth);
        compared++;
        if (told === undefined || before === undefined || after === undefined) throw new Error('three rates');
        // Beside a header the line bends sharply: then the rate lies between those of both sides.
        const near = 1e-3 * (1 + Math.abs(told)) + Math.abs(after - before);
        if (!(Math.abs(told - (before + after) / 2) < near)) {
          expect.fail(`${told} is not between ${before} and ${after} at ${station}: ${spellEnd(ask)}`);
        }
      }
    }
  }
  expect(compared).toBeGreaterThan(2 * ENDS_A_KIND * STATIONS);
});

// The fade from the square line of the land to the outside line has a rate of its own: on a wall that is left standing
// in part, the rates of the two lines alone do not tell how the line rises.
test(`the land line rises as it says where it fades, JOINT_SEED=${SEED}`, () => {
  const random = randomFrom(SEED + 720);
  let faded = 0;
  for (let i = 0; i < 40; i++) {
    const ask = randomEnd(random, 'round', 'round');
    const { joint, outside } = copeUnderTest(ask);
    const { turn } = joint.section;
    const [line, squared] = [landLine(joint, ask.wall), squareLine(joint, ask.wall)];
    for (let s = 0; s < 100; s++) {
      const station = random() * turn;
      const at = line(station).setback;
      const isBetween = at - outside(station).setback > 0.01 && squared(station).setback - at > 0.01;
      const rates = isBetween && ratesAt(line, station, HAIR * turn);
      if (!rates) continue;
      const [told = 0, before = 0, after = 0] = rates;
      faded++;
      const near = 1e-4 * (1 + Math.abs(told)) + Math.abs(after - before);
      if (!(Math.abs(told - (before + after) / 2) < near)) {
        expect.fail(`${told} is not between ${before} and ${after} at ${station}: ${spellEnd(ask)}`);
      }
    }
  }
  expect(faded).toBeGreaterThan(40);
});

/** What the line says, and what looks to both sides say; undefined at an edge. */
function ratesAt(line: Line, station: number, hair: number): readonly number[] | undefined {
  const [before, here, after] = [line(station - hair), line(station), line(station + hair)];
  if (before.region !== here.region || after.region !== here.region) return undefined;
  return [here.slope, (here.setback - before.setback) / hair, (after.setback - here.setback) / hair];
}
