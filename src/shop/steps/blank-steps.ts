import { tubeFactsOf } from '../../job/sections.ts';
import type { Said } from '../../measure/said.ts';
import { sawLength } from '../../measure/saw-length.ts';
import type { NamedEnd, Piece } from '../piece.ts';
import { shortPointDepth } from './short-point-depth.ts';

/** Cutting the blank, and how much longer it is than the finished tube, and why. */
export function blankStep({ solution, first, second, say, units, words }: Piece): Said {
  const { lengths, tube, ends } = solution;
  const { blank } = words.steps;
  if (!lengths) {
    if (ends.A && ends.B) return blank.marked(tube.copies);
    return blank.unmeasured(tube.copies, first ? shortPointDepth(first.cope) : 0, units);
  }
  if (!first && !second) return blank.square(tube.copies, say(lengths.between));
  const sawn = sawLength(lengths.blank, units);
  const over = sawn - lengths.overall;
  return over > 0.05 ? blank.over(tube.copies, say(sawn), say(over)) : blank.exact(tube.copies, say(sawn));
}

/** A square end beside a coped one: it is what the length is measured from. */
export function squareSteps({ solution, first, words }: Piece): Said[] {
  if (!first) return [];
  const { A, B } = solution.ends;
  const plain = A?.kind === 'plain' ? 'A' : B?.kind === 'plain' ? 'B' : undefined;
  return plain ? [words.steps.blank.squareEnd(plain)] : [];
}

/** Whether the tube needs a line to lay its leaves on; a round tube with one coped end, or one whose other end is laid on a mark, can do without. */
export function hasSpine({ solution, second }: Piece): boolean {
  if (second && !second.cope.fitUp?.clock) return true;
  return tubeFactsOf(solution.tube.section).turned !== undefined;
}

/** The reference line for both ends. */
export function spineStep(piece: Piece): Said[] {
  if (!hasSpine(piece)) return [];
  const { turned } = tubeFactsOf(piece.solution.tube.section);
  return [piece.words.steps.blank.spine(turned?.(piece.words).spine)];
}

/** Proves leaf, scale and tube before a blank is cut. */
export function scrapStep({ solution, say, words }: Piece, { name }: NamedEnd): Said {
  return words.steps.blank.scrap(name, say(solution.section.girth));
}
