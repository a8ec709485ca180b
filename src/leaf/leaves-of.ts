import type { EndName, Job } from '../job/job.ts';
import { headerFactsOf } from '../job/kinds.ts';
import type { Said } from '../measure/said.ts';
import { sawnAt } from '../saddle/sawn.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import type { Language } from '../words/language.ts';
import { compact } from './compact.ts';
import { drawLeaf, isShared, type LeafContext } from './draw-leaf.ts';
import { drawFootprint, landings } from './footprint/leaf.ts';
import type { CardedLeaf, Leaf } from './leaf.ts';

/** What every leaf of a job needs to know of it. */
export function contextOf(job: Job): LeafContext {
  return {
    ...(job.title && { job: job.title }),
    paperThickness: job.sheet.paperThickness.mm,
    words: job.words,
  };
}

/** The leaves of one tube's coped ends, A before B; each followed by its footprints where they are asked for. What serves both hands is the one as drawn; a footprint not where it says its place in a frame. */
export function leavesOf(solution: TubeSolution, context: LeafContext, footprints: boolean): readonly Leaf[] {
  return (['A', 'B'] as const).flatMap((name) => {
    const end = solution.ends[name];
    if (end?.kind !== 'coped') return [];
    const twin = isTwin(solution, name, context);
    const leaf = hasLeaf(solution, name, context) ? [drawLeaf(solution, name, context)] : [];
    const marked =
      footprints && !(twin && !context.placeOf)
        ? landings(end).map((part) => drawFootprint(solution, name, part, context))
        : [];
    return [...leaf, ...marked].map((each) => kept(each, context.ticketed ?? false));
  });
}

/** Whether a coped end has a leaf of its own: its ticket has it sawn square without one, or its twin's serves both hands. */
export function hasLeaf(solution: TubeSolution, end: EndName, context: LeafContext): boolean {
  const sawn = context.ticketed && sawnAt(solution, end) !== undefined;
  return !sawn && !isTwin(solution, end, context);
}

/** Whether its leaf stands with the hand as drawn. */
export function isTwin(solution: TubeSolution, end: EndName, context: LeafContext): boolean {
  return solution.hand === 'opposite' && isShared(solution, end, context);
}

/** Of each end of a tube that leaves no footprint where it lands, why: one sentence each. */
export function withoutFootprint(solution: TubeSolution, words: Language): readonly Said[] {
  return (['A', 'B'] as const).flatMap((name) => {
    const end = solution.ends[name];
    if (end?.kind !== 'coped') return [];
    return end.end.parts
      .filter(({ onto }) => !headerFactsOf(onto).wall)
      .map(({ onto }) =>
        words.footprint.none(solution.tube.name, name, headerFactsOf(onto).said(words).name),
      );
  });
}

/** What a ticket says is not said again: a card stands beside a leaf only for what has no room on it. */
function kept({ card, beside, ...leaf }: CardedLeaf, ticketed: boolean): Leaf {
  return { ...leaf, wrap: compact(leaf.wrap), ...(!(ticketed && !beside) && { card: compact(card) }) };
}
