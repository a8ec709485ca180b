import type { Mm } from '../measure/units.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import { bendJobOf, elbowsOf, type PieceKind } from './bend-pieces.ts';

/** A kind of blank that a tube of one hand takes, and how many of it for all its copies. */
export interface BlankKind {
  readonly solution: TubeSolution;
  readonly length: Mm;
  readonly count: number;
  /** Of a bend that is made of several pieces. */
  readonly piece?: PieceKind;
}

/** The blanks of a tube, and of the elbows at its ends; none of a tube whose length is not known. */
export function blanksOf(solution: TubeSolution): readonly BlankKind[] {
  const { tube, lengths } = solution;
  const bend = bendJobOf(solution);
  const pieces = (bend ? [bend] : elbowsOf(solution)).flatMap((job) =>
    job.pieces.map(({ kind, count, blank }) => ({
      solution,
      length: blank,
      count: count * tube.copies,
      piece: kind,
    })),
  );
  const own = !bend && lengths ? [{ solution, length: lengths.blank, count: tube.copies }] : [];
  return [...own, ...pieces];
}
