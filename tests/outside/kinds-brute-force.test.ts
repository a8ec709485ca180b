import { describe, expect, test } from 'vitest';
import { howMany } from '../count.ts';
import type { AskedEnd } from './asked-end.ts';
import { type EndUnderTest, endUnderTest } from './end-under-test.ts';
import { END_KINDS, type EndKind, randomEnd, spellEnd } from './random-ends.ts';
import { between, type Random, randomFrom, SEED } from './random-joints.ts';
import { landingOnAll, partAt, wallOf } from './solids/implicit-headers.ts';
import type { EndName, Header, Landing } from './solids/implicit-solids.ts';

// Every kind of header, on round and rectangular tube, against solids as inequalities (implicit-headers.ts): each line
// of the wall is followed until it is inside. No formula is shared with the program.

const ENDS_A_KIND = howMany({ short: 10, deep: 16 });
const STATIONS = 12;
const AGREE = 1e-6;
/** A line that this much sideways would move by more than AGREE, or off the header, is at a graze or a step. */
const SIDEWAYS = 1e-8;

interface Tally {
  compared: number;
  missed: number;
  crests: number;
  sideLimits: number;
  worst: number;
}

describe(`random ends agree with the brute force at A and B (JOINT_SEED=${SEED})`, () => {
  const cases = END_KINDS.flatMap((kind) => [
    { kind, tube: 'round' as const },
    { kind, tube: 'rectangular' as const },
  ]);
  test.each(cases)('$tube tube on $kind: outside, inside, square', ({ kind, tube }) => {
    const random = randomFrom(SEED + END_KINDS.indexOf(kind) * 2 + (tube === 'round' ? 0 : 1));
    const tally: Tally = { compared: 0, missed: 0, crests: 0, sideLimits: 0, worst: 0 };
    for (let i = 0; i < ENDS_A_KIND; i++) {
      const ask = randomEnd(random, kind, tube);
      for (const end of ['A', 'B'] as const) compareEnd(ask, end, random, tally);
    }
    const { compared, missed, crests, sideLimits, worst } = tally;
    console.info(
      `${tube} on ${kind}, seed ${SEED}: ${compared} setbacks, ${missed} on the trim plane, ${crests} crests inside ` +
        `the wall, ${sideLimits} on a limit, worst ${worst.toExponential(2)} mm apart`,
    );
    expect(compared).toBeGreaterThan(ENDS_A_KIND * STATIONS * 4);
    expect(sideLimits).toBeLessThan(compared / 100);
    expectHard(kind, tube, tally);
  });
});

/** The draw held what is hard. */
function expectHard(kind: EndKind, tube: AskedEnd['tube']['kind'], { missed, crests }: Tally): void {
  if (kind === 'plate' || kind === 'mitre') {
    expect(missed).toBe(0);
    // The way through a wall bends where a corner is less round than the wall is thick.
    if (tube === 'round') expect(crests).toBe(0);
  } else {
    // A union is seldom missed altogether.
    if (kind !== 'union') expect(missed).toBeGreaterThan(0);
    expect(crests).toBeGreaterThan(0);
  }
}

function compareEnd(ask: AskedEnd, end: EndName, random: Random, tally: Tally): void {
  const headers = ask.parts.map((part) => partAt(end, part));
  const ours = endUnderTest(ask);
  const { turn, at } = wallOf(ask);
  for (let i = 0; i < STATIONS; i++) {
    const station = between(random, 0, turn);
    const line = (depth: number): [number, number] => [...at(station, depth)];
    const what = `end ${end}, station ${station}, ${spellEnd(ask)}`;
    const outer = compareLine(headers, line(0), ours.outside(station), `outside, ${what}`, tally);
    const inner = compareLine(headers, line(ask.wall), ours.inside(station), `inside, ${what}`, tally);
    if (i % 2 > 0) continue;
    compareSquare(ask, headers, line, ours, station, Math.max(outer, inner), what, tally);
  }
}

function compareLine(
  headers: readonly Header[],
  [x, y]: [number, number],
  ours: Landing,
  what: string,
  tally: Tally,
): number {
  const brute = landingOnAll(headers, x, y);
  const apart = Math.abs(brute.setback - ours.setback);
  if (apart <= AGREE && brute.contact === ours.contact) {
    tally.compared++;
    tally.worst = Math.max(tally.worst, apart);
    if (!brute.contact) tally.missed++;
  } else if (onBrink(headers, x, y, ours)) tally.sideLimits++;
  else expect.fail(`${JSON.stringify(ours)} is not ${JSON.stringify(brute)}: ${what}`);
  return brute.setback;
}

