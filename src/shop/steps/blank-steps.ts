import { tubeFactsOf } from '../../job/sections.ts';
import { sawLength } from '../../measure/saw-length.ts';
import type { NamedEnd, Piece } from '../piece.ts';
import { throatDepth } from './deepness.ts';

/** Cutting the blank, and how much longer it is than the finished tube, and why. */
export function blankStep(piece: Piece): string {
  const { solution, first, second, say, units } = piece;
  const { lengths, tube, ends } = solution;
  const blank = tube.copies > 1 ? `${tube.copies} blanks` : 'the blank';
  if (!lengths) {
    if (ends.A && ends.B)
      return `Cut ${blank} long enough to reach past both headers: its length is marked at the frame.`;
    const depth = first ? throatDepth(first.cope) : 0;
    return `Cut ${blank} longer than the tube has to be: the cut takes up ${say(depth)} of it.`;
  }
  if (!first && !second) return `Cut ${blank} square at both ends, ${say(lengths.between)} long.`;
  const sawn = sawLength(lengths.blank, units);
  const over = sawn - lengths.overall;
  if (over <= 0.05)
    return `Cut ${blank} ${say(sawn)} long, as long as the finished tube: nothing is over for a second try.`;
  return `Cut ${blank} ${say(sawn)} long, ${say(over)} more than the finished tube: room for a second try.`;
}

/** A square end beside a coped one: it is what the length is measured from. */
export function squareSteps({ solution, first }: Piece): string[] {
  if (!first) return [];
  const { A, B } = solution.ends;
  const plain = A?.kind === 'plain' ? 'A' : B?.kind === 'plain' ? 'B' : undefined;
  return plain ? [`Cut end ${plain} square: the length is measured from it.`] : [];
}

/** Whether the tube needs a line to lay its leaves on; a round tube with one coped end, or one whose other end is laid on a mark, can do without. */
export function hasSpine({ solution, second }: Piece): boolean {
  if (second && !second.cope.fitUp?.clock) return true;
  return tubeFactsOf(solution.tube.section).turned !== undefined;
}

/** The reference line for both ends. */
export function spineStep(piece: Piece): string[] {
  if (!hasSpine(piece)) return [];
  const { turned } = tubeFactsOf(piece.solution.tube.section);
  return turned
    ? [`Scribe the spine along ${turned.spine}, from end to end.`]
    : ['Scribe the spine from end to end, along an angle iron that sits on the tube.'];
}

/** Proves leaf, scale and tube before a blank is cut. */
export function scrapStep({ solution, say }: Piece, { name }: NamedEnd): string {
  return (
    `Try the leaf of end ${name} on a scrap: its seam edges meet, and a tape reads ` +
    `${say(solution.section.girth)} round.`
  );
}
