import { COUNTED, COUNTED_PAPERS, shareUsed, sheetsOf } from '../print/sheet-counts.ts';
import type { Bench } from './row.ts';

/** On how many sheets each sample is printed, and what part of that paper is leaf or inked. */
export const bench: Bench = async () =>
  COUNTED_PAPERS.flatMap((paper) =>
    COUNTED.map((job) => {
      const set = sheetsOf(job, paper);
      return {
        what: `${job.name} on ${paper.name}`,
        measured: `${set.count} sheets, ${(100 * shareUsed(set)).toFixed(0)} % of them leaf or inked`,
        bar: `${job.most} sheets`,
        holds: set.count <= job.most,
      };
    }),
  );
