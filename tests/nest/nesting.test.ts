import { describe, expect, test } from 'vitest';
import type { StockKind } from '../../src/nest/demand.ts';
import { weightsOf } from '../../src/nest/lower-bound.ts';
import { nest } from '../../src/nest/nesting.ts';
import { howMany } from '../count.ts';
import { between, type Random, randomFrom, SEED } from '../outside/random-joints.ts';
import { DRAWS, KERF, MOST_OVER, overBound } from './draws.ts';

/** What is wrong with a nesting, told from what was asked and from nothing of how it was found. */
function faults(
  pieces: readonly number[],
  kinds: readonly StockKind[],
  kerf: number,
  { bars, left, total }: ReturnType<typeof nest>,
): string[] {
  const placed = [...bars.flatMap((bar) => bar.blanks), ...left].sort((a, b) => a - b);
  const found: string[] = [];
  if (placed.join() !== pieces.map((_, i) => i).join()) found.push('a piece is lost or doubled');
  for (const { length, blanks: own, offcut } of bars) {
    const used = own.reduce((sum, piece) => sum + (pieces[piece] ?? 0), 0);
    if (used + (own.length - 1) * kerf > length + 1e-6) found.push(`${used} and cuts in ${length}`);
    if (Math.abs(Math.max(0, length - used - own.length * kerf) - offcut) > 1e-6)
      found.push('a wrong offcut');
  }
  for (const { length } of kinds) {
    const have = kinds.reduce((sum, kind) => sum + (kind.length === length ? kind.count : 0), 0);
    if (bars.filter((bar) => bar.length === length).length > have)
      found.push(`more than ${have} of ${length}`);
  }
  if (Math.abs(bars.reduce((sum, bar) => sum + bar.length, 0) - total) > 1e-6) found.push('a wrong total');
  return found;
}

/** The least stock that holds all pieces, by trying every bar for every piece; infinite where none does. */
function leastByTrying(pieces: readonly number[], lengths: readonly number[], kerf: number): number {
  let least = Number.POSITIVE_INFINITY;
  const free = lengths.map((length) => length + kerf);
  const place = (n: number): void => {
    const size = pieces[n];
    if (size === undefined) {
      const taken = lengths.filter((length, i) => (free[i] ?? 0) < length + kerf - 1e-9);
      least = Math.min(
        least,
        taken.reduce((sum, length) => sum + length, 0),
      );
      return;
    }
    for (const [i, room] of free.entries()) {
      if (room < size + kerf - 1e-9) continue;
      free[i] = room - size - kerf;
      place(n + 1);
      free[i] = room;
    }
  };
  place(0);
  return least;
}

/** The stock that is taken where each piece, the longest first, goes into the first bar with room, else into the longest. */
function byFirstFit(pieces: readonly number[], kinds: readonly StockKind[], kerf: number): number {
  const rack = kinds
    .flatMap(({ length, count }) => Array.from({ length: Math.min(count, pieces.length) }, () => length))
    .sort((a, b) => b - a);
  const free = rack.map((length) => length + kerf);
  for (const piece of pieces.toSorted((a, b) => b - a)) {
    const bar = free.findIndex((room) => room >= piece + kerf);
    if (bar < 0) return Number.POSITIVE_INFINITY;
    free[bar] = (free[bar] ?? 0) - piece - kerf;
  }
  return rack.reduce((sum, length, i) => sum + ((free[i] ?? 0) < length + kerf ? length : 0), 0);
}

/** Lengths beyond those that were cut up, so that no piece is left without. */
const SPARE = 5;

/** How many draws of each sort; `npm run bench` takes more. */
const EACH = howMany({ short: 1, deep: 2 });

