import type { EndName } from '../job/job.ts';
import type { Mm } from '../measure/units.ts';
import { norm, wayTo } from '../space/vector.ts';
import { isSpliced, type StandingTube, workPointOf } from './in-space.ts';

/** An end of a tube that is spliced to another tube. */
export interface Splice {
  readonly tube: number;
  readonly end: EndName;
  readonly to: number;
}

/** Two plain ends that nothing leaves open meet in a splice where they are at one place. */
export function splicesIn(standings: readonly StandingTube[]): readonly Splice[] {
  const ends = standings.flatMap(({ tube, seat }) =>
    (['A', 'B'] as const).flatMap((end) =>
      isSpliced(seat.ends[end]) ? [{ tube, end, at: workPointOf(seat, end) }] : [],
    ),
  );
  return ends.flatMap(({ tube, end, at }) =>
    ends.flatMap((other) =>
      other.tube !== tube && norm(wayTo(at, other.at)) < TOGETHER ? [{ tube, end, to: other.tube }] : [],
    ),
  );
}

/** No two points of a frame lie as near that are not one. */
const TOGETHER: Mm = 0.1;
