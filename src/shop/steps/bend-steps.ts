import { dihedralsOf } from '../../fit/dihedrals.ts';
import { knifeOf } from '../../fit/warnings.ts';
import type { Said } from '../../measure/said.ts';
import type { BendJob, BendPiece } from '../bend-pieces.ts';
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
  return [
    ...scrapStep(piece),
    step('step:blank', bend.blanks),
    step('step:spine', bend.line),
    step('step:first', firstEnds(piece, end, job), isSmall(piece, job) ? [warnings.smallPieces] : []),
    ...(middle ? [step('step:second', bend.secondEnds(secondPlace(piece, job, middle)))] : []),
    ...(last ? [step('step:square', bend.squareEnds(job.base > last.centre))] : []),
    step('step:seat', bend.deburr, thin === undefined ? [] : [warnings.feather(thin)]),
    ...cleanStep(piece, [end]),
    step('step:set', bend.together(job.pieces, root !== undefined && root.mm > 0, job.bend.turn.rad, units)),
  ];
}

/** Whether one of its pieces is too short to be held by hand. */
function isSmall({ solution }: Piece, { pieces }: BendJob): boolean {
  return pieces.some(({ long }) => long < leastHeld(solution.tube));
}

function firstEnds({ words: { steps } }: Piece, end: NamedEnd, { bend, pieces }: BendJob): Said {
  const [{ clock }] = end.cope.end.parts;
  return steps.bend.firstEnds(bend.segments.pieces, clock.rad !== 0, pieces.length > 1, edgeOf(end));
}

/** Both cuts of a middle piece have their insides on one line, for the bend lies in one plane. */
function secondPlace({ units, words }: Piece, { base, cope }: BendJob, middle: BendPiece): Said {
  const { bend } = words.steps;
  // The second leaf reaches to here, from the first joint; the first cut goes as deep as its throat.
  const onTube = middle.centre - base > cope.throat.setback;
  return onTube ? bend.byBase(middle.centre - 2 * base, units) : bend.byInside(middle.short, units);
}
