import { ventOf, ventPlaceOf } from '../fit/vent.ts';
import type { EndName } from '../job/job.ts';
import { isSolid } from '../job/sections.ts';
import type { Mm } from '../measure/units.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import { norm, wayTo } from '../space/vector.ts';
import { headerThere, type Placings } from './as-made.ts';
import { copesOf, isSpliced, type StandingTube, workPointOf } from './in-space.ts';

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

/** An end of a tube that is spliced to another tube. */
export interface Splice {
  readonly tube: number;
  readonly end: EndName;
  readonly to: number;
}

/** Two plain ends that nothing leaves open meet in a splice where they are at one place. */
export function splicesIn(standings: readonly StandingTube[]): readonly Splice[] {
  const ends = standings.flatMap(({ tube, seat }) =>
    ENDS.flatMap((end) => (isSpliced(seat.ends[end]) ? [{ tube, end, at: workPointOf(seat, end) }] : [])),
  );
  return ends.flatMap(({ tube, end, at }) =>
    ends.flatMap((other) =>
      other.tube !== tube && norm(wayTo(at, other.at)) < TOGETHER ? [{ tube, end, to: other.tube }] : [],
    ),
  );
}

/** No two points of a frame lie as near that are not one. */
const TOGETHER: Mm = 0.1;
