import { expect, test } from 'vitest';
import { howMany } from '../count.ts';
import { copeUnderTest, length } from './end-under-test.ts';
import { END_KINDS, type EndKind, randomEnd, spellEnd } from './random-ends.ts';
import { between, randomFrom, SEED } from './random-joints.ts';
import { partAt, wallOf } from './solids/implicit-headers.ts';
import { landingOfLine } from './solids/implicit-solids.ts';

// What a rod feels: how far the cut stands off the header, square to its surface. Measured on solids that are no more than
// inequalities, with the header as it is; the header that is larger by the gap stands nowhere here.

const JOINTS_A_KIND = howMany({ short: 4, deep: 25 });
const STATIONS = 12;
const THROUGH = 64;

const kinds = END_KINDS.map((kind, i) => ({ kind, random: randomFrom(SEED + 71 + i) }));

function drawn({ kind, random }: (typeof kinds)[number], i: number) {
  const ask = randomEnd(random, kind, i % 2 === 0 ? 'round' : 'rectangular');
  return { ask, root: between(random, 0.5, 6), stations: Array.from({ length: STATIONS }, random) };
}

/** Half of it is the other tube's. */
function ownShare(kind: EndKind): number {
  return kind === 'mitre' ? 0.5 : 1;
}

test.each(kinds)('the gap is the same all round: $kind', (each) => {
  const worst = { outerEdge: 0, least: 0 };
  const measured = { outerEdge: 0, faces: 0 };
  for (let i = 0; i < JOINTS_A_KIND; i++) {
    const { ask, root, stations } = drawn(each, i);
    const headers = ask.parts.map((part) => partAt('A', part));
    const away = (x: number, y: number, z: number): number =>
      Math.min(...headers.map(({ solid }) => solid([x, y, z])));
    const gap = root * ownShare(each.kind);
    const { turn, at } = wallOf(ask);
    const bevel = copeUnderTest(ask, { root: length(root) });
    const square = copeUnderTest(ask, {
      root: length(root),
      preparation: { edge: 'square', from: 'outside' },
    });
    for (const station of stations.map((share) => share * turn)) {
      const touches = (depth: number): boolean =>
        headers.some((header) => landingOfLine(header, ...at(station, depth)).contact);
      if (!touches(0)) continue;
      const spelled = `station ${station}, root ${root}, ${spellEnd(ask)}`;
      expect(bevel.touching(station).contact, spelled).toBe(true);
      const outer = away(...at(station, 0), bevel.cut(station).setback);
      worst.outerEdge = Math.max(worst.outerEdge, Math.abs(outer - gap));
      expect(Math.abs(outer - gap), `outer edge at ${outer}: ${spelled}`).toBeLessThan(1e-6);
      measured.outerEdge++;
      const least = leastThrough(
        (depth) => away(...at(station, depth), square.cut(station).setback),
        ask.wall,
      );
      worst.least = Math.max(worst.least, Math.abs(least - gap));
      expect(Math.abs(least - gap), `least over the wall ${least}: ${spelled}`).toBeLessThan(1e-6);
      measured.faces++;
    }
  }
  console.info(`${each.kind}: ${JSON.stringify({ ...measured, ...worst })}`);
  expect(measured.outerEdge).toBeGreaterThan(JOINTS_A_KIND * 3);
});

/** The least over the wall: samples, and a search about the best. */
function leastThrough(away: (depth: number) => number, wall: number): number {
  const depths = Array.from({ length: THROUGH + 1 }, (_, i) => (i * wall) / THROUGH);
  const sampled = depths.map(away);
  const best = sampled.indexOf(Math.min(...sampled));
  let [low, high] = [depths[Math.max(0, best - 1)] ?? 0, depths[Math.min(THROUGH, best + 1)] ?? wall];
  while (high - low > 1e-9) {
    const [left, right] = [low + (high - low) / 3, high - (high - low) / 3];
    if (away(left) < away(right)) high = right;
    else low = left;
  }
  return Math.min(...sampled, away((low + high) / 2));
}
