import { configureGlobal } from 'fast-check';

/**
 * What random cases are drawn from where a test names no seed of its own: the same each time, so that a run says of the code whether it is
 * right and not of the hour. SEED=clock draws others; a failure names its seed.
 */
const asked = process.env.SEED;
if (asked !== 'clock') configureGlobal({ seed: Number(asked ?? 815) });
