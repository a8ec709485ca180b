import { type Nesting, nest } from '../../src/nest/nesting.ts';
import { DRAWS, KERF, MANY, MOST_OVER, overBound } from '../nest/draws.ts';
import { randomFrom, SEED } from '../outside/random-joints.ts';
import type { Bench, Row } from './row.ts';

const JOBS = 6;

/** With many blanks the time is what counts: how near the bound they come is measured all the same. */
const BARS = [
  { draws: DRAWS, most: MOST_OVER },
  { draws: MANY, most: Number.POSITIVE_INFINITY },
];

/**
 * Two hundred blanks of many sorts, and two thousand, against the lower bound that is printed with them. The time is the
 * processor's, which others at the same machine do not lengthen much; with it to itself a nesting takes no longer by the
 * clock.
 */
export const bench: Bench = async () =>
  BARS.flatMap(({ draws, most }) =>
    draws.map(({ what, draw, stock }): Row => {
      const random = randomFrom(SEED);
      const runs = Array.from({ length: JOBS }, () => {
        const blanks = draw(random);
        const start = process.cpuUsage();
        const nesting: Nesting = nest(blanks, stock, KERF);
        const { user, system } = process.cpuUsage(start);
        return { over: overBound(nesting), ms: (user + system) / 1000 };
      });
      const over = Math.max(...runs.map((run) => run.over));
      const ms = Math.max(...runs.map((run) => run.ms));
      return {
        what: `blanks nested: ${what}`,
        measured: `${(100 * over).toFixed(1)} % over the bound beyond one length, ${ms.toFixed(0)} ms of processor, at most of ${JOBS} jobs`,
        bar: most < 1 ? `${100 * most} %, 1000 ms` : '1000 ms',
        holds: over <= most && ms < 1000,
      };
    }),
  );
