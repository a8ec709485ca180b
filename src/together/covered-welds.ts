import type { EndName } from '../job/job.ts';
import type { Mm } from '../measure/units.ts';
import type { Cope } from '../saddle/cope.ts';
import { meetAt, onEndFace } from '../saddle/lines.ts';
import { setbackAt } from '../space/landing.ts';
import { withinOutline } from '../space/section.ts';
import type { Vector } from '../space/vector.ts';
import { copesOf, inTube, pointsAt, type StandingTube } from './in-space.ts';
import type { Splice } from './splices.ts';

/** A weld that is reached no more, in part, once other tubes are on: all by their places in the job. */
export interface CoveredWeld {
  /** The end that is welded, and to which tube. */
  readonly tube: number;
  readonly end: EndName;
  readonly on: number;
  /** The tubes that lie over it. */
  readonly under: readonly number[];
}

/** The line of a weld: the outside outline of an end on a tube. */
interface Weld extends Omit<CoveredWeld, 'under'> {
  lineOf(): readonly Vector[];
  /** Of an end that is spliced to the other, on which all that comes later lies as on one tube. */
  readonly spliced: boolean;
}

/** An end that lands on others, and what it lands on. */
interface Lander {
  readonly tube: number;
  readonly headers: readonly number[];
  isOver(place: Vector): boolean;
}

/**
 * The welds of a frame, of landings, mitres and splices, that lie in part under a tube that lands on the same header and comes later: it
 * is coped onto both that are welded there. In the order of the tubes that are welded on.
 */
export function coveredWelds(
  standings: readonly StandingTube[],
  splices: readonly Splice[],
): readonly CoveredWeld[] {
  const landers = standings.flatMap(landersOf);
  const onto = (on: number): readonly Lander[] => byHeader.get(on) ?? [];
  const byHeader = new Map<number, Lander[]>();
  for (const lander of landers)
    for (const on of lander.headers) byHeader.set(on, [...(byHeader.get(on) ?? []), lander]);
  return standings
    .flatMap((standing) => weldsOf(standing, splices))
    .flatMap(({ lineOf, spliced, ...weld }): readonly CoveredWeld[] => {
      const later = spliced
        ? [...onto(weld.on), ...onto(weld.tube)]
        : onto(weld.on).filter(({ headers }) => headers.includes(weld.tube));
      const line = later.length > 0 ? lineOf() : [];
      const under = new Set(later.flatMap(({ tube, isOver }) => (line.some(isOver) ? [tube] : [])));
      return under.size > 0 ? [{ ...weld, under: [...under] }] : [];
    })
    .sort((a, b) => a.on - b.on);
}

/** Round an end. */
const LOOKS = 360;

function weldsOf(standing: StandingTube, splices: readonly Splice[]): readonly Weld[] {
  const { tube, seat, solution } = standing;
  const { section } = solution;
  /** The places of those stations where the end's setback is told. */
  const lineOf = (end: EndName, setbackAtStation: (station: number) => Mm | undefined): readonly Vector[] => {
    const placeAt = pointsAt(seat, end);
    return Array.from({ length: LOOKS }, (_, i) => (i * section.turn) / LOOKS).flatMap((station) => {
      const { x, y } = section.at(station);
      const setback = setbackAtStation(station);
      return setback === undefined ? [] : [placeAt(x, y, setback)];
    });
  };
  const coped = copesOf(solution).flatMap(([end, { joint }]) =>
    seat.ends[end].headers.map((on, part): Weld => {
      const setbackOn = (station: number): Mm | undefined => {
        const met = meetAt(joint, station, 0);
        return met.contact && met.part === part && !onEndFace(met) ? met.setback : undefined;
      };
      return { tube, end, on, spliced: false, lineOf: () => lineOf(end, setbackOn) };
    }),
  );
  const spliced = splices
    .filter((splice) => splice.tube === tube)
    .map(({ end, to }): Weld => ({ tube, end, on: to, spliced: true, lineOf: () => lineOf(end, () => 0) }));
  return [...coped, ...spliced];
}

function landersOf(standing: StandingTube): readonly Lander[] {
  return copesOf(standing.solution).flatMap(([end, cope]) => {
    const { headers } = standing.seat.ends[end];
    const isMitred = cope.joint.landings.every(({ mitred }) => mitred);
    return isMitred ? [] : [{ tube: standing.tube, headers, isOver: overEnd(standing, end, cope) }];
  });
}

/** What runs no deeper than this under a tube is welded from beside it. */
const BESIDE: Mm = 1;
/** Of what it lands on an end lies over the surface that its lines meet first, not over the far side. */
const MET: Mm = 0.1;

function overEnd(
  { seat, solution: { section } }: StandingTube,
  end: EndName,
  { joint: { landings } }: Cope,
): (place: Vector) => boolean {
  const own = inTube(seat);
  const { workPoint } = seat.ends[end];
  return (at) => {
    const { along, x, y } = own(at);
    if (withinOutline(section, x, y) <= BESIDE) return false;
    const setback = end === 'A' ? along - workPoint : workPoint - along;
    return setback >= setbackAt(landings, x, y) - MET;
  };
}