describe(`blanks nested into stock (JOINT_SEED=${SEED})`, () => {
  test.each(DRAWS)(
    '200 of them come within a length and a twentieth of the bound, and take no more than first fit: $what',
    ({ draw, stock }) => {
      const random = randomFrom(SEED + 21);
      for (let n = 0; n < EACH; n++) {
        const pieces = draw(random);
        const nesting = nest(pieces, stock, KERF);
        expect(faults(pieces, stock, KERF, nesting)).toEqual([]);
        expect(nesting.left).toEqual([]);
        expect(nesting.lowerBound).toBeLessThanOrEqual(nesting.total + 1e-6);
        expect(overBound(nesting)).toBeLessThanOrEqual(MOST_OVER);
        expect(nesting.total).toBeLessThanOrEqual(byFirstFit(pieces, stock, KERF) + 1e-6);
      }
    },
  );

  test.each([
    ['one length', [[6000, 60]], 4],
    ['more sizes than are told apart', [[6000, 180]], 3],
    [
      'two lengths',
      [
        [6000, 40],
        [4100, 20],
      ],
      3,
    ],
    [
      'three lengths, all that there is',
      [
        [7300, 20],
        [6000, 20],
        [2400, 20],
      ],
      3,
    ],
  ] as const)('the bound is no more than what pieces were cut from: %s', (_, bars, most) => {
    const random = randomFrom(SEED + 26);
    const cut = bars.flatMap(([length, count]) => Array.from({ length: count }, () => length));
    // Cut up at random, with nothing left but the kerf, so that they are known to go back into these bars.
    const pieces = cut.flatMap((length) => {
      const many = 1 + Math.floor(random() * most);
      const shares = Array.from({ length: many }, () => between(random, 0.4, 1));
      const room = length - (many - 1) * KERF;
      return shares.map((share) => (share / shares.reduce((a, b) => a + b, 0)) * room);
    });
    const stock = bars.map(([length, count]) => ({ length, count: count + SPARE }));
    const mixed = pieces.toSorted((a, b) => (a % 97) - (b % 97));
    expect(nest(mixed, stock, KERF).lowerBound).toBeLessThanOrEqual(cut.reduce((a, b) => a + b, 0) + 1e-6);
  });

  test.each([
    [
      'three lengths',
      [
        [3000, 3],
        [2400, 2],
        [1300, 1],
      ],
      (random: Random) => Math.round(between(random, 200, 2300)),
    ],
    ['one length, long pieces', [[3000, 6]], (random: Random) => between(random, 900, 1600)],
    [
      'two lengths, three sizes',
      [
        [3000, 2],
        [2000, 4],
      ],
      (random: Random) => 600 + 317 * Math.floor(3 * random()),
    ],
  ] as const)(
    'no nesting of a few pieces takes less than the bound, and the one found is the best by trying all, but one in sixty at most: %s',
    (_, bars, piece) => {
      let missed = 0;
      const random = randomFrom(SEED + 22);
      const kinds = bars.map(([length, count]) => ({ length, count }));
      const lengths = bars.flatMap(([length, count]) => Array.from({ length: count }, () => length));
      for (let n = 0; n < howMany({ short: 6, deep: 60 }); n++) {
        const pieces = Array.from({ length: 6 }, () => piece(random));
        const nesting = nest(pieces, kinds, KERF);
        const least = leastByTrying(pieces, lengths, KERF);
        expect(faults(pieces, kinds, KERF, nesting)).toEqual([]);
        expect(nesting.left.length > 0).toBe(least === Number.POSITIVE_INFINITY);
        if (nesting.left.length > 0) continue;
        expect(nesting.lowerBound, `${pieces}`).toBeLessThanOrEqual(least + 1e-6);
        if (nesting.total > least + 1e-6) missed++;
        expect(nesting.total, `${pieces}`).toBeLessThanOrEqual(1.2 * least);
      }
      expect(missed).toBeLessThanOrEqual(1);
    },
  );

  test('gives the same nesting again', () => {
    const random = randomFrom(SEED + 23);
    const pieces = Array.from({ length: 60 }, () => between(random, 300, 2500));
    const kinds = [{ length: 6000, count: 40 }];
    expect(nest(pieces, kinds, KERF)).toEqual(nest(pieces, kinds, KERF));
  });

  test('counts the kerf of every cut, and none after the last piece that ends the bar', () => {
    const bars = (piece: number): number =>
      nest([piece, piece, piece], [{ length: 6000, count: 9 }], 3).bars.length;
    // Three pieces and two cuts: 3 x 1998 + 2 x 3 = 6000.
    expect([bars(1998), bars(1998.1)]).toEqual([1, 2]);
  });

  test('says what finds no stock: what is too long, and what there is not enough for', () => {
    const nesting = nest([6500, 2000, 2000, 2000, 2000], [{ length: 6000, count: 1 }], KERF);
    expect(nesting.left.length).toBe(3);
    expect(nesting.left).toContain(0);
    expect(nesting.lowerBound).toBeUndefined();
  });

  test('stock that is just enough is enough', () => {
    const random = randomFrom(SEED + 25);
    for (let n = 0; n < howMany({ short: 6, deep: 40 }); n++) {
      // Four lengths cut up at random, the pieces mixed: they go back into the four.
      const cuts = Array.from({ length: 4 }, () => {
        const first = Math.round(between(random, 500, 1500));
        const second = Math.round(between(random, 500, 1500));
        return [first, second, 4000 - first - second - 2 * KERF];
      });
      const pieces = cuts.flat().sort((a, b) => (a % 97) - (b % 97));
      const nesting = nest(pieces, [{ length: 4000, count: 4 }], KERF);
      expect(faults(pieces, [{ length: 4000, count: 4 }], KERF, nesting)).toEqual([]);
      expect(nesting.left, `${pieces}`).toEqual([]);
    }
  });

  test('two thousand blanks are nested too, within one length of the bound', () => {
    const random = randomFrom(SEED + 24);
    const pieces = Array.from({ length: 2000 }, () => Math.round(between(random, 250, 1900)));
    const kinds = [{ length: 6000, count: 999 }];
    const nesting = nest(pieces, kinds, KERF);
    expect(faults(pieces, kinds, KERF, nesting)).toEqual([]);
    expect(nesting.total - (nesting.lowerBound ?? Number.NaN)).toBeLessThanOrEqual(6000);
  });

  test('four hundred that hardly go three into a length come within one length in a hundred', () => {
    const random = randomFrom(SEED + 27);
    const pieces = Array.from({ length: 400 }, () => between(random, 1500, 3050));
    const kinds = [{ length: 6000, count: 999 }];
    const nesting = nest(pieces, kinds, KERF);
    const least = nesting.lowerBound ?? Number.NaN;
    expect(faults(pieces, kinds, KERF, nesting)).toEqual([]);
    expect(nesting.total - least).toBeLessThanOrEqual(0.01 * least + 6000);
  });

  test('of nothing is nothing', () => {
    expect(nest([], [{ length: 6000, count: 1 }], KERF)).toMatchObject({ bars: [], left: [], total: 0 });
  });
});

