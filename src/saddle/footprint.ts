import type { Mm } from '../measure/units.ts';
import type { Landing } from '../space/landing.ts';
import { type Developed, nearestTurn } from '../space/solid.ts';
import type { Cope } from './cope.ts';
import { type DevelopedWay, developedWay, type Pose } from './developed-way.ts';
import { bezier } from './fit-piece.ts';
import { meetAt, onEndFace } from './lines.ts';
import { stretchesOf } from './stretches.ts';

/** The outline that one edge of the tube's end leaves on one header, unrolled flat. */
export interface Outline {
  /** Closed, or several open runs where the tube passes beside the header or meets another one. */
  readonly closed: boolean;
  readonly runs: readonly (readonly OutlinePiece[])[];
  /** Of each run, what the tube meets before its beginning and after its end. */
  readonly beyond: readonly Beyond[];
}

/** The places of two headers in the end's list; none where the tube passes beside. */
type Beyond = readonly [number | undefined, number | undefined];

/** A cubic Bézier on the unrolled header, by its four control points. */
export type OutlinePiece = readonly [Developed, Developed, Developed, Developed];

/** The footprint of the wall's edge `depth` in from its outside, on the header at this place of the end's list. */
export function footprintOf(cope: Cope, depth: Mm, part: number): Outline {
  const { closed, runs } = runsOf(cope, depth, part);
  const { girth } = landingAt(cope.joint.landings, part).solid;
  return {
    closed,
    runs: runs.map(({ ways }) =>
      strung(
        ways.flatMap((way) => cubicsAlong(way, girth, 0, 1)),
        girth,
      ),
    ),
    beyond: runs.map(({ beyond }) => beyond),
  };
}

/** The pieces of a run one on from the other, even over the header's far side, and the run's middle within once round. */
function strung(run: readonly OutlinePiece[], girth: Mm | undefined): readonly OutlinePiece[] {
  if (girth === undefined) return run;
  const pieces: OutlinePiece[] = [];
  for (const piece of run) pieces.push(beginningAt(piece, pieces.at(-1)?.[3] ?? piece[0], girth));
  const rounds = pieces.flatMap(([from, , , to]) => [from.round, to.round]);
  const middle = (Math.min(...rounds) + Math.max(...rounds)) / 2;
  const home = nearestTurn({ round: middle, along: 0 }, { round: 0, along: 0 }, girth).round - middle;
  return pieces.map((piece) => movedRound(piece, home));
}

function beginningAt(piece: OutlinePiece, end: Developed, girth: Mm): OutlinePiece {
  return movedRound(piece, nearestTurn(piece[0], end, girth).round - piece[0].round);
}

function movedRound([a, b, c, d]: OutlinePiece, by: Mm): OutlinePiece {
  const moved = ({ round, along }: Developed): Developed => ({ round: round + by, along });
  return [moved(a), moved(b), moved(c), moved(d)];
}

/**
 * How long the exact outline is, in mm, as it lies on the unrolled header. On a surface that unrolls without
 * stretching it is as long as the line on the tube where it meets that header.
 */
export function footprintLength(cope: Cope, depth: Mm, part: number): Mm {
  const ways = runsOf(cope, depth, part).runs.flatMap((run) => run.ways);
  return ways.reduce((sum, way) => sum + lengthOf(way, 0, 1), 0);
}

interface Run {
  readonly ways: readonly DevelopedWay[];
  readonly beyond: Beyond;
}

/** The stretches of the line that meet this header, strung together where one goes on from the other. */
function runsOf({ joint }: Cope, depth: Mm, part: number): { closed: boolean; runs: readonly Run[] } {
  const landing = landingAt(joint.landings, part);
  const stretches = stretchesOf(joint, depth);
  const met = stretches.map(({ from, to }) => {
    const middle = meetAt(joint, (from + to) / 2, depth);
    return middle.contact && !onEndFace(middle) ? middle.part : undefined;
  });
  const closed = met.every((each) => each === part);
  const runs: Run[] = [];
  stretches.forEach((stretch, i) => {
    if (met[i] !== part) return;
    const before = i === 0 || met[i - 1] !== part ? undefined : runs.pop();
    const way = developedWay(joint, landing, depth, stretch);
    runs.push({
      ways: [...(before?.ways ?? []), way],
      beyond: [before ? before.beyond[0] : met.at(i - 1), met[(i + 1) % met.length]],
    });
  });
  return { closed, runs: !closed && met[0] === part && met.at(-1) === part ? joined(runs) : runs };
}

