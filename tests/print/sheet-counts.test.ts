import { describe, expect, it } from 'vitest';
import { COUNTED, COUNTED_PAPERS, sheetsOf } from './sheet-counts.ts';

describe.each(COUNTED_PAPERS)('on $name', (paper) => {
  it.each(COUNTED)('$name takes $most sheets at the most', (job) => {
    expect(sheetsOf(job, paper).count).toBeLessThanOrEqual(job.most);
  });
});
