import type { Job } from '../job/job.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import type { StandingFrame } from './frame-notes.ts';
import type { TubeLanding } from './landings.ts';

/** The names of the tubes that a piece is: of a frame, of all that are the same solid. */
export function namesOfPiece({ tubes }: Job, { tube, places }: TubeSolution): readonly string[] {
  return places ? places.flatMap((placing) => tubes[placing.tube]?.name ?? []) : [tube.name];
}

/** The pieces, both hands of each, that are tubes of these names. */
export function piecesNamed(
  job: Job,
  pieces: readonly TubeSolution[],
  names: ReadonlySet<string>,
): readonly TubeSolution[] {
  const found = pieces.filter((piece) => namesOfPiece(job, piece).some((name) => names.has(name)));
  const rows = new Set(found.map(({ tube }) => tube.name));
  return pieces.filter(({ tube }) => rows.has(tube.name));
}

/** What of a whole frame is about these pieces of it. */
export function standingPieces(whole: StandingFrame, pieces: readonly TubeSolution[]): StandingFrame {
  const tubes = new Set(pieces.flatMap(({ places = [] }) => places.map(({ tube }) => tube)));
  const isOfThese = ({ on, tube }: TubeLanding): boolean => tubes.has(on) || tubes.has(tube);
  return {
    ...whole,
    listed: whole.standings.filter(({ tube }) => tubes.has(tube)),
    landings: whole.landings.filter(isOfThese),
    marked: whole.marked.filter(isOfThese),
    warnings: whole.warnings.filter((warning) => warning.tubes.some((tube) => tubes.has(tube))),
  };
}
