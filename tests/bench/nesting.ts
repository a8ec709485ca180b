import { nest } from '../../src/nest/nesting.ts';
import { randomFrom, SEED } from '../outside/random-joints.ts';
import { DRAWS, KERF } from '../shop/nesting-draws.ts';
import type { Bench, Row } from './row.ts';

const JOBS = 6;

/**
 * Two hundred blanks of many sorts against the lower bound that is printed with them. The time is the processor's, which
 * others at the same machine do not lengthen much; with it to itself a nesting takes no longer by the clock.
 */
export const bench: Bench = async () =>
  DRAWS.map(({ what, draw, stock }): Row => {
    const random = randomFrom(SEED);
    const runs = Array.from({ length: JOBS }, () => {
      const pieces = draw(random);
      const start = process.cpuUsage();
      const { bars, total, least = Number.NaN } = nest(pieces, stock, KERF);
      const { user, system } = process.cpuUsage(start);
      const ms = (user + system) / 1000;
      return { over: (total - least) / Math.max(...bars.map(({ length }) => length)), ms };
    });
    const over = Math.max(...runs.map((run) => run.over));
    const ms = Math.max(...runs.map((run) => run.ms));
    return {
      what: `200 blanks, ${what}`,
      measured: `${over.toFixed(2)} lengths over the bound, ${ms.toFixed(0)} ms of processor, at most of ${JOBS} jobs`,
      bar: 'one length, 1000 ms',
      holds: over <= 1 && ms < 1000,
    };
  });