describe('the lower bound', () => {
  test.each([
    ['what comes to more than two lengths', [5, 5, 5, 5, 1], 10, 3],
    ['pieces over half a length, one in each', [6, 6, 6, 6], 10, 4],
    ['what has no room beside large ones', [7, 7, 7, 4, 4, 4], 10, 5],
    ['what fits beside large ones', [7, 7, 7, 3, 3, 3], 10, 3],
    ['pieces of which no more than two go into one', [4, 4, 4, 4, 4, 4, 4], 10, 4],
    ['short ones that make room for no third long one', [3.2, 3.2, 3.2, 4.5, 4.5, 4.5, 4.5], 10, 3],
    ['pieces that never fill a length', [3, 3, 3, 6, 6, 6, 6, 9, 9], 10, 6],
  ])('is met by %s', (_, pieces, length, many) => {
    expect(nest(pieces, [{ length, count: 99 }], 0).lowerBound).toBeCloseTo(many * length, 6);
  });

  test('counts the lengths that there are', () => {
    const kinds = [
      { length: 10, count: 1 },
      { length: 7, count: 9 },
    ];
    // 6 + 4 fill the one of 10; 6 and 4 + 3 take one of 7 each.
    expect(nest([6, 4, 6, 4, 3], kinds, 0)).toMatchObject({ total: 24, lowerBound: 24 });
  });

  test('weighs what lies in a bar no heavier than its room', () => {
    const random = randomFrom(SEED + 28);
    for (let n = 0; n < 40; n++) {
      const sizes = Array.from({ length: 5 }, () => between(random, 300, 5900));
      for (const weight of weightsOf(6003, sizes)) {
        // Of the sizes themselves too: there the weights have their steps.
        const lengths = [...sizes, ...Array.from({ length: 10 }, () => between(random, 0, 6003))];
        const heavier = lengths.flatMap((a) =>
          lengths
            .filter((b) => a + b <= 6003 && weight(a) + weight(b) > weight(a + b) + 1e-9)
            .map((b) => [a, b]),
        );
        expect(heavier).toEqual([]);
        expect(weight(6003)).toBeCloseTo(1, 9);
      }
    }
  });
});
