import type { Job } from '../job/job.ts';
import { solveHands, type TubeSolution } from '../saddle/solve.ts';
import { piecesOfFrame } from './rows.ts';
import { sameAs } from './same-piece.ts';

/**
 * Every tube of a job as it is made: in its order, each opposite hand after its twin, but a pair whose two hands are the
 * same piece once, with the copies of both; tubes of a frame that are the same piece once, with the copies of all. Throws
 * `Refusal` as `solveHands` does.
 */
export function solvePieces(job: Job): readonly TubeSolution[] {
  if (job.frame) return piecesOfFrame(job);
  const pieces: TubeSolution[] = [];
  for (const solution of solveHands(job)) {
    const twin = solution.hand === 'opposite' ? pieces.at(-1) : undefined;
    if (twin && sameAs(twin, solution)) pieces[pieces.length - 1] = bothHands(twin);
    else pieces.push(solution);
  }
  return pieces;
}

function bothHands(solution: TubeSolution): TubeSolution {
  const { tube } = solution;
  return { ...solution, tube: { ...tube, pair: false, copies: 2 * tube.copies }, bothHands: true };
}
