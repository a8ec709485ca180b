import type { Part } from '../../job/job.ts';
import { isSolid } from '../../job/sections.ts';
import type { TubeSolution } from '../../saddle/solve.ts';

/** Where the air of a sealed tube gets out: through a header's wall inside one of the tube's landings, or through the tube's own. */
export type Vent = 'footprint' | 'tube';

/** How a tube that is welded shut at both ends is vented; undefined of a bar, and where an end stays open, is cut square or is mitred. */
export function ventOf({ tube, ends: { A, B } }: Pick<TubeSolution, 'tube' | 'ends'>): Vent | undefined {
  if (isSolid(tube)) return undefined;
  if (A?.kind !== 'coped' || B?.kind !== 'coped') return undefined;
  const ends = [A.end.parts, B.end.parts];
  if (ends.some((parts) => parts.every(({ onto }) => onto.kind === 'mitre'))) return undefined;
  return ends.flat().some(isHollow) ? 'footprint' : 'tube';
}

/** Whether this header is one through whose wall the tube may be vented. */
export function isVentedInto(solution: Pick<TubeSolution, 'tube' | 'ends'>, header: Part): boolean {
  return ventOf(solution) === 'footprint' && isHollow(header);
}

/** Whether air can escape into a header: a plate need have nothing hollow behind it, and a mitre has no wall. */
export function isHollow({ onto }: Part): boolean {
  return onto.kind !== 'plate' && onto.kind !== 'mitre';
}
