import { expect, test } from 'vitest';
import { dihedralsOf } from '../../src/fit/dihedrals.ts';
import { howMany } from '../count.ts';
import type { AskedEnd } from '../outside/asked-end.ts';
import { copeUnderTest } from '../outside/end-under-test.ts';
import { randomEnd, spellEnd } from '../outside/random-ends.ts';
import { randomFrom, SEED } from '../outside/random-joints.ts';
import { wallOf } from '../outside/solids/implicit-headers.ts';

const degrees = 180 / Math.PI;

function rectangularOnRound(
  [wide, deep, corner, wall]: readonly [number, number, number, number],
  od: number,
  angle: number,
  offset: number,
): AskedEnd {
  const header = { kind: 'round', radius: od / 2 } as const;
  return {
    tube: { kind: 'rectangular', wide, deep, corner },
    wall,
    parts: [{ header, angle: angle / degrees, clock: 0, offset, shift: 0 }],
  };
}

// Computed by a second program, which was told of none of this.
const GRAZED = [
  { ask: rectangularOnRound([80.3096, 87.124, 6.61169, 2.86021], 71.0087, 79.2286, 0), most: 107.4245 },
  { ask: rectangularOnRound([99.5703, 71.3321, 15.1214, 7.4246], 72.6303, 79.6876, 17.0697), most: 154.5797 },
];

test.each(GRAZED)('just inside a graze on a corner of the tube the most is found: $most', ({ ask, most }) => {
  expect((dihedralsOf(copeUnderTest(ask))?.most.angle ?? 0) * degrees).toBeCloseTo(most, 4);
});

// cos psi = cos(theta) nx sqrt(1 - q^2) - ny q, q = (y - e)/R, with the outline's normal at clock 0 (x towards the heel):
// the definition, written out for a straight round header.
test('no sample of the outline, however near a graze, lies beyond the least and the most that are told', () => {
  const random = randomFrom(SEED + 83);
  for (let i = 0; i < howMany({ short: 60, deep: 2000 }); i++) {
    const ask = randomEnd(random, 'round', 'rectangular');
    const told = dihedralsOf(copeUnderTest(ask));
    const sampled = sampledCorners(ask);
    const spelled = spellEnd(ask);
    // One whose corners alone would reach the header, and are round, touches nothing.
    if (sampled.least === Number.POSITIVE_INFINITY && told === undefined) continue;
    expect((told?.least.angle ?? Number.NaN) * degrees, spelled).toBeLessThan(sampled.least + 1e-5);
    expect((told?.most.angle ?? Number.NaN) * degrees, spelled).toBeGreaterThan(sampled.most - 1e-5);
  }
});

const STATIONS = 4000;

function sampledCorners(ask: AskedEnd): { readonly least: number; readonly most: number } {
  const { tube, parts } = ask;
  const [{ header, angle, clock, offset }] = parts;
  if (tube.kind !== 'rectangular' || header.kind !== 'round') throw new Error('drawn of other kinds');
  const { turn, at } = wallOf(ask);
  const deep = tube.corner > 0 ? tube.corner / 2 : 0.001;
  const insideOf = (station: number): readonly [number, number] => {
    const [[x, y], [inX, inY]] = [at(station, 0), at(station, deep)];
    return [(x - inX) / deep, (y - inY) / deep];
  };
  const isFold = (station: number): boolean => {
    const [[x, y], [nextX, nextY]] = [insideOf(station - 2 * deep), insideOf(station + 2 * deep)];
    return Math.hypot(x - nextX, y - nextY) > 0.1;
  };
  const cornerAt = (station: number): number | undefined => {
    const [[x, y], [inX, inY]] = [at(station, 0), at(station, deep)];
    const [nx, ny] = [(x - inX) / deep, (y - inY) / deep];
    const q = (y * Math.cos(clock) - x * Math.sin(clock) - offset) / header.radius;
    if (Math.abs(q) > 1) return undefined;
    // At a sharp corner, and within the reach of its way in, there is no one normal.
    if (Math.abs(Math.hypot(nx, ny) - 1) > 1e-9 || (tube.corner === 0 && isFold(station))) return undefined;
    const towards = nx * Math.cos(clock) + ny * Math.sin(clock);
    const past = ny * Math.cos(clock) - nx * Math.sin(clock);
    const cosine = Math.cos(angle) * towards * Math.sqrt(1 - q * q) - past * q;
    return Math.acos(Math.min(1, Math.max(-1, cosine))) * degrees;
  };
  const ring = Array.from({ length: STATIONS }, (_, i) => (i * turn) / STATIONS);
  const grazes = ring.flatMap((from) => {
    const touched = cornerAt(from) !== undefined;
    if ((cornerAt(from + turn / STATIONS) !== undefined) === touched) return [];
    let [low, high] = [from, from + turn / STATIONS];
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2;
      if ((cornerAt(middle) !== undefined) === touched) low = middle;
      else high = middle;
    }
    const ways = Array.from({ length: 400 }, (_, i) => ((touched ? -1 : 1) * turn) / STATIONS / 1.05 ** i);
    return ways.map((way) => low + way);
  });
  const corners = [...ring, ...grazes].flatMap((station) => cornerAt(station) ?? []);
  return { least: Math.min(...corners), most: Math.max(...corners) };
}
