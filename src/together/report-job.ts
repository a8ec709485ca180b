import { besideIn } from '../fit/beside.ts';
import { reportTube, type TubeReport } from '../fit/report.ts';
import type { Job } from '../job/job.ts';
import { solvePieces } from './pieces.ts';

/** Checks every tube of a job as it is made, each opposite hand after its twin, both that are one piece once. */
export function reportJob(job: Job): readonly TubeReport[] {
  const pieces = solvePieces(job);
  const beside = besideIn(pieces, job.words);
  return pieces.map((piece) => reportTube(piece, job.words, beside));
}
