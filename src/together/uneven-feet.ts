import { endPointOf } from '../frame/end-point.ts';
import type { Mm } from '../measure/units.ts';
import { LEVEL, levelEndsOf } from './feet.ts';
import { bodyAt, type StandingTube } from './in-space.ts';

/** Feet of a frame that stand lower than its others, all by the names of their points. */
export interface UnevenFeet {
  readonly tubes: readonly number[];
  readonly low: readonly string[];
  readonly high: readonly string[];
  readonly by: Mm;
}

/** Feet further apart than this part of the frame's height stand on two floors, as on a stair: common practice, no source. */
const ON_ONE_FLOOR = 0.2;

/** The feet of a frame, which are cut level and bear it, where they stand at two heights; undefined where they are level. */
export function unevenFeetIn(standings: readonly StandingTube[]): UnevenFeet | undefined {
  const feet = standings.flatMap((standing) =>
    levelEndsOf(standing).flatMap((end) => {
      const { name, place } = endPointOf(standing.seat, end);
      return bodyAt(standing.seat, end)[2] > 0 ? [{ tube: standing.tube, name, z: place[2] }] : [];
    }),
  );
  const heights = standings.flatMap(({ seat }) => [
    endPointOf(seat, 'A').place[2],
    endPointOf(seat, 'B').place[2],
  ]);
  const least = Math.min(...feet.map(({ z }) => z));
  const isLow = ({ z }: { readonly z: Mm }): boolean => z - least <= LEVEL;
  const [low, high] = [feet.filter(isLow), feet.filter((foot) => !isLow(foot))];
  const next = Math.min(...high.map(({ z }) => z));
  if (high.length === 0 || next - least > ON_ONE_FLOOR * (Math.max(...heights) - least)) return undefined;
  const namesOf = (those: typeof feet): readonly string[] => [...new Set(those.map(({ name }) => name))];
  return { tubes: feet.map(({ tube }) => tube), low: namesOf(low), high: namesOf(high), by: next - least };
}
