import type { EndName } from '../job/job.ts';
import type { Mm } from '../measure/units.ts';
import { wrapStation } from '../space/section.ts';
import { dot } from '../space/vector.ts';
import { farEndOf, type StandingTube, stopAt, wayAround } from './in-space.ts';
import type { TubeLanding } from './landings.ts';
import type { Splice } from './sealed.ts';

/** Each landing, and once more on the tube that its header is spliced to where its footprint goes on over the splice. */
export function overSplices(
  landings: readonly TubeLanding[],
  standings: readonly StandingTube[],
  splices: readonly Splice[],
): readonly TubeLanding[] {
  return landings.flatMap((landing) => {
    const header = standings[landing.on];
    const met = splices.flatMap((splice) => {
      const other = standings[splice.to];
      const back = splices.find(({ tube, to }) => tube === splice.to && to === splice.tube);
      if (splice.tube !== landing.on || !header || !other || !back) return [];
      const past = splice.end === 'A' ? -landing.from : landing.to - lengthOf(header);
      return past > BESIDE ? [goneOn(landing, header, splice.end, other, back.end)] : [];
    });
    return [landing, ...met];
  });
}

/** No tape tells a footprint that reaches less far over. */
const BESIDE: Mm = 0.05;

function lengthOf(tube: StandingTube): Mm {
  return farEndOf(tube) - stopAt(tube);
}

/** A landing in terms of the tube beyond an end of its header. */
function goneOn(
  landing: TubeLanding,
  header: StandingTube,
  end: EndName,
  other: StandingTube,
  otherEnd: EndName,
): TubeLanding {
  const there = (along: Mm): Mm => {
    const past = end === 'A' ? -along : along - lengthOf(header);
    return otherEnd === 'A' ? past : lengthOf(other) - past;
  };
  const [one, far] = [there(landing.from), there(landing.to)];
  const { section } = other.solution;
  const [x, y] = [dot(landing.way, other.seat.spine), dot(landing.way, wayAround(other.seat, Math.PI / 2))];
  return {
    ...landing,
    on: other.tube,
    at: there(landing.at),
    from: Math.min(one, far),
    to: Math.max(one, far),
    ...(landing.mark !== undefined && { mark: there(landing.mark) }),
    station: wrapStation(section.towards(Math.atan2(y, x)), section.turn),
    lean: end === otherEnd ? Math.PI - landing.lean : landing.lean,
  };
}
