import type { StockKind } from '../../src/nest/demand.ts';
import type { Nesting } from '../../src/nest/nesting.ts';
import { between, type Random } from '../outside/random-joints.ts';

/** What a cut takes, mm. */
export const KERF = 3;

const ENOUGH = 999;

/** 200 blanks and stock of many sorts: few to a bar and many, long beside short, a few sizes only, stock that runs short. */
export const DRAWS: readonly Draw[] = [
  { what: '0.2 to 3 m in 6 m', draw: uniform(200, 3000), stock: [{ length: 6000, count: ENOUGH }] },
  { what: '1.5 to 3.05 m in 6 m', draw: uniform(1500, 3050), stock: [{ length: 6000, count: ENOUGH }] },
  { what: '0.2 to 5.9 m in 6 m', draw: uniform(200, 5900), stock: [{ length: 6000, count: ENOUGH }] },
  { what: '1.2 to 2.1 m in 6 m', draw: uniform(1200, 2100), stock: [{ length: 6000, count: ENOUGH }] },
  {
    what: '1 to 3.5 m in three lengths',
    draw: uniform(1000, 3500),
    stock: [
      { length: 6000, count: ENOUGH },
      { length: 3000, count: ENOUGH },
      { length: 2400, count: ENOUGH },
    ],
  },
  {
    what: '1 to 3.5 m in three longer ones',
    draw: uniform(1000, 3500),
    stock: [
      { length: 7300, count: ENOUGH },
      { length: 6000, count: ENOUGH },
      { length: 4100, count: ENOUGH },
    ],
  },
  {
    what: '0.25 to 3 m, twelve short lengths',
    draw: uniform(250, 3000),
    stock: [
      { length: 6000, count: ENOUGH },
      { length: 2400, count: 12 },
    ],
  },
  {
    what: '0.3 to 2.3 m, few long lengths',
    draw: uniform(300, 2300),
    stock: [
      { length: 6000, count: 30 },
      { length: 4000, count: 20 },
      { length: 2400, count: ENOUGH },
    ],
  },
  {
    what: '0.9 to 2.9 m, fewer long lengths',
    draw: uniform(900, 2900),
    stock: [
      { length: 7300, count: 5 },
      { length: 6000, count: 20 },
      { length: 3000, count: 300 },
    ],
  },
  { what: 'eight sizes', draw: someSizes(8, 400, 3000), stock: [{ length: 6000, count: ENOUGH }] },
  {
    what: 'twenty-five sizes in two lengths',
    draw: someSizes(25, 700, 3400),
    stock: [
      { length: 6000, count: ENOUGH },
      { length: 3000, count: ENOUGH },
    ],
  },
  { what: 'threes that fill a length', draw: threes, stock: [{ length: 6000, count: ENOUGH }] },
];

/** As many as a large job has. */
export const MANY: readonly Draw[] = [
  {
    what: '2,000, 0.25 to 1.9 m in 6 m',
    draw: uniform(250, 1900, 2000),
    stock: [{ length: 6000, count: ENOUGH }],
  },
  {
    what: '2,000, 0.2 to 2.4 m in three lengths',
    draw: uniform(200, 2400, 2000),
    stock: [
      { length: 6000, count: ENOUGH },
      { length: 4100, count: ENOUGH },
      { length: 2400, count: ENOUGH },
    ],
  },
  {
    what: '2,000, 1.5 to 3.05 m in 6 m',
    draw: uniform(1500, 3050, 2000),
    stock: [{ length: 6000, count: ENOUGH }],
  },
];

/**
 * What a nesting takes over its lower bound, as a part of it. One length is let off: the bound is short of a whole one in
 * many jobs where no nesting takes less.
 */
export function overBound({ bars, total, lowerBound = Number.NaN }: Nesting): number {
  const longest = Math.max(...bars.map(({ length }) => length));
  return Math.max(0, total - lowerBound - longest) / lowerBound;
}

/** How much that may be. In none of 300 draws of these sorts was it over 3.3 %: with few sizes the bound is at its weakest. */
export const MOST_OVER = 0.05;

export interface Draw {
  readonly what: string;
  readonly draw: (random: Random) => readonly number[];
  readonly stock: readonly StockKind[];
}

/** To a tenth of a millimetre, as a tape and a saw have it. */
function tenths(value: number): number {
  return Math.round(value * 10) / 10;
}

function uniform(low: number, high: number, many = 200): Draw['draw'] {
  return (random) => Array.from({ length: many }, () => tenths(between(random, low, high)));
}

function someSizes(many: number, low: number, high: number): Draw['draw'] {
  return (random) => {
    const sizes = Array.from({ length: many }, () => tenths(between(random, low, high)));
    return Array.from({ length: 200 }, () => sizes[Math.floor(random() * many)] ?? low);
  };
}

function threes(random: Random): readonly number[] {
  return Array.from({ length: 66 }, () => {
    const [first, second] = [tenths(between(random, 1500, 2400)), tenths(between(random, 1500, 2400))];
    return [first, second, tenths(6000 - 2 * KERF - first - second)];
  }).flat();
}
