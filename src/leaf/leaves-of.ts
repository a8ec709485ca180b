import type { Job } from '../job/job.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import { compact } from './compact.ts';
import { drawLeaf, type LeafContext } from './draw-leaf.ts';
import { drawFootprint } from './footprint-leaf.ts';
import type { Leaf } from './leaf.ts';

/** What every leaf of a job needs to know of it. */
export function contextOf(job: Job): LeafContext {
  return { ...(job.title && { job: job.title }), paperThickness: job.sheet.paperThickness.mm };
}

/** The leaves of one tube's coped ends, A before B; each followed by its footprints where they are asked for. */
export function leavesOf(solution: TubeSolution, context: LeafContext, footprints: boolean): readonly Leaf[] {
  return (['A', 'B'] as const).flatMap((name) => {
    const end = solution.ends[name];
    if (end?.kind !== 'coped') return [];
    const marked = footprints ? end.end.parts.map((_, i) => drawFootprint(solution, name, i, context)) : [];
    return [drawLeaf(solution, name, context), ...marked].map(kept);
  });
}

function kept(leaf: Leaf): Leaf {
  return { ...leaf, wrap: compact(leaf.wrap), card: compact(leaf.card) };
}
