import { innerEdgeOf } from '../../leaf/card/edge-words.ts';
import type { Said } from '../../measure/said.ts';
import type { BendJob, BendPiece } from '../bend-pieces.ts';
import type { NamedEnd, Piece } from '../piece.ts';
import { scrapStep } from './blank-steps.ts';
import { cleanStep, knifeStep } from './finishing-steps.ts';
import type { Step } from './step.ts';

/** What is done to make a bend of straight pieces with one leaf: all first ends, then the other ends, then the fit. */
export function bendSteps(piece: Piece, end: NamedEnd, job: BendJob): readonly Step[] {
  const { units, words } = piece;
  const { bend } = words.steps;
  const [middle] = job.pieces.filter(({ kind }) => kind === 'middle');
  const [last] = job.pieces.filter(({ kind }) => kind === 'end');
  const { root } = job.cope.end;
  const texts = [
    bend.blanks(job.pieces, units),
    bend.line,
    firstEnds(piece, end, job),
    ...(middle ? [bend.secondEnds(secondPlace(piece, job, middle), middle, units)] : []),
    ...(last ? [bend.squareEnds(last, job.base > last.centre, units)] : []),
    bend.deburr,
    ...knifeStep(piece, [end]),
    ...cleanStep(piece, [end]),
    bend.together(job.pieces, root !== undefined && root.mm > 0, job.bend.turn.rad),
  ];
  return [
    { fact: 'step:scrap', text: scrapStep(piece, end), once: true },
    ...texts.map((text): Step => ({ fact: 'step:bend', text })),
  ];
}

function firstEnds({ units, words }: Piece, { cope }: NamedEnd, { bend, pieces }: BendJob): Said {
  const [{ clock }] = cope.end.parts;
  const { steps } = words;
  const how =
    cope.end.preparation.edge === 'bevel'
      ? steps.cut.edge({ kind: 'bevel', inner: innerEdgeOf(cope) }, units)
      : steps.cut.edge({ kind: 'square' }, units);
  return steps.bend.firstEnds(bend.segments.pieces, clock.rad !== 0, pieces.length > 1, how);
}

/** Both cuts of a middle piece have their insides on one line, for the bend lies in one plane. */
function secondPlace({ units, words }: Piece, { base, cope }: BendJob, middle: BendPiece): Said {
  const { bend } = words.steps;
  // The second leaf reaches to here, from the first joint; the first cut goes as deep as its throat.
  const onTube = middle.centre - base > cope.throat.setback;
  return onTube ? bend.byBase(middle.centre - 2 * base, units) : bend.byInside(middle.short, units);
}
