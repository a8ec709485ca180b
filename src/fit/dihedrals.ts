import type { Radians } from '../measure/units.ts';
import { breaksOf } from '../saddle/breaks.ts';
import { type Cope, clockStation } from '../saddle/cope.ts';
import { dihedralAt, edgeAngleAt } from '../saddle/dihedral.ts';
import { highestOf, type Peak } from '../saddle/peaks.ts';

/** The least and the most dihedral over the stations with contact, the thinnest edge, and where they are. */
export interface Dihedrals {
  readonly least: WeldCorner;
  readonly most: WeldCorner;
  /** How thick the tube's own edge stands where it is thinnest. */
  readonly thinnest: WeldCorner;
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
  const extreme = (sign: 1 | -1, corner = dihedralAt): Peak | undefined => {
    const height = (station: number): number =>
      touching(station).contact ? sign * corner(joint, station) : Number.NEGATIVE_INFINITY;
    return highestOf({ height, turn, start, steps: STATIONS, sideLimits });
  };
  const least = extreme(-1);
  const most = extreme(1);
  const thinnest = extreme(-1, edgeAngleAt);
  if (!least || !most || !thinnest) return undefined;
  return {
    least: { station: least.station, angle: -least.height },
    most: { station: most.station, angle: most.height },
    thinnest: { station: thinnest.station, angle: -thinnest.height },
  };
}
