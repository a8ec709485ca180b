import type { EndName } from '../job/job.ts';
import { elbowAt, endPieceLength, mitredEnds, type Segmented, wholeBend } from '../leaf/bend-pieces.ts';
import { type BaseEdge, baseEdgeOf } from '../leaf/wrap/base-edge.ts';
import type { Mm } from '../measure/units.ts';
import type { Cope } from '../saddle/cope.ts';
import type { TubeSolution } from '../saddle/solve.ts';

/** A middle piece is mitred at both ends, an end piece at one. */
export type PieceKind = 'middle' | 'end';

/** One kind of the pieces that a bend is made of. Lengths in mm, those that are finished on the lines to cut. */
export interface BendPiece {
  readonly kind: PieceKind;
  /** In one bend. */
  readonly count: number;
  /** On the bend's centre line, joint to joint, or joint to the square end. */
  readonly centre: Mm;
  /** Along the outside of the bend: long point to long point, or to the square end. */
  readonly long: Mm;
  /** Along the inside. */
  readonly short: Mm;
  readonly blank: Mm;
}

/** A bend that one tube of a job stands for, and what is cut for it. */
export interface BendJob {
  readonly bend: Segmented;
  readonly cope: Cope;
  readonly ends: number;
  /** Middle pieces first; a bend of two pieces has none. */
  readonly pieces: readonly BendPiece[];
  readonly base: BaseEdge;
}

/** The bend that a tube with one end stands for; undefined for a tube that stands for itself. */
export function bendJobOf(solution: TubeSolution): BendJob | undefined {
  const bend = wholeBend(solution.tube);
  return bend && jobOf(solution, solution.ends.A ? 'A' : 'B', bend, 2);
}

/** The elbows at the ends of a tube that stands for itself: it is the first piece of each, and these are the others. */
export function elbowsOf(solution: TubeSolution): readonly (BendJob & { readonly end: EndName })[] {
  const { ends } = solution.tube;
  if (!ends.A || !ends.B) return [];
  return (['A', 'B'] as const).flatMap((end) => {
    const bend = elbowAt(ends[end]);
    const job = bend && jobOf(solution, end, bend, 1);
    return job ? [{ ...job, end }] : [];
  });
}

/**
 * The pieces of a bend: each is as long on its outside as on its centre line and what its long points reach beyond. A
 * blank is longer by the tube's allowance, and never shorter than the leaf that is wrapped round it.
 */
function jobOf(solution: TubeSolution, end: EndName, bend: Segmented, lasts: number): BendJob | undefined {
  const cope = solution.ends[end];
  if (cope?.kind !== 'coped') return undefined;
  const half = endPieceLength(bend);
  const base = baseEdgeOf(solution, end);
  const leaf = base.setback - cope.longPoint.setback;
  const piece = (kind: PieceKind, count: number, cuts: number): BendPiece => {
    const long = cuts * (half - cope.longPoint.setback);
    const short = cuts * (half - cope.throat.setback);
    const blank = Math.max(long + solution.tube.allowance.mm, leaf);
    return { kind, count, centre: cuts * half, long, short, blank };
  };
  const middle = bend.segments.pieces - 2;
  return {
    bend,
    cope,
    ends: mitredEnds(bend),
    pieces: [...(middle > 0 ? [piece('middle', middle, 2)] : []), piece('end', lasts, 1)],
    base,
  };
}
