import type { Radians } from '../measure/units.ts';
import { breaksOf } from '../saddle/breaks.ts';
import { type Cope, clockStation } from '../saddle/cope.ts';
import { dihedralAt } from '../saddle/dihedral.ts';
import { highestOf, type Peak } from '../saddle/peaks.ts';

/** The least and the most dihedral over the stations with contact, and where they are. */
export interface Dihedrals {
  readonly least: WeldCorner;
  readonly most: WeldCorner;
}

export interface WeldCorner {
  readonly station: number;
  readonly angle: Radians;
}

const STATIONS = 96;

/** Undefined where the tube's outside touches the header nowhere. */
export function dihedralsOf({ joint, touching, end }: Cope): Dihedrals | undefined {
  const { turn } = joint.section;
  const start = clockStation(joint, end);
  // It runs off as a square root where a header is grazed, and jumps at edges of the header and of the tube.
  const sideLimits = breaksOf(joint, touching, undefined);
  const extreme = (sign: 1 | -1): Peak | undefined => {
    const height = (station: number): number =>
      touching(station).contact ? sign * dihedralAt(joint, station) : Number.NEGATIVE_INFINITY;
    return highestOf({ height, turn, start, steps: STATIONS, sideLimits });
  };
  const least = extreme(-1);
  const most = extreme(1);
  if (!least || !most) return undefined;
  return {
    least: { station: least.station, angle: -least.height },
    most: { station: most.station, angle: most.height },
  };
}