/** Does a line beside this one land as ours did? Then ours is the other side of a step, or of a graze's root. */
function onBrink(headers: readonly Header[], x: number, y: number, ours: Landing): boolean {
  const beside = [0, 1, 2, 3].map((quarter) => {
    const way = (quarter * Math.PI) / 2;
    return landingOnAll(headers, x + SIDEWAYS * Math.cos(way), y + SIDEWAYS * Math.sin(way));
  });
  const same = beside.filter(({ contact }) => contact === ours.contact).map(({ setback }) => setback);
  const here = landingOnAll(headers, x, y);
  if (here.contact === ours.contact) same.push(here.setback);
  return (
    same.length > 0 && ours.setback >= Math.min(...same) - AGREE && ours.setback <= Math.max(...same) + AGREE
  );
}

function compareSquare(
  ask: AskedEnd,
  headers: readonly Header[],
  line: (depth: number) => [number, number],
  ours: EndUnderTest,
  station: number,
  faces: number,
  what: string,
  tally: Tally,
): void {
  const deepest = deepestThrough((depth) => landingOnAll(headers, ...line(depth)).setback, ask.wall);
  const square = ours.square(station);
  const apart = Math.abs(deepest - square.setback);
  if (apart <= AGREE) {
    tally.compared++;
    tally.worst = Math.max(tally.worst, apart);
    if (deepest > faces + 10 * AGREE) tally.crests++;
  } else if (
    brinksThrough(headers, line, ask.wall).some((depth) => onBrink(headers, ...line(depth), square))
  ) {
    tally.sideLimits++;
  } else expect.fail(`square ${square.setback} is not ${deepest}: ${what}`);
}

/** The depths at which a line of the wall lands differently from its neighbour, and both faces of the wall. */
function brinksThrough(
  headers: readonly Header[],
  line: (depth: number) => [number, number],
  wall: number,
): readonly number[] {
  const touched = (depth: number): string =>
    headers.map((header) => landingOnAll([header], ...line(depth)).contact).join();
  const samples = Array.from({ length: 10 * THROUGH + 1 }, (_, i) => (i * wall) / (10 * THROUGH));
  const sideLimits = samples.slice(1).flatMap((depth, i) => {
    let [low, high] = [samples[i] ?? 0, depth];
    if (touched(low) === touched(high)) return [];
    while (high - low > 1e-13) {
      const middle = (low + high) / 2;
      if (middle <= low || middle >= high) break;
      if (touched(middle) === touched(low)) low = middle;
      else high = middle;
    }
    return [low, high];
  });
  return [0, wall, ...sideLimits];
}

const THROUGH = 24;

/** The highest of a function through the wall: samples, and about each hill of them a closer look. */
function deepestThrough(height: (depth: number) => number, wall: number): number {
  const samples = Array.from({ length: THROUGH + 1 }, (_, i) => height((i * wall) / THROUGH));
  const highest = Math.max(...samples);
  const step = wall / THROUGH;
  const tops = samples.map((here, i) => {
    const [before, after] = [samples[i - 1] ?? here, samples[i + 1] ?? here];
    if (here < before || here < after || here + 2 * (here - Math.min(before, after)) < highest) return here;
    return topBetween(height, Math.max(0, (i - 1) * step), Math.min(wall, (i + 1) * step));
  });
  return Math.max(...tops);
}

/** Looks ever closer about the best of a few samples: a step beside the top is no trouble. */
function topBetween(height: (depth: number) => number, from: number, to: number): number {
  let [low, high, best] = [from, to, Number.NEGATIVE_INFINITY];
  while (high - low > 1e-8) {
    const step = (high - low) / 8;
    const heights = Array.from({ length: 9 }, (_, i) => height(low + i * step));
    const top = Math.max(...heights);
    const at = low + heights.indexOf(top) * step;
    best = Math.max(best, top);
    [low, high] = [Math.max(low, at - step), Math.min(high, at + step)];
  }
  return best;
}
