import type { Part } from '../../job/job.ts';
import type { TubeSolution } from '../../saddle/solve.ts';

/** Where the air of a sealed tube gets out: through a header's wall inside one of the tube's landings, or through the tube's own. */
export type Vent = 'footprint' | 'tube';

/** How a tube that is welded shut at both ends is vented; undefined where an end stays open, is cut square or is mitred. */
export function ventOf({ ends: { A, B } }: Pick<TubeSolution, 'ends'>): Vent | undefined {
  if (A?.kind !== 'coped' || B?.kind !== 'coped') return undefined;
  const ends = [A.end.parts, B.end.parts];
  if (ends.some((parts) => parts.every(({ onto }) => onto.kind === 'mitre'))) return undefined;
  return ends.flat().some(isHollow) ? 'footprint' : 'tube';
}

/** Whether this header is one through whose wall the tube may be vented. */
export function isVentedInto(solution: Pick<TubeSolution, 'ends'>, header: Part): boolean {
  return ventOf(solution) === 'footprint' && isHollow(header);
}

/** Whether air can escape into a header: a plate need have nothing hollow behind it, and a mitre has no wall. */
export function isHollow({ onto }: Part): boolean {
  return onto.kind !== 'plate' && onto.kind !== 'mitre';
}
