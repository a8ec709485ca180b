import { describe, expect, test } from 'vitest';
import { bestPattern, mostByCells, offered } from '../../src/nest/best-pattern.ts';
import type { BarPattern, Demand } from '../../src/nest/demand.ts';
import { grownPatterns } from '../../src/nest/grow-patterns.ts';
import { type Column, mix } from '../../src/nest/pattern-mix.ts';
import { wholePatterns } from '../../src/nest/whole-patterns.ts';
import { between, randomFrom, SEED } from '../outside/random-joints.ts';

/** The most that goes into a room is worth, by trying every number of every size. */
function mostByTrying(
  sizes: readonly number[],
  worth: readonly number[],
  many: readonly number[],
  room: number,
): number {
  const from = (i: number, free: number): number => {
    const size = sizes[i];
    if (size === undefined) return 0;
    const worths = Array.from({ length: (many[i] ?? 0) + 1 }, (_, n) =>
      n * size > free + 1e-9 ? 0 : n * (worth[i] ?? 0) + from(i + 1, free - n * size),
    );
    return Math.max(...worths);
  };
  return from(0, room);
}

describe(`patterns for a bar (JOINT_SEED=${SEED})`, () => {
  test('the one found is worth most by trying all, and none is worth more than is said to be proved', () => {
    const random = randomFrom(SEED + 31);
    for (let n = 0; n < 200; n++) {
      const sizes = Array.from({ length: 7 }, () => between(random, 300, 2500));
      // Worth near their lengths, where the search has least to go by, with some that are worth nothing.
      const worth = sizes.map((size) => Math.max(0, size * between(random, 0.8, 1.1) - 300));
      const many = sizes.map(() => Math.floor(between(random, 0, 4)));
      const most = mostByTrying(sizes, worth, many, 6000);
      const found = bestPattern(offered(sizes, worth, many), 6000, { pass: 0, finer: 0, steps: 1e6 });
      const worthOf = (pattern: typeof found): number =>
        pattern.sizes.reduce((sum, size, k) => sum + (worth[size] ?? 0) * (pattern.many[k] ?? 0), 0);
      expect(worthOf(found)).toBeCloseTo(most, 6);
      expect(found.ended).toBe(true);
      expect(found.most).toBeCloseTo(most, 6);
      // By cells each piece is less than a cell too short, and no more than twenty go in.
      expect(mostByCells(offered(sizes, worth, many), 6000)).toBeGreaterThanOrEqual(most - 1e-9);
      expect(mostByCells(offered(sizes, worth, many), 6000)).toBeLessThanOrEqual(
        mostByTrying(sizes, worth, many, 6000 + (20 * 6000) / 4096) + 1e-9,
      );
    }
  });
});

describe('a mix of columns', () => {
  test('meets each need at the least cost, at prices that no column undercuts', () => {
    const random = randomFrom(SEED + 32);
    for (let n = 0; n < 50; n++) {
      const needs = Array.from({ length: 8 }, () => Math.ceil(between(random, 0, 9)));
      const columns = Array.from({ length: 40 }, (): Column => {
        const rows = needs.map((_, i) => i).filter(() => random() < 0.4);
        return { cost: between(random, 1, 5), rows, gives: rows.map(() => Math.ceil(between(random, 0, 3))) };
      });
      const master = mix<Column>(needs, 1000);
      master.add(columns.slice(0, 20));
      master.solved();
      master.add(columns.slice(20));
      const { cost, prices, shares } = master.solved();
      const given = needs.map((_, row) =>
        [...shares].reduce(
          (sum, [{ rows, gives }, share]) => sum + share * (gives[rows.indexOf(row)] ?? 0),
          0,
        ),
      );
      for (const [row, need] of needs.entries()) expect(given[row]).toBeGreaterThanOrEqual(need - 1e-5);
      for (const { cost: own, rows, gives } of columns)
        expect(
          rows.reduce((sum, row, k) => sum + (prices[row] ?? 0) * (gives[k] ?? 0), 0),
        ).toBeLessThanOrEqual(own + 1e-6);
      // Weak duality: prices that no column undercuts bound every mix from below, and this one reaches the bound.
      expect(needs.reduce((sum, need, row) => sum + need * (prices[row] ?? 0), 0)).toBeCloseTo(cost, 3);
    }
  });
});

describe('patterns grownPatterns for a demand', () => {
  test('come to the optimum of a textbook mix, and to whole bars close above it', () => {
    // By hand: in a length of 10 two of 5, three of 3, or 5 + 3; 4 of size 5 and 6 of size 3 take 2 + 2 bars.
    const demand: Demand = { sizes: [5, 3], many: [4, 6], kinds: [{ length: 10, count: 99 }], kerf: 0 };
    const each: BarPattern[] = [0, 1].map((size) => ({ kind: 0, sizes: [size], many: [1] }));
    const found = grownPatterns(demand, each, 50, () => false);
    expect(found.mixed).toBeCloseTo(40, 3);
    expect(found.least).toBeLessThanOrEqual(40);
    expect(found.least).toBeCloseTo(40, 1);
    expect(wholePatterns(demand, found, 40, 0.3)).toHaveLength(4);
  });

  test('keep to what there is of a kind', () => {
    const demand: Demand = {
      sizes: [4, 6],
      many: [5, 5],
      kinds: [
        { length: 10, count: 2 },
        { length: 7, count: 99 },
      ],
      kerf: 0,
    };
    const each: BarPattern[] = [0, 1].map((size) => ({ kind: 1, sizes: [size], many: [1] }));
    const found = grownPatterns(demand, each, 50, () => false);
    const bars = wholePatterns(demand, found, 0, 0.3) ?? [];
    expect(bars.filter(({ kind }) => kind === 0).length).toBeLessThanOrEqual(2);
    // Two of 4 + 6 in the long ones; three of 4 and three of 6 are left, each in a length of its own: 2 x 10 + 6 x 7.
    expect(bars.reduce((sum, { kind }) => sum + (demand.kinds[kind]?.length ?? 0), 0)).toBe(62);
    expect(found.least).toBeLessThanOrEqual(62);
  });
});
