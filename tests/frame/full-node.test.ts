import { expect, test, vi } from 'vitest';
import { someOf } from '../count.ts';
import { between, randomFrom } from '../outside/random-joints.ts';
import type { Place } from './ray-march.ts';
import { dotOf } from './ray-march.ts';
import { readLines } from './read-lines.ts';

/** Ways from one point, drawn at random, that keep 40 degrees from each other and 25 from lying in line. */
function waysOf(count: number, seed: number): readonly Place[] {
  const random = randomFrom(seed);
  const ways: Place[] = [];
  while (ways.length < count) {
    const height = between(random, -1, 1);
    const turn = between(random, 0, 2 * Math.PI);
    const flat = Math.sqrt(1 - height * height);
    const way: Place = [flat * Math.cos(turn), flat * Math.sin(turn), height];
    if (ways.every((each) => dotOf(each, way) < 0.766 && dotOf(each, way) > -0.9)) ways.push(way);
  }
  return ways;
}

/** How many square roots are taken while a node of these is read: where a line enters a round header is told by one. */
function entriesOf(ways: readonly Place[]): number {
  const points = Object.fromEntries(
    ways.map((way, i) => [`p${i}`, `[${way.map((each) => (600 * each).toFixed(3)).join(', ')}]`]),
  );
  const roots = vi.spyOn(Math, 'sqrt');
  try {
    readLines(
      { o: '[0, 0, 0]', ...points },
      ways.map((_, i) => `name: t${i}, along: [o, p${i}], od: 30, wall: 2`),
    );
    return roots.mock.calls.length;
  } finally {
    roots.mockRestore();
  }
}

/** At most so many lines of a tube's wall are asked of each header: 720 round it, at three depths. */
const LINES = 3 * 720;

test.each(someOf([1, 2, 3], { short: 1 }))(
  'eight tubes in a node are read with few entries for each line and header, drawn as %i',
  (seed) => {
    const ways = waysOf(8, seed);
    const pairs = (ways.length * (ways.length - 1)) / 2;
    const entered = entriesOf(ways);
    expect(entered).toBeGreaterThan(LINES);
    expect(entered / (pairs * LINES)).toBeLessThan(25);
  },
  60_000,
);
