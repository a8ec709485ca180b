import { describe, expect, it } from 'vitest';
import { howMany } from '../count.ts';
import { dice } from '../leaf/random-tubes.ts';
import { anyJob } from './any-job.ts';
import { faultsOfJob } from './job-faults.ts';

/** `LEAF_JOBS=2000 LEAF_SEED=1 npx vitest run tests/tiler/any-job.test.ts` looks at as many as the layout is held to. */
const JOBS = howMany({ short: 3, deep: 60, asked: 'LEAF_JOBS' });
const SEED = Number(process.env.LEAF_SEED ?? 5150);

describe(`${JOBS} random jobs of every kind on every paper, LEAF_SEED=${SEED}`, () => {
  it('no word lies on a line or a word, nothing is beyond the margins, and no leaf or sheet lacks what it needs', () => {
    const roll = dice(SEED);
    const bad: string[] = [];
    for (let n = 0; n < JOBS; n += 1) {
      const job = anyJob(roll);
      const faults = faultsOfJob(job);
      if (faults.length > 0) bad.push(`job ${n} on ${job.paper.name}: ${faults.join('; ')}`);
    }
    expect(bad).toEqual([]);
  }, 3_600_000);
});
