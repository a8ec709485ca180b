import type { Part } from '../../job/job.ts';
import type { Cope } from '../../saddle/cope.ts';
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

/** Where a vent is drilled on a footprint, as its outlines are drawn, closed or with ends that are open. */
export function ventPlace({ thickness }: Pick<Cope, 'thickness'>, closed: boolean): string {
  const line = thickness ? 'the short dashes' : 'the solid outline';
  if (!closed) return `well inside ${line}, away from the open ends`;
  return thickness ? `inside ${line}` : `well inside ${line}`;
}

/** Whether air can escape into a header: a plate need have nothing hollow behind it, and a mitre has no wall. */
export function isHollow({ onto }: Part): boolean {
  return onto.kind !== 'plate' && onto.kind !== 'mitre';
}
