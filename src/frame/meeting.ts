import type { HeaderEnd, Part } from '../job/job.ts';
import type { Angle, Length, Mm, Radians } from '../measure/units.ts';
import { inchFraction, millimetres, writeAngle } from '../measure/write.ts';
import {
  crossProduct,
  dot,
  nearestFeet,
  norm,
  plusTimes,
  scaledBy,
  squareTo,
  type Vector,
  wayTo,
} from '../space/vector.ts';
import { asHeader } from './asked.ts';
import { stationAngle } from './places.ts';
import { bodyOf, pointOf, type Stood, type StoodEnd } from './stood.ts';

/** How an end meets the endless axis of another tube. Numbers, as a tube's own file would give them. */
export interface Meeting {
  readonly header: Stood;
  /** At most 90 degrees: the sense of the header's axis is the one that makes it so. */
  readonly angle: Radians;
  readonly clock: Radians;
  readonly offset: Mm;
  /** From the end's point to the foot of the common perpendicular, into the body. */
  readonly shift: Mm;
  /** The header's axis in that sense, and the foot on it. */
  readonly h: Vector;
  readonly foot: Vector;
  /** The body's direction square to the header, and the way square to both. */
  readonly towards: Vector;
  readonly beside: Vector;
}

/** Under this, in mm, an offset or a shift is none. */
const NOTHING: Mm = 0.01;
/** An angle as near to square, or a clock to half a turn, is that. */
const SQUARE: Radians = (0.001 * Math.PI) / 180;
/** Lines that make less are taken for parallel. */
const PARALLEL = 1e-4;

/** How an end meets another tube's axis; undefined where they are parallel. */
export function meetingOf(own: StoodEnd, header: Stood): Meeting | undefined {
  const body = bodyOf(own);
  const point = pointOf(own);
  const square = norm(crossProduct(body, header.axis));
  if (square < PARALLEL) return undefined;
  const exact = Math.atan2(square, Math.abs(dot(body, header.axis)));
  const isSquare = Math.PI / 2 - exact < SQUARE;
  const { h, u } = senseOf(own, header.axis, isSquare);
  const clock = clockOf(own, u, isSquare);
  const { tube } = own;
  const past = crossProduct(tube.axis, tube.spine);
  const w = plusTimes(scaledBy(tube.spine, -Math.sin(clock)), Math.cos(clock), past);
  const [shift, onHeader] = nearestFeet({ from: point, axis: body }, header);
  const foot = plusTimes(header.from, onHeader, header.axis);
  const offset = dot(wayTo(plusTimes(point, shift, body), foot), w);
  return {
    header,
    angle: isSquare ? Math.PI / 2 : exact,
    clock,
    offset: Math.abs(offset) < NOTHING ? 0 : offset,
    shift: Math.abs(shift) < NOTHING ? 0 : shift,
    h,
    foot,
    towards: squareTo(h, body) ?? tube.spine,
    beside: w,
  };
}

/** The header's axis in the sense that makes the angle at most 90 degrees; where it is square, with a clock in [0, 180). */
function senseOf({ tube, end }: StoodEnd, axis: Vector, isSquare: boolean): { h: Vector; u: Vector } {
  const back = scaledBy(axis, -1);
  const u = squareTo(tube.axis, axis) ?? tube.spine;
  if (!isSquare) {
    const sense = dot(axis, bodyOf({ tube, end })) >= 0;
    return sense ? { h: axis, u } : { h: back, u: scaledBy(u, -1) };
  }
  const turned = stationAngle(tube.axis, tube.spine, u);
  return turned >= -SQUARE && turned < Math.PI - SQUARE ? { h: axis, u } : { h: back, u: scaledBy(u, -1) };
}

function clockOf({ tube }: StoodEnd, u: Vector, isSquare: boolean): Radians {
  const turned = stationAngle(tube.axis, tube.spine, u);
  if (Math.abs(turned) < SQUARE && isSquare) return 0;
  return turned < 0 ? turned + 2 * Math.PI : turned;
}

/** The header of a meeting as a part of its end, at the foot of the perpendicular or, of several, shifted from the point. */
export function partOfMeeting(meeting: Meeting, shifted: boolean, units: 'mm' | 'in'): Part {
  const { header, angle, clock, offset, shift } = meeting;
  return {
    onto: asHeader(header.asked.section, angleOf(rollOf(meeting))),
    angle: angleOf(angle),
    clock: angleOf(clock),
    offset: lengthOf(offset, units),
    shift: lengthOf(shifted ? shift : 0, units),
  };
}

/** How a rectangular header's wide face lies to the tube's body, in (-90, 90] degrees. */
function rollOf({ header, towards, beside }: Meeting): Radians {
  if (header.asked.section.kind === 'round') return 0;
  const roll = Math.atan2(dot(header.spine, beside), dot(header.spine, towards));
  const half = roll - Math.PI * Math.ceil(roll / Math.PI - 0.5);
  return Math.abs(half) < 1e-12 ? 0 : half;
}

export function angleOf(rad: Radians): Angle {
  return { rad, wrote: writeAngle(rad), unit: 'deg' };
}

/** A length that was worked out, in the words of the job's unit. */
export function lengthOf(mm: Mm, units: 'mm' | 'in'): Length {
  return { mm, wrote: units === 'mm' ? millimetres(mm) : inchFraction(mm), unit: units };
}

/** Where a header's own end stands: how that end's frame lies in this meeting's. `cut` is that end, its work point so far along its axis. */
export function stopOfMeeting(
  meeting: Meeting,
  end: 'A' | 'B',
  cut: { readonly end: HeaderEnd['end']; readonly workPoint: Mm },
): HeaderEnd {
  const { header, h, foot, towards, beside } = meeting;
  const at = dot(wayTo(foot, plusTimes(header.from, cut.workPoint, header.axis)), h);
  return {
    section: header.asked.section,
    end: cut.end,
    at,
    ahead: dot(h, bodyOf({ tube: header, end })) > 0 ? 1 : -1,
    turn: stationAngle(header.axis, header.spine, towards),
    round: dot(crossProduct(header.axis, towards), beside) > 0 ? 1 : -1,
  };
}
