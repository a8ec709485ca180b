import { reportTube, type TubeReport } from '../fit/report.ts';
import type { Job } from '../job/job.ts';
import { solvePieces } from './pieces.ts';

/** Checks every tube of a job as it is made, each opposite hand after its twin, both that are one piece once; or these pieces of it. */
export function reportJob(job: Job, pieces = solvePieces(job)): readonly TubeReport[] {
  return pieces.map((solution) => reportTube(solution, job.words));
}