function landingAt(landings: readonly Landing[], part: number): Landing {
  const landing = landings[part];
  if (!landing) throw new RangeError(`the end lands on ${landings.length} headers, there is no ${part}`);
  return landing;
}

/** The last run goes on where the first begins. */
function joined([first, ...others]: readonly Run[]): Run[] {
  const last = others.pop();
  if (!first) return [];
  if (!last) return [first];
  return [...others, { ways: [...last.ways, ...first.ways], beyond: [last.beyond[0], first.beyond[1]] }];
}

/** The drawn outline strays from the exact one by no more than this. */
const STRAY: Mm = 0.001;

/** What is left of a kink that is no edge is kept as it is. */
const SHORTEST = 1e-6;

/** Cubics from the exact directions at both ends, split until they hold. */
function cubicsAlong(way: DevelopedWay, girth: Mm | undefined, from: number, to: number): OutlinePiece[] {
  const drawn = between(way(from), way(to), girth);
  const holds = LOOKS.every((t) => isNear(way, girth, from + t * (to - from), pointOf(drawn, t)));
  if (holds || to - from < SHORTEST) return [drawn];
  const middle = (from + to) / 2;
  return [...cubicsAlong(way, girth, from, middle), ...cubicsAlong(way, girth, middle, to)];
}

function between(first: Pose, last: Pose, girth: Mm | undefined): OutlinePiece {
  const end = nearestTurn(last.at, first.at, girth);
  const handle = Math.hypot(end.round - first.at.round, end.along - first.at.along) / 3;
  return [
    first.at,
    { round: first.at.round + handle * first.round, along: first.at.along + handle * first.along },
    { round: end.round - handle * last.round, along: end.along - handle * last.along },
    end,
  ];
}

const LOOKS = [0.5, 0.25, 0.75, 0.12, 0.88];

function pointOf([a, b, c, d]: OutlinePiece, t: number): Developed {
  const along = (key: keyof Developed): number => bezier([a[key], b[key], c[key], d[key]], t);
  return { round: along('round'), along: along('along') };
}

const FEET = 6;

/** Whether the exact outline passes a point as near as it may: from about `t`, steps along it to the place beside. */
function isNear(way: DevelopedWay, girth: Mm | undefined, t: number, point: Developed): boolean {
  let place = t;
  for (let foot = 0; foot < FEET; foot++) {
    const { at, round, along, speed } = way(place);
    const [aside, ahead] = [point.round - nearestTurn(at, point, girth).round, point.along - at.along];
    if (Math.hypot(aside, ahead) <= STRAY) return true;
    place = Math.min(1, Math.max(0, place + (aside * round + ahead * along) / speed));
  }
  return false;
}

/** Abscissae and weights of Gauss's rule with five points on 0 to 1 (Abramowitz and Stegun 25.4.30, from memory). */
const GAUSS = [
  [0.04691007703066802, 0.11846344252809454],
  [0.23076534494715845, 0.23931433524968324],
  [0.5, 0.28444444444444444],
  [0.7692346550528415, 0.23931433524968324],
  [0.9530899229693319, 0.11846344252809454],
] as const;

const PRECISE: Mm = 1e-7;
const NARROW = 1e-7;

/** Gauss's rule on a stretch and on its halves, halved until both agree. */
function lengthOf(way: DevelopedWay, from: number, to: number, whole = gauss(way, from, to)): Mm {
  const middle = (from + to) / 2;
  const [near, far] = [gauss(way, from, middle), gauss(way, middle, to)];
  if (Math.abs(near + far - whole) < PRECISE || to - from < NARROW) return near + far;
  return lengthOf(way, from, middle, near) + lengthOf(way, middle, to, far);
}

function gauss(way: DevelopedWay, from: number, to: number): Mm {
  return GAUSS.reduce(
    (sum, [place, weight]) => sum + weight * (to - from) * way(from + place * (to - from)).speed,
    0,
  );
}
