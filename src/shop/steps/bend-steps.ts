import { dihedralsOf } from '../../fit/dihedrals.ts';
import { knifeOf, landFor } from '../../fit/warnings.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
import { type BendJob, bendJobOf, elbowsOf } from '../bend-pieces.ts';
import type { NamedEnd, Piece } from '../piece.ts';
import { leastHeld, scrapStep } from './blank-steps.ts';
import { edgeOf } from './cope-steps.ts';
import { cleanStep } from './finishing-steps.ts';
import { type Step, step } from './step.ts';

/** What is done to make a bend of straight pieces with one leaf: all first ends, then the other ends, then the fit. */
export function bendSteps(piece: Piece, end: NamedEnd, job: BendJob): readonly Step[] {
  const { units, words } = piece;
  const { bend, warnings } = words.steps;
  const [middle] = job.pieces.filter(({ kind }) => kind === 'middle');
  const [last] = job.pieces.filter(({ kind }) => kind === 'end');
  const { root } = job.cope.end;
  const thin = knifeOf(end.cope, dihedralsOf(end.cope));
  const small = isSmall(piece.solution, job);
  return [
    ...scrapStep(piece),
    small ? step('step:blank', bend.onStock, [warnings.smallPieces]) : step('step:blank', bend.blanks),
    step('step:spine', bend.line(small)),
    step(
      'step:first',
      bend.firstEnds(job.bend.segments.pieces, end.cope.end.parts[0].clock.rad !== 0, small),
    ),
    step('step:cut', bend.firstCuts(middle !== undefined, edgeOf(end))),
    ...(middle
      ? [step('step:second', bend.secondEnds(placeOf(job), small, middle.long, middle.short, units))]
      : []),
    ...(last
      ? [step('step:square', bend.squareEnds(job.base.setback > last.centre, last.long, last.short, units))]
      : []),
    step('step:seat', bend.deburr, thin === undefined ? [] : [warnings.feather(thin, landFor(end.cope))]),
    ...cleanStep(piece, [end]),
    step('step:set', bend.together(job.pieces, root !== undefined && root.mm > 0, job.bend.turn.rad, units)),
  ];
}

/** The other pieces of the elbows at the ends of a tube. */
export function elbowSteps({ solution, units, words: { steps } }: Piece): readonly Step[] {
  return elbowsOf(solution).map((job) =>
    step(
      'step:second',
      steps.bend.elbow(job.end, job.pieces, units),
      isSmall(solution, job) ? [steps.warnings.smallPieces] : [],
    ),
  );
}

/** Whether pieces of a bend, or of the elbows at a tube's ends, are parted off long stock one after the other, and no blank of theirs is sawn. */
export function isMadeOnStock(solution: TubeSolution): boolean {
  const bend = bendJobOf(solution);
  return (bend ? [bend] : elbowsOf(solution)).some((job) => isSmall(solution, job));
}

/** Whether one of its pieces is too short to be held by hand. */
function isSmall({ tube }: TubeSolution, { pieces }: BendJob): boolean {
  const least = leastHeld(tube);
  return pieces.some(({ long }) => long < least);
}

/** How the second leaf of a middle piece lies to what the first one left on it. */
function placeOf({ base: { to, distance } }: BendJob): 'apart' | 'overlap' | 'past' {
  if (to === 'first-cut') return 'past';
  return distance < 0 ? 'overlap' : 'apart';
}
