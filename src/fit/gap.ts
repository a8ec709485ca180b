import type { Mm } from '../measure/units.ts';
import type { Cope } from '../saddle/cope.ts';
import { type Joint, toMeet } from '../saddle/joint.ts';
import { wallLine } from '../saddle/lines.ts';
import { highestOf } from '../saddle/peaks.ts';
import { type Landing, pastClock, towardsClock } from '../space/landing.ts';
import { wrapStation } from '../space/section.ts';
import { cutFaceOf, type Face, outerEdge } from './face.ts';
import { slideToTouch } from './seat.ts';
import { faceSideLimits } from './side-limits.ts';

/** The widest gap left round a seated joint, and where. */
export interface Gap {
  readonly station: number;
  readonly mm: Mm;
  /** The station across the plane through heel and toe, where the gap is as wide there. */
  readonly twin?: number;
}

const STATIONS = 360;

/**
 * The gap of this end as prepared: slid along its axis until any point of its face touches, the distance from the
 * cut's outer edge to the header, over the stations with contact. With a root gap it is held at its work point and not
 * slid, and the gap is what there is beyond the root. A bevel all round leaves none, but for a corner that it leaves to be filled.
 */
export function gapOf(cope: Cope, wall: Mm): Gap {
  const { preparation, toFlat } = cope.end;
  if (preparation.edge === 'bevel' && !preparation.land && !toFlat) return { station: 0, mm: 0 };
  const face = cutFaceOf(cope, wall);
  const joint = toMeet(cope.joint);
  const sideLimits = faceSideLimits(cope, face);
  // The square line touches everywhere as it stands: that is how it is made.
  const touchesAsCut = preparation.edge === 'square' && preparation.from === 'outside' && !toFlat;
  const slide = cope.joint.rooted || touchesAsCut ? 0 : slideToTouch(joint, face, sideLimits);
  const gap = widestGap(joint, face, slide, touches(cope.joint), sideLimits);
  const twin = twinOf(cope, gap, (station) => gapAt(joint, face, slide, station));
  return twin === undefined ? gap : { ...gap, twin };
}

/** Gaps that differ by less are as wide as one another, in print and to a feeler. */
const AS_WIDE: Mm = 0.005;

function twinOf(cope: Cope, { station, mm }: Gap, gap: (station: number) => Mm): number | undefined {
  const heel = heelOf(cope);
  if (heel === undefined || mm === 0) return undefined;
  const { turn } = cope.joint.section;
  const across = wrapStation(2 * heel - station, turn);
  const apart = Math.abs(across - station);
  const isElsewhere = Math.min(apart, turn - apart) > turn / STATIONS;
  return isElsewhere && Math.abs(gap(across) - mm) < AS_WIDE ? across : undefined;
}

/** The heel's station; undefined for a union, which has none. */
function heelOf({ heel, joint: { section } }: Cope): number | undefined {
  return heel === undefined ? undefined : section.towards(heel);
}

/** From the cut's outer edge to the header at a station. */
function gapAt(joint: Joint, face: Face, slide: Mm, station: number): Mm {
  const { x, y } = joint.section.at(station);
  return clearance(joint, x, y, outerEdge(face, station) + slide);
}

/** Over the stations that count, the widest way from the cut's outer edge to the header. */
export function widestGap(
  joint: Joint,
  face: Face,
  slide: Mm,
  counts: (station: number) => boolean,
  sideLimits: readonly number[],
): Gap {
  const gap = (station: number): Mm => {
    if (!counts(station)) return Number.NEGATIVE_INFINITY;
    return gapAt(joint, face, slide, station);
  };
  const widest = highestOf({
    height: gap,
    turn: joint.section.turn,
    start: 0,
    steps: STATIONS,
    sideLimits,
  });
  return { station: widest?.station ?? 0, mm: Math.max(0, widest?.height ?? 0) };
}

/** Whether the tube's outside meets the header at a station. */
export function touches(joint: Joint): (station: number) => boolean {
  const outside = wallLine(joint, 0);
  return (station) => outside(station).contact;
}

/** The way from a point, in the frame of the tube's section, to the nearest header. */
function clearance(joint: Joint, x: Mm, y: Mm, z: Mm): Mm {
  const to = (landing: Landing): Mm =>
    landing.solid.distance(towardsClock(landing, x, y), pastClock(landing, x, y), z - landing.shift);
  return Math.min(...joint.landings.map(to));
}
