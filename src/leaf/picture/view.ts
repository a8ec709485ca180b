import type { Point } from '../../draw/drawing.ts';
import { point } from '../../draw/path.ts';
import type { Part } from '../../job/job.ts';
import type { Mm, Radians } from '../../measure/units.ts';
import { exactCosine } from '../../space/round.ts';
import { dot, type Vector } from '../../space/vector.ts';

/** A way to look at a joint in the first header's frame: x towards its clock, y a quarter turn on, z the setback. */
export interface View {
  readonly project: (place: Vector) => Point;
  /** Unit vector to the one who looks. */
  readonly toViewer: Vector;
}

/** Which way up a picture stands: the tube's B direction is up, so the body is up at A, 1, and down at B, -1. */
export type BodyWay = 1 | -1;

/** From the station a quarter turn before the clock. */
export function fromSide(k: BodyWay): View {
  return { project: ([x, , z]) => point(x, k * z), toViewer: [0, -1, 0] };
}

/** From the clock, square to the tube. */
export function fromClock(k: BodyWay): View {
  return { project: ([, y, z]) => point(y, k * z), toViewer: [1, 0, 0] };
}

/** Along the header's axis, from the clock's side. */
export function alongHeader(k: BodyWay, angle: Radians): View {
  const toBody: Vector = [-exactCosine(angle), 0, Math.sin(angle)];
  return {
    project: (place) => point(place[1], k * dot(place, toBody)),
    toViewer: [Math.sin(angle), 0, exactCosine(angle)],
  };
}

/** A header's own directions in the frame of the first one. */
export interface Axes {
  readonly along: Vector;
  readonly toBody: Vector;
  readonly beside: Vector;
  /** The point at so much along the header, off its axis towards the body, and beside it. */
  readonly at: (along: Mm, off: Mm, beside: Mm) => Vector;
}

/** The axes of one part of an end whose first header has this clock. */
export function axesOf({ angle, clock, offset, shift }: Part, firstClock: Radians): Axes {
  const turned = turner(clock.rad - firstClock);
  const [sin, cos] = [Math.sin(angle.rad), exactCosine(angle.rad)];
  const along = turned([sin, 0, cos]);
  const toBody = turned([-cos, 0, sin]);
  const beside = turned([0, 1, 0]);
  return {
    along,
    toBody,
    beside,
    at: (q, off, side) => {
      const place = (i: 0 | 1 | 2): Mm =>
        q * along[i] + off * toBody[i] + (side + offset.mm) * beside[i] + (i === 2 ? shift.mm : 0);
      return [place(0), place(1), place(2)];
    },
  };
}

/** Turns vectors about the tube's axis, towards growing stations. */
export function turner(by: Radians): (v: Vector) => Vector {
  const [sin, cos] = [Math.sin(by), exactCosine(by)];
  return ([x, y, z]) => [x * cos - y * sin, x * sin + y * cos, z];
}

/** How far a header is drawn each way along its axis from the work point, past a tube of this reach. */
export interface Extent {
  readonly fore: Mm;
  readonly aft: Mm;
}
