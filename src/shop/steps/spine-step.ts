import { tubeFactsOf } from '../../job/sections.ts';
import type { Piece } from '../piece.ts';
import { type Step, step } from './step.ts';

/** Whether it is said where the tube goes: in its frame, or in the person's own words. */
export function isPlaced({ solution: { places, tube } }: Piece): boolean {
  return places !== undefined || tube.note !== undefined;
}

/**
 * Whether the tube needs a line to lay its leaves on, or to find which way up it goes where it is said to go or on several headers; another
 * round tube with one coped end, or one whose other end is laid on a mark, can do without.
 */
export function hasSpine(piece: Piece): boolean {
  const { solution, first, second } = piece;
  const onSeveral = first !== undefined && first.cope.end.parts.length > 1;
  if (isPlaced(piece) || onSeveral || (second && !second.cope.fitUp?.clock)) return true;
  return tubeFactsOf(solution.tube.section).turned !== undefined;
}

/** The reference line for both ends. */
export function spineStep(piece: Piece): Step[] {
  if (!hasSpine(piece)) return [];
  const { turned } = tubeFactsOf(piece.solution.tube.section);
  const { spine, lettered } = piece.words.steps.blank;
  const along = spine(turned?.(piece.words).spine);
  const [among, { pair }] = [isPlaced(piece), piece.solution.tube];
  return [step('step:spine', among || pair ? lettered(along, among, pair) : along)];
}
