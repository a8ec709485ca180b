import type { EndName, Frame, Job, Part, Seat, SeatEnd } from '../job/job.ts';
import type { Said } from '../measure/said.ts';
import type { Mm } from '../measure/units.ts';
import type { Cope, EndSolution } from '../saddle/cope.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import {
  crossProduct,
  dot,
  plusTimes,
  scaledBy,
  timesPlusTimes,
  type Vector,
  wayTo,
} from '../space/vector.ts';
import { asWritten } from '../words/said.ts';

/** A tube of a frame where it stands, solved. */
export interface StandingTube {
  readonly tube: number;
  readonly seat: Seat;
  readonly solution: TubeSolution;
}

export function standingsIn(frame: Frame, solutions: readonly TubeSolution[]): readonly StandingTube[] {
  return solutions.flatMap((solution, tube) => {
    const seat = frame.seats[tube];
    return seat ? [{ tube, seat, solution }] : [];
  });
}

/** A tube's name, by its place in the job. */
export function nameOfTube({ tubes }: Job, tube: number): Said {
  return asWritten(tubes[tube]?.name ?? '');
}

/** A way round a tube, from its spine, right-handed about its axis: a unit vector. */
export function wayAround({ axis, spine }: Seat, angle: number): Vector {
  return plusTimes(scaledBy(spine, Math.cos(angle)), Math.sin(angle), crossProduct(axis, spine));
}

/** Whether a plain end is spliced to another's: nothing leaves it open. */
export function isSpliced({ past, open, inside }: SeatEnd): boolean {
  return past !== undefined && !open && inside === undefined;
}

/** From an end into its tube's body. */
export function bodyAt(seat: Seat, end: EndName): Vector {
  return end === 'A' ? seat.axis : scaledBy(seat.axis, -1);
}

/** Where an end's work point is. */
export function workPointOf(seat: Seat, end: EndName): Vector {
  return plusTimes(seat.from, seat.ends[end].workPoint, seat.axis);
}

/** Points of a tube by their place in the section, x to the spine, and their setback from an end's work point. */
export function pointsAt(seat: Seat, end: EndName): (x: Mm, y: Mm, setback: Mm) => Vector {
  const { axis, spine } = seat;
  const [side, workPoint, body] = [crossProduct(axis, spine), workPointOf(seat, end), bodyAt(seat, end)];
  // Not by `scaledBy`, most of whose vectors stay as long as the frame: the engine puts all that it makes where such things are kept, and
  // the millions that are gone at once would heap up there.
  return (x, y, setback) =>
    plusTimes(plusTimes(workPoint, 1, timesPlusTimes(x, spine, y, side)), setback, body);
}

/** Places in a tube's own terms: along its axis from its first point, and in its section. */
export function inTube({ from, axis, spine }: Seat): (place: Vector) => { along: Mm; x: Mm; y: Mm } {
  const side = crossProduct(axis, spine);
  return (place) => {
    const way = wayTo(from, place);
    return { along: dot(way, axis), x: dot(way, spine), y: dot(way, side) };
  };
}

/** A place that is given in a tube's own terms: the other way round. */
export function placeInSpace(seat: Seat, along: Mm, x: Mm, y: Mm): Vector {
  const { from, axis, spine } = seat;
  return plusTimes(plusTimes(plusTimes(from, along, axis), x, spine), y, crossProduct(axis, spine));
}

/** Where a stop lies that is held square against a tube's end A, along its axis from its first point. */
export function stopAt({ seat, solution }: StandingTube): Mm {
  return seat.ends.A.workPoint + reachOf(solution.ends.A);
}

/** The same of end B. */
export function farEndOf({ seat, solution }: StandingTube): Mm {
  return seat.ends.B.workPoint - reachOf(solution.ends.B);
}

function reachOf(end: EndSolution | undefined): Mm {
  return end?.kind === 'coped' ? end.longPoint.setback : 0;
}

/** A point of an end's header's axis, and the axis, in space. */
export function headerAxis(
  seat: Seat,
  end: EndName,
  { angle, clock, offset, shift }: Part,
): { at: Vector; h: Vector } {
  const body = bodyAt(seat, end);
  const u = wayAround(seat, clock.rad);
  const w = wayAround(seat, clock.rad + Math.PI / 2);
  const h = plusTimes(scaledBy(u, Math.sin(angle.rad)), Math.cos(angle.rad), body);
  return { at: plusTimes(plusTimes(workPointOf(seat, end), shift.mm, body), offset.mm, w), h };
}

/** The ends of a tube that are coped. */
export function copesOf({ ends }: TubeSolution): readonly (readonly [EndName, Cope])[] {
  return (['A', 'B'] as const).flatMap((end) => {
    const cope = ends[end];
    return cope?.kind === 'coped' ? [[end, cope] as const] : [];
  });
}
