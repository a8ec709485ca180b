import type { EndName, Part } from '../job/job.ts';
import { isSolid } from '../job/sections.ts';
import type { Cope } from '../saddle/cope.ts';
import type { TubeSolution } from '../saddle/solve.ts';

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

/** Which of its landings a vent lies in: an end, and the header's place in its list. */
export interface VentPlace {
  readonly end: EndName;
  readonly part: number;
}

/** The one landing in which a tube is vented: of those on hollow headers the one that takes most of its wall; end A's before end B's. */
export function ventPlaceOf(solution: Pick<TubeSolution, 'tube' | 'ends'>): VentPlace | undefined {
  return ventOf(solution) === 'footprint' ? hollowLanding(solution) : undefined;
}

/** Of the landings on hollow headers the one that takes most of the tube's wall; end A's before end B's. */
export function hollowLanding(solution: Pick<TubeSolution, 'ends'>): VentPlace | undefined {
  const landings = (['A', 'B'] as const).flatMap((end) => {
    const cope = solution.ends[end];
    if (cope?.kind !== 'coped') return [];
    const shares = sharesOf(cope);
    return cope.end.parts.flatMap((header, part) =>
      isHollow(header) ? [{ end, part, share: shares[part] ?? 0 }] : [],
    );
  });
  const most = Math.max(...landings.map(({ share }) => share));
  return landings.find(({ share }) => share === most);
}

const LOOKS = 180;

/** How many of so many lines of the wall each header of an end is touched by. */
function sharesOf({ end, joint: { section }, touching }: Cope): readonly number[] {
  const shares = end.parts.map(() => 0);
  for (let i = 0; i < LOOKS; i++) {
    const met = touching(((i + 0.5) * section.turn) / LOOKS);
    if (met.contact) shares[met.part] = (shares[met.part] ?? 0) + 1;
  }
  return shares;
}

/** Whether air can escape into a header: a plate need have nothing hollow behind it, and a mitre has no wall. */
export function isHollow({ onto }: Part): boolean {
  return onto.kind !== 'plate' && onto.kind !== 'mitre';
}
