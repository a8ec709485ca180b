import type { EndName, Part } from '../job/job.ts';
import { centreOn } from '../job/landing.ts';
import type { Mm, Radians } from '../measure/units.ts';
import type { Cope } from '../saddle/cope.ts';
import { meetAt, onEndFace } from '../saddle/lines.ts';
import { greatestNear } from '../space/golden-section.ts';
import type { Landing } from '../space/landing.ts';
import { wrapStation } from '../space/section.ts';
import { dot, plusTimes, type Vector } from '../space/vector.ts';
import {
  bodyAt,
  copesOf,
  farEndOf,
  headerAxis,
  inTube,
  isSpliced,
  pointsAt,
  type StandingTube,
  stopAt,
  wayAround,
} from './in-space.ts';
import type { Splice } from './splices.ts';

/**
 * Where an end lands on another tube of its frame. Distances run along that tube's axis from a stop that is held square against
 * its end A, towards B.
 */
export interface TubeLanding {
  /** Both by their places in the job. */
  readonly on: number;
  readonly tube: number;
  readonly end: EndName;
  /** The work point. */
  readonly at: Mm;
  /** The least and the greatest of the outside footprint. */
  readonly from: Mm;
  readonly to: Mm;
  /** Where the landing tube's centre line comes out of the outside; left out where it passes beside. */
  readonly mark?: Mm;
  /** The station of that or, where it passes beside, of the common perpendicular. */
  readonly station: number;
  /** Which way that is from the axis, of length 1. */
  readonly way: Vector;
  /** The angle to the B direction. */
  readonly lean: Radians;
  /** How far the footprint runs over the end of the tube that it is on; 0 where it does not. */
  readonly over: Mm;
}

/**
 * Every landing of a frame on another of its tubes, in the order of what is landed on and along it. One that lies over a splice is on both
 * tubes that are joined there, whole on each.
 */
export function landingsIn(
  standings: readonly StandingTube[],
  splices: readonly Splice[],
): readonly TubeLanding[] {
  const found = standings.flatMap((standing) =>
    copesOf(standing.solution).flatMap(([end, cope]) =>
      cope.end.parts.flatMap((_, part) => {
        const header = standings[standing.seat.ends[end].headers[part] ?? -1];
        const isWall = !cope.joint.landings[part]?.mitred;
        if (!header || !isWall) return [];
        const landing = landingOn(standing, end, cope, part, header);
        const others = acrossSplices(landing, header, splices).flatMap((tube) => standings[tube] ?? []);
        return [landing, ...others.map((other) => landingOn(standing, end, cope, part, other))];
      }),
    ),
  );
  return alongTheirHeaders(found);
}

/** The tubes onto which a footprint runs where its header is spliced to them. */
function acrossSplices(
  { on, from, to }: TubeLanding,
  header: StandingTube,
  splices: readonly Splice[],
): readonly number[] {
  const length = farEndOf(header) - stopAt(header);
  const runsOver = (end: EndName): boolean => (end === 'A' ? from < -BESIDE : to > length + BESIDE);
  return splices.flatMap(({ tube, end, to: other }) => (tube === on && runsOver(end) ? [other] : []));
}

/** By what is landed on, and along that. */
export function alongTheirHeaders(landings: readonly TubeLanding[]): readonly TubeLanding[] {
  return landings.toSorted((a, b) => a.on - b.on || (a.mark ?? a.at) - (b.mark ?? b.at));
}

function landingOn(
  own: StandingTube,
  end: EndName,
  cope: Cope,
  part: number,
  header: StandingTube,
): TubeLanding {
  const { seat } = own;
  const asked = cope.end.parts[part] ?? cope.end.parts[0];
  const stop = stopAt(header);
  const { at } = headerAxis(seat, end, asked);
  const [from, to] = reachAlong(own, end, cope, part, header);
  const over = Math.max(
    0,
    mayRunPast(asked, header, 'A') ? 0 : stop - from,
    mayRunPast(asked, header, 'B') ? 0 : to - farEndOf(header),
  );
  return {
    on: header.tube,
    tube: own.tube,
    end,
    at: inTube(header.seat)(at).along - stop,
    from: from - stop,
    to: to - stop,
    ...centreAt(own, end, asked, header, at),
    lean: Math.acos(Math.min(1, Math.max(-1, dot(bodyAt(seat, end), header.seat.axis)))),
    over,
  };
}

/** Whether a footprint may run past an end of its header: of one that ends at the joint, and where it is spliced and so goes on. */
function mayRunPast(asked: Part, header: StandingTube, end: EndName): boolean {
  return asked.stops !== undefined || isSpliced(header.seat.ends[end]);
}

const LOOKS = 720;

/** From where to where, along the header, the outside footprint lies. */
function reachAlong(
  { seat }: StandingTube,
  end: EndName,
  { joint }: Cope,
  part: number,
  header: StandingTube,
): readonly [Mm, Mm] {
  const { turn } = joint.section;
  const [pointAt, inHeader] = [pointsAt(seat, end), inTube(header.seat)];
  const alongAt = (station: number): Mm | undefined => {
    const met = meetAt(joint, station, 0);
    if (!met.contact || met.part !== part || onEndFace(met)) return undefined;
    const { x, y } = joint.section.at(station);
    return inHeader(pointAt(x, y, met.setback)).along;
  };
  const step = turn / LOOKS;
  const looks = Array.from({ length: LOOKS }, (_, i) => alongAt(i * step));
  const most = (sign: 1 | -1): Mm => {
    const height = (along: Mm | undefined): number =>
      along === undefined ? Number.NEGATIVE_INFINITY : sign * along;
    return sign * greatestNear((station) => height(alongAt(station)), looks.map(height), step);
  };
  return [most(-1), most(1)];
}

/**
 * Where the end's centre line comes out of the header's outside: of one that ends at the joint, where it would if that ran on, for
 * there may be nothing of it right at the line; such a place, and one beyond a splice, is marked only where the header is.
 */
function centreAt(
  { seat }: StandingTube,
  end: EndName,
  asked: Part,
  header: StandingTube,
  axis: Vector,
): Pick<TubeLanding, 'mark' | 'station' | 'way'> {
  const { section } = header.solution;
  const { landing, out } = centreOn(asked);
  const inHeader = inTube(header.seat);
  const outAt = (x: Mm, y: Mm): Pick<TubeLanding, 'station' | 'way'> => {
    const angle = Math.atan2(y, x);
    return { station: wrapStation(section.towards(angle), section.turn), way: wayAround(header.seat, angle) };
  };
  if (!out) {
    const at = inHeader(axis);
    const foot = inHeader(footOn(seat, axis, landing));
    return outAt(foot.x - at.x, foot.y - at.y);
  }
  const { along, x, y } = inHeader(pointsAt(seat, end)(0, 0, out.z + landing.shift));
  const [from, to] = [stopAt(header), farEndOf(header)];
  const isThere =
    (!mayRunPast(asked, header, 'A') || along > from - BESIDE) &&
    (!mayRunPast(asked, header, 'B') || along < to + BESIDE);
  return { ...(isThere && { mark: along - from }), ...outAt(x, y) };
}

/** No tape tells such a place from the end itself. */
const BESIDE: Mm = 0.05;

/** The foot of the common perpendicular on the end's own axis. */
function footOn(seat: StandingTube['seat'], axis: Vector, { offset, sinClock, cosClock }: Landing): Vector {
  const w = wayAround(seat, Math.atan2(sinClock, cosClock) + Math.PI / 2);
  return plusTimes(axis, -offset, w);
}
