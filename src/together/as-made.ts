import type { EndName } from '../job/job.ts';
import type { Placing, TubeSolution } from '../saddle/solve.ts';
import { wrapStation } from '../space/section.ts';
import { dot, scaledBy, type Vector } from '../space/vector.ts';
import { farEndOf, headerAxis, type StandingTube, stopAt } from './in-space.ts';
import type { TubeLanding } from './landings.ts';

/** How each tube of a frame is laid on the piece that is made for it, by its place in the job. */
export type Placings = ReadonlyMap<number, Placing>;

export function placingsOf(pieces: readonly TubeSolution[]): Placings {
  return new Map(pieces.flatMap(({ places = [] }) => places.map((placing) => [placing.tube, placing])));
}

/** What an end of a tube is called on the leaves of its piece; and the other way round. */
export function endAsMade(placings: Placings, tube: number, end: EndName): EndName {
  return placings.get(tube)?.swapped === (end === 'A') ? 'B' : 'A';
}

/** The station of its piece on which a station of a tube lies. */
export function stationAsMade(placings: Placings, { tube, solution }: StandingTube, station: number): number {
  const { spineAt = 0, swapped = false } = placings.get(tube) ?? {};
  return wrapStation(spineAt + (swapped ? 0 - station : station), solution.section.turn);
}

/**
 * A landing as it is marked out: ends, distances and stations of both tubes as the leaves of their pieces have them, for that is what
 * stands on the steel; a tube may be its piece turned, or end for end.
 */
export function asMade(
  landing: TubeLanding,
  standings: readonly StandingTube[],
  placings: Placings,
): TubeLanding {
  const { on, tube, end, at, from, to, mark, station, lean } = landing;
  const header = standings[on];
  if (!header) return landing;
  const own = {
    ...landing,
    end: endAsMade(placings, tube, end),
    station: stationAsMade(placings, header, station),
  };
  if (!placings.get(on)?.swapped) return own;
  const length = farEndOf(header) - stopAt(header);
  return {
    ...own,
    at: length - at,
    from: length - to,
    to: length - from,
    ...(mark !== undefined && { mark: length - mark }),
    lean: Math.PI - lean,
  };
}

/**
 * A header of a piece's end as a tube that is this piece has it: which tube that is, by its place in the job, and the way along it to which
 * the piece leans or, of a square joint, that of its axis.
 */
export interface HeaderThere {
  readonly on: number;
  readonly leans: Vector;
}

/** Finds it by the way of its axis: two tubes that are one piece may name their headers in another order. A plate is no tube. */
export function headerThere(
  piece: TubeSolution,
  end: EndName,
  part: number,
  there: StandingTube,
  placings: Placings,
): HeaderThere | undefined {
  const its = endAsMade(placings, there.tube, end);
  const [mine, theirs] = [piece.ends[end], there.solution.ends[its]];
  const asked = mine?.kind === 'coped' ? mine.end.parts[part] : undefined;
  if (!asked || theirs?.kind !== 'coped') return undefined;
  const { spineAt = 0, swapped = false } = placings.get(there.tube) ?? {};
  const turned = (spineAt / piece.section.turn) * 2 * Math.PI;
  const rad = swapped ? turned - asked.clock.rad : asked.clock.rad - turned;
  const { h } = headerAxis(there.seat, its, { ...asked, clock: { ...asked.clock, rad } });
  const alike = theirs.end.parts.map((each) => Math.abs(dot(headerAxis(there.seat, its, each).h, h)));
  const on = there.seat.ends[its].headers[alike.indexOf(Math.max(...alike))];
  const isAcute = asked.angle.rad <= Math.PI / 2;
  return on === undefined ? undefined : { on, leans: isAcute ? h : scaledBy(h, -1) };
}
