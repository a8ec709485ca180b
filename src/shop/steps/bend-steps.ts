import { innerEdgeWords } from '../../leaf/card/edge-words.ts';
import { sawWords } from '../../leaf/names.ts';
import { writeAngle } from '../../measure/write.ts';
import { type BendJob, type BendPiece, piecesInWords } from '../bend-pieces.ts';
import type { NamedEnd, Piece } from '../piece.ts';
import { scrapStep } from './blank-steps.ts';
import { cleanStep, knifeStep } from './finishing-steps.ts';
import { ROD_IN_WORDS } from './rod.ts';
import type { Step } from './step.ts';

/** What is done to make a bend of straight pieces with one leaf: all first ends, then the other ends, then the fit. */
export function bendSteps(piece: Piece, end: NamedEnd, job: BendJob): readonly Step[] {
  const [middle] = job.pieces.filter(({ name }) => name === 'middle piece');
  const [last] = job.pieces.filter(({ name }) => name === 'end piece');
  const texts = [
    blanks(piece, job),
    'Scribe a line along each blank from end to end, the inside of the bend, with an angle iron that sits on the tube.',
    firstEnds(end, job),
    ...(middle ? [secondEnds(piece, job, middle)] : []),
    ...(last ? [squareEnds(piece, job, last)] : []),
    'Deburr every piece inside and out.',
    ...knifeStep([end]),
    ...cleanStep([end]),
    together(job),
  ];
  return [{ text: scrapStep(piece, end), once: true }, ...texts.map((text) => ({ text }))];
}

function blanks({ say, units }: Piece, { pieces }: BendJob): string {
  const cut = pieces
    .map(({ name, count, blank }) => `${count} blanks ${sawWords(blank, units)} long for the ${name}s`)
    .join(' and ')
    .replace(/\b1 blanks (.*?)pieces/, '1 blank $1piece');
  const long = pieces.map(({ long }) => say(long)).join(' and ');
  return `Cut ${cut}. Finished they are ${long} long on the outside of the bend: what is over is room for the leaf and for a second try.`;
}

function firstEnds({ cope }: NamedEnd, { bend, pieces }: BendJob): string {
  const [{ clock }] = cope.end.parts;
  const line = clock.rad === 0 ? 'spine' : 'station that is marked inside';
  const mark = pieces.length > 1 ? 'Mark the line, and on a middle piece the base edge' : 'Mark the line';
  return (
    `On one end of each of the ${bend.segments.pieces} blanks lay the leaf, printed side out, its ${line} on the scribed line, slid out until ` +
    'the long point just stays on the tube; wrap and tape it so that the ends of its base edge meet. ' +
    `${mark}, take the leaf off and cut ${cutWords(cope)}.`
  );
}

function cutWords(cope: NamedEnd['cope']): string {
  const { preparation } = cope.end;
  return preparation.edge === 'bevel'
    ? `on the solid line; ${innerEdgeWords(cope)}`
    : 'on the solid line and leave the face square';
}

/** Both cuts of a middle piece have their insides on one line, for the bend lies in one plane. */
function secondEnds({ say }: Piece, { base, cope }: BendJob, middle: BendPiece): string {
  const apart = middle.centre - 2 * base;
  // The second leaf reaches to here, from the first joint; the first cut goes as deep as its throat.
  const onTube = middle.centre - base > cope.throat.setback;
  const inside = `where its line crosses the scribed one ${say(middle.short)} from the first cut`;
  const beside =
    apart >= 0
      ? `its base edge ${say(apart)} from the one marked`
      : `its base edge ${say(-apart)} nearer to the first cut than the one marked, for the two leaves would overlap by that much`;
  const where = onTube ? beside : inside;
  return (
    `Then the other end of each middle piece: lay the leaf on the same scribed line, so that the insides of both cuts are on ONE line, ${where}. ` +
    `Cut it likewise: the piece is ${say(middle.long)} long on the outside, ${say(middle.short)} on the scribed line.`
  );
}

function squareEnds({ say }: Piece, { base }: BendJob, last: BendPiece): string {
  const after = base > last.centre ? ', and not before its mitre: the leaf is longer than the piece' : '';
  return `Cut the other end of each end piece square, ${say(last.long)} from the long point along the outside, ${say(last.short)} along the scribed line${after}.`;
}

function together(job: BendJob): string {
  const { root } = job.cope.end;
  const fit =
    root && root.mm > 0 ? 'file until the root gap is even' : `file until no ${ROD_IN_WORDS} rod goes in`;
  return (
    `Lay the ${piecesInWords(job)} together on a flat board, the end pieces outermost, all scribed lines to the inside: ` +
    `${fit}. Tack, and check that it turns ${writeAngle(job.bend.turn.rad)}.`
  );
}
