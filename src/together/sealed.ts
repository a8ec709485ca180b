import { ventOf, ventPlaceOf } from '../fit/vent.ts';
import type { EndName } from '../job/job.ts';
import { isSolid } from '../job/sections.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import { headerThere, type Placings } from './as-made.ts';
import { copesOf, type StandingTube } from './in-space.ts';
import type { Splice } from './splices.ts';

const ENDS: readonly EndName[] = ['A', 'B'];

/**
 * Tubes of a frame that hold their air in once all is welded, by their places in the job: together those that are open to one another,
 * through a mitre, a splice, a sleeve or the vents that their tickets ask for, where no end of any is open.
 */
export function sealedIn(
  standings: readonly StandingTube[],
  pieces: readonly TubeSolution[],
  placings: Placings,
  splices: readonly Splice[],
): readonly (readonly number[])[] {
  const groups = new Map(standings.map(({ tube }) => [tube, new Set([tube])]));
  const open = new Set<number>();
  const join = (one: number, other: number | undefined): void => {
    const [a, b] = [groups.get(one), groups.get(other ?? one)];
    if (!a || !b || a === b) return;
    for (const tube of b) groups.set(tube, a.add(tube));
  };
  for (const { tube, seat, solution } of standings) {
    for (const end of ENDS) {
      const { open: isOpen, inside } = seat.ends[end];
      if (isOpen) open.add(tube);
      join(tube, inside);
    }
    for (const [end, cope] of copesOf(solution))
      for (const [part, { mitred }] of cope.joint.landings.entries())
        if (mitred) join(tube, seat.ends[end].headers[part]);
  }
  for (const { tube, to } of splices) join(tube, to);
  for (const piece of pieces) {
    const [vent, place] = [ventOf(piece), ventPlaceOf(piece)];
    for (const { tube } of piece.places ?? []) {
      if (vent === 'tube') open.add(tube);
      const own = standings[tube];
      const there = place && own && headerThere(piece, place.end, place.part, own, placings);
      join(tube, there?.on);
    }
  }
  return [...new Set(groups.values())]
    .map((group) => [...group].sort((a, b) => a - b))
    .filter(
      (group) => !group.some((tube) => open.has(tube)) && group.some((tube) => isHollow(standings[tube])),
    );
}

function isHollow(standing: StandingTube | undefined): boolean {
  return standing !== undefined && !isSolid(standing.solution.tube);
}
