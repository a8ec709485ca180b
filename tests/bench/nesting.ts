import { nest } from '../../src/shop/nesting.ts';
import { randomFrom, SEED } from '../outside/random-joints.ts';
import { DRAWS, KERF } from '../shop/nesting-draws.ts';
import type { Bench, Row } from './row.ts';

const JOBS = 6;

/** Two hundred blanks of many sorts against the lower bound that is printed with them. */
export const bench: Bench = async () =>
  DRAWS.map(({ what, draw, stock }): Row => {
    const random = randomFrom(SEED);
    const runs = Array.from({ length: JOBS }, () => {
      const pieces = draw(random);
      const start = performance.now();
      const { bars, total, least = Number.NaN } = nest(pieces, stock, KERF);
      const ms = performance.now() - start;
      return { over: (total - least) / Math.max(...bars.map(({ length }) => length)), ms };
    });
    const over = Math.max(...runs.map((run) => run.over));
    const ms = Math.max(...runs.map((run) => run.ms));
    return {
      what: `200 blanks, ${what}`,
      measured: `${over.toFixed(2)} lengths over the bound, ${ms.toFixed(0)} ms, at most of ${JOBS} jobs`,
      bar: 'one length, 1000 ms',
      holds: over <= 1 && ms < 1000,
    };
  });
