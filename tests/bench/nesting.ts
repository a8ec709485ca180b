import { nest } from '../../src/shop/nesting.ts';
import { between, randomFrom, SEED } from '../outside/random-joints.ts';
import type { Bench, Row } from './row.ts';

const JOBS = 8;
const KERF = 3;
const LONGEST = 6000;

/** Blanks of 200 mm to so much, nested into 6 m, and into 6 m, 3 m and 2.4 m. */
const KINDS = [
  [{ length: LONGEST, count: 999 }],
  [
    { length: LONGEST, count: 999 },
    { length: 3000, count: 30 },
    { length: 2400, count: 30 },
  ],
];

/** Two hundred blanks against the lower bound that is printed with them. */
export const bench: Bench = async () =>
  [2000, 3000].flatMap((longest) =>
    KINDS.map((kinds): Row => {
      const random = randomFrom(SEED);
      const runs = Array.from({ length: JOBS }, () => {
        const pieces = Array.from({ length: 200 }, () => between(random, 200, longest));
        const start = performance.now();
        const { total, least = 0 } = nest(pieces, kinds, KERF);
        return { over: (total - least) / LONGEST, ms: performance.now() - start };
      });
      const over = Math.max(...runs.map((run) => run.over));
      const ms = Math.max(...runs.map((run) => run.ms));
      return {
        what: `200 blanks up to ${longest} mm into ${kinds.map(({ length }) => `${length / 1000} m`).join(', ')}`,
        measured: `${over.toFixed(2)} lengths over the bound, ${ms.toFixed(0)} ms, at most of ${JOBS} jobs`,
        bar: 'one length, 1000 ms',
        holds: over <= 1 && ms < 1000,
      };
    }),
  );
