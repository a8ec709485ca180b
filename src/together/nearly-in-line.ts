import { endPointOf } from '../frame/end-point.ts';
import { type EndName, otherEnd } from '../job/job.ts';
import { type Mm, radians } from '../measure/units.ts';
import { byLine, norm, unitOf, wayTo } from '../space/vector.ts';
import { type StandingTube, workPointOf } from './in-space.ts';

/** Two tubes that are mitred and all but lie in one line. */
export interface NearlyInLine {
  readonly tubes: readonly [number, number];
  /** The points by their names: where they meet, and their other ends. */
  readonly point: string;
  readonly ends: readonly [string, string];
  /** How far that point lies beside the line from one end to the other. */
  readonly off: Mm;
}

/** A mitre that turns less is hardly meant: two tubes are laid end to end to run straight on. Common practice, no source. */
const LEAST_TURN = radians(3);

/** Every two tubes of a frame that are mitred nearly in line; but for an arc of several such mitres, whose tubes have one at both ends. */
export function nearlyInLineIn(standings: readonly StandingTube[]): readonly NearlyInLine[] {
  const bends = standings.flatMap((standing) =>
    (['A', 'B'] as const).flatMap((end) => (isSlight(standing, end) ? [{ standing, end }] : [])),
  );
  const isArc = ({ tube }: StandingTube): boolean =>
    bends.filter(({ standing }) => standing.tube === tube).length > 1;
  return bends.flatMap(({ standing, end }): NearlyInLine[] => {
    const { seat, tube } = standing;
    const met = bends.find((each) => each.standing.tube === seat.ends[end].headers[0]);
    if (!met || met.standing.tube < tube || isArc(standing) || isArc(met.standing)) return [];
    const [from, to] = [endPointOf(seat, otherEnd(end)), endPointOf(met.standing.seat, otherEnd(met.end))];
    const along = unitOf(wayTo(from.place, to.place));
    if (!along) return [];
    const off = norm(byLine(from.place, along, workPointOf(seat, end)).off);
    const { name: point } = endPointOf(seat, end);
    return [{ tubes: [tube, met.standing.tube], point, ends: [from.name, to.name], off }];
  });
}

function isSlight({ solution }: StandingTube, end: EndName): boolean {
  const cut = solution.tube.ends[end];
  const [part] = cut?.kind === 'coped' ? cut.parts : [];
  return part?.onto.kind === 'mitre' && part.onto.turn.rad < LEAST_TURN;
}
