import type { EndName, Job } from '../job/job.ts';
import { headerFactsOf } from '../job/kinds.ts';
import type { Said } from '../measure/said.ts';
import { isSquare, sawnAt } from '../saddle/sawn.ts';
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

/** What is printed of an end: its leaf or, of one of its headers, by its place in the list, the footprint. */
export interface Printed {
  readonly end: EndName;
  readonly part?: number;
}

/**
 * What is printed of one tube's coped ends, A before B, a leaf before its footprints where these are asked for. Beside a ticket, which
 * has it sawn, an end that is cut square has no leaf; what serves both hands is the one as drawn, a footprint not where it says its place in a frame.
 */
export function printedOf(
  solution: TubeSolution,
  context: LeafContext,
  footprints: boolean,
): readonly Printed[] {
  return (['A', 'B'] as const).flatMap((end): Printed[] => {
    const cope = solution.ends[end];
    if (cope?.kind !== 'coped') return [];
    const twin = solution.hand === 'opposite' && isShared(solution, end, context);
    const sawn = context.ticketed && sawnAt(solution, end) !== undefined;
    const marked = footprints && !(twin && !context.placeOf) ? landings(cope) : [];
    return [...(twin || sawn ? [] : [{ end }]), ...marked.map((part) => ({ end, part }))];
  });
}

/** The same as leaves. */
export function leavesOf(solution: TubeSolution, context: LeafContext, footprints: boolean): readonly Leaf[] {
  return printedOf(solution, context, footprints).map(({ end, part }) =>
    kept(
      part === undefined ? drawLeaf(solution, end, context) : drawFootprint(solution, end, part, context),
      context.ticketed ?? false,
    ),
  );
}

/** Of each end of a tube whose footprint is not printed, why: one sentence each. */
export function withoutFootprint(solution: TubeSolution, words: Language): readonly Said[] {
  return (['A', 'B'] as const).flatMap((name) => {
    const end = solution.ends[name];
    if (end?.kind !== 'coped') return [];
    return end.end.parts.flatMap(({ onto }) => {
      const { wall, said } = headerFactsOf(onto);
      if (!wall) return [words.footprint.none(solution.tube.name, name, said(words).name)];
      return isSquare(end) ? [words.footprint.square(solution.tube.name, name)] : [];
    });
  });
}

/** What a ticket says is not said again: a card stands beside a leaf only for what has no room on it. */
function kept({ card, beside, ...leaf }: CardedLeaf, ticketed: boolean): Leaf {
  return { ...leaf, wrap: compact(leaf.wrap), ...(!(ticketed && !beside) && { card: compact(card) }) };
}
