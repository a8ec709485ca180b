import type { Mm } from '../measure/units.ts';
import { inwards } from '../space/section.ts';
import type { Unrolled } from '../space/solid.ts';
import { type Cope, curveOf } from './cope.ts';
import { bezier, bezierRate, type CurvePiece } from './fit-piece.ts';
import { type Landing, pastClock, towardsClock } from './joint.ts';
import type { Line, LinePoint } from './line.ts';

/** The outline that one edge of the tube's end leaves on one header, unrolled flat. */
export interface Outline {
  /** Closed, or several open runs where the tube passes beside the header. */
  readonly closed: boolean;
  readonly runs: readonly (readonly OutlinePiece[])[];
}

/** A cubic Bézier on the unrolled header, by its four control points. */
export type OutlinePiece = readonly [Unrolled, Unrolled, Unrolled, Unrolled];

/** The drawn outline strays from the exact one by no more than this. */
const STRAY: Mm = 0.001;

/** The footprint of one edge of the wall, `outside` or `inside` of the cope, on the header at this place of its list. */
export function footprintOf(cope: Cope, line: Line, part: number): Outline {
  const landing = landingAt(cope, part);
  const curve = walkRound(cope, line, part);
  const touching = curve.map(({ piece }) => touches(line, part, piece));
  const closed = touching.every(Boolean);
  const runs: OutlinePiece[][] = [];
  curve.forEach(({ piece, from, to }, i) => {
    if (!touching[i]) return;
    if (i === 0 || !touching[i - 1]) runs.push([]);
    runs.at(-1)?.push(...unrolledPieces(cope, landing, line, piece, from, to));
  });
  return { closed, runs: !closed && touching[0] && touching.at(-1) ? joined(runs) : runs };
}

function landingAt({ joint: { landings } }: Cope, part: number): Landing {
  const landing = landings[part];
  if (!landing) throw new RangeError(`the end lands on ${landings.length} headers, there is no ${part}`);
  return landing;
}

/** The last run goes on where the first begins. */
function joined([first = [], ...others]: OutlinePiece[][]): OutlinePiece[][] {
  const last = others.pop();
  return last ? [...others, [...last, ...first]] : [first];
}

const RING = 48;

/**
 * The line as a curve from a place where it is even: beside the header if the tube passes it somewhere, so that no
 * run is parted, and never at an edge or a corner, where long point and throat often are.
 */
function walkRound(cope: Cope, line: Line, part: number): readonly Stretch[] {
  const { turn, girth, corners } = cope.joint.section;
  const step = turn / RING;
  const near = (a: number, b: number): boolean =>
    Math.abs(a - b - turn * Math.round((a - b) / turn)) < step / 8;
  const isEven = (at: number): boolean =>
    line(at - step / 8).region === line(at + step / 8).region && !corners.some((corner) => near(at, corner));
  const start = cope.longPoint.station;
  const ring = [start, ...Array.from({ length: RING }, (_, i) => start + (i + 0.5) * step)];
  const even = ring.filter(isEven);
  const beside = even.find((at) => !isOn(line(at), part));
  const curve = curveOf(cope, line, beside ?? even[0] ?? start, girth / turn);
  return curve.map((piece, i) => ownStretch(line, piece, curve[i - 1], curve[i + 1]));
}

/** A piece of the line, and from where to where, by its parameter, it lies on its own side of the edges that it ends at. */
interface Stretch {
  readonly piece: CurvePiece;
  readonly from: number;
  readonly to: number;
}

function touches(line: Line, part: number, piece: CurvePiece): boolean {
  return isOn(line(bezier(piece.stations, 0.5)), part);
}

function isOn(point: LinePoint, part: number): boolean {
  return point.contact && point.part === part;
}

/**
 * A drawn curve has its edges no nearer than shows on the leaf, but a hair beyond them the outline runs another way, or
 * the header is missed. Where the next piece is another region's, the edge itself may lie beyond the piece.
 */
function ownStretch(line: Line, piece: CurvePiece, before?: CurvePiece, after?: CurvePiece): Stretch {
  const { stations } = piece;
  const region = (t: number): number => line(bezier(stations, t)).region;
  const own = region(0.5);
  const reach = Math.min(0.2, BEYOND / (stations[3] - stations[0]));
  const endOf = (end: number, beyond: number, next: CurvePiece | undefined): number => {
    const other = next !== undefined && line(bezier(next.stations, 0.5)).region !== own;
    const far = other && region(beyond) !== own ? beyond : end;
    if (region(far) === own) return far;
    let [inside, outside] = [0.5, far];
    for (let i = 0; i < 52; i++) {
      const middle = (inside + outside) / 2;
      if (region(middle) === own) inside = middle;
      else outside = middle;
    }
    return inside;
  };
  return { piece, from: endOf(HAIR, -reach, before), to: endOf(1 - HAIR, 1 + reach, after) };
}

/** How far beyond a piece, in stations, its edge may lie. */
const BEYOND = 2e-3;

/** An end at a corner of the tube is met this far inside the piece, on its own side. */
const HAIR = 1e-10;

/** A point of the outline and the unit direction in which it runs on. */
interface Pose {
  readonly at: Unrolled;
  readonly round: number;
  readonly along: number;
  /** How many mm a unit of station moves it. Not finite at a graze. */
  readonly speed: number;
}

/** The stretch of a piece between two of its parameters, split until cubics hold it. The parameter is even at grazes too. */
function unrolledPieces(
  cope: Cope,
  landing: Landing,
  line: Line,
  piece: CurvePiece,
  from: number,
  to: number,
): OutlinePiece[] {
  const first = poseAt(cope, landing, line, bezier(piece.stations, from), 1);
  const last = poseAt(cope, landing, line, bezier(piece.stations, to), -1);
  const middle = (from + to) / 2;
  const drawn = between(first, last);
  const exact = (t: number): Pose =>
    poseAt(cope, landing, line, bezier(piece.stations, from + t * (to - from)));
  const chord = Math.hypot(last.at.round - first.at.round, last.at.along - first.at.along);
  const away = (t: number): Mm => strayOf(pointOf(drawn, t), exact, t, chord);
  if (to - from < 1e-3 || LOOKS.every((t) => away(t) <= STRAY)) return [drawn];
  return [
    ...unrolledPieces(cope, landing, line, piece, from, middle),
    ...unrolledPieces(cope, landing, line, piece, middle, to),
  ];
}

function between(first: Pose, last: Pose): OutlinePiece {
  const handle = Math.hypot(last.at.round - first.at.round, last.at.along - first.at.along) / 3;
  return [
    first.at,
    { round: first.at.round + handle * first.round, along: first.at.along + handle * first.along },
    { round: last.at.round - handle * last.round, along: last.at.along - handle * last.along },
    last.at,
  ];
}

const LOOKS = [0.5, 0.25, 0.75, 0.12, 0.88];

function pointOf([a, b, c, d]: OutlinePiece, t: number): Unrolled {
  const along = (key: keyof Unrolled): number => bezier([a[key], b[key], c[key], d[key]], t);
  return { round: along('round'), along: along('along') };
}

/** How far a point is from the exact outline: two steps along that lead to the place beside it. */
function strayOf(point: Unrolled, exact: (t: number) => Pose, t: number, chord: Mm): Mm {
  let place = t;
  let pose = exact(place);
  for (let step = 0; step < 2; step++) {
    const ahead = (point.round - pose.at.round) * pose.round + (point.along - pose.at.along) * pose.along;
    place = Math.min(1, Math.max(0, place + ahead / chord));
    pose = exact(place);
  }
  return Math.hypot(point.round - pose.at.round, point.along - pose.at.along);
}

const STEP: Mm = 1e-4;

/**
 * The outline runs square to both outward normals: along the tube's tangent t, climbing dz = -(n t) / nz. Scaled by
 * nz that direction is finite even where the line grazes. How it unrolls is seen by steps to both sides, or at an end
 * to the side that `ahead` tells, for beyond an edge it runs another way.
 */
function poseAt(cope: Cope, landing: Landing, line: Line, station: number, ahead: -1 | 0 | 1 = 0): Pose {
  const { setback: fromTube, depth } = line(station);
  const wall = inwards(cope.joint.section.at(station), depth);
  const { solid, shift } = landing;
  const setback = fromTube - shift;
  const x = towardsClock(landing, wall.x, wall.y);
  const y = pastClock(landing, wall.x, wall.y);
  const dx = towardsClock(landing, wall.dx, wall.dy);
  const dy = pastClock(landing, wall.dx, wall.dy);
  const { nx, ny, nz } = solid.enter(x, y) ?? { nx: 0, ny: Math.sign(y - landing.offset), nz: 0 };
  const climb = -(nx * dx + ny * dy);
  const size = STEP / Math.hypot(dx * nz, dy * nz, climb);
  const seen = (steps: number): Unrolled =>
    solid.unroll(x + dx * nz * size * steps, y + dy * nz * size * steps, setback + climb * size * steps);
  const at = seen(0);
  const { round, along } = rateOf(at, seen, ahead);
  const length = Math.hypot(round, along);
  return { at, round: round / length, along: along / length, speed: length / (size * Math.abs(nz)) };
}

/** The change in a step, by central differences, or by those of three points to one side. */
function rateOf(at: Unrolled, seen: (steps: number) => Unrolled, ahead: -1 | 0 | 1): Unrolled {
  if (ahead === 0) {
    const [before, after] = [seen(-1), seen(1)];
    return { round: (after.round - before.round) / 2, along: (after.along - before.along) / 2 };
  }
  const [near, far] = [seen(ahead), seen(2 * ahead)];
  const rate = (key: keyof Unrolled): number => (ahead * (4 * near[key] - far[key] - 3 * at[key])) / 2;
  return { round: rate('round'), along: rate('along') };
}

/**
 * How long the exact outline is, in mm, as it lies on the unrolled header: by Gauss's rule along the pieces of the
 * line. On a surface that unrolls without stretching it is as long as the line on the tube.
 */
export function footprintLength(cope: Cope, line: Line, part: number): Mm {
  const landing = landingAt(cope, part);
  const own = walkRound(cope, line, part).filter(({ piece }) => touches(line, part, piece));
  return own.reduce((sum, stretch) => sum + lengthOf(cope, landing, line, stretch), 0);
}

/** Abscissae and weights of Gauss's rule with five points on 0 to 1 (Abramowitz and Stegun 25.4.30, from memory). */
const GAUSS = [
  [0.04691007703066802, 0.11846344252809454],
  [0.23076534494715845, 0.23931433524968324],
  [0.5, 0.28444444444444444],
  [0.7692346550528415, 0.23931433524968324],
  [0.9530899229693319, 0.11846344252809454],
] as const;

const PANELS = 12;

function lengthOf(cope: Cope, landing: Landing, line: Line, { piece, from, to }: Stretch): Mm {
  let sum = 0;
  for (let panel = 0; panel < PANELS; panel++) {
    for (const [place, weight] of GAUSS) {
      const t = from + ((to - from) * (panel + place)) / PANELS;
      const { speed } = poseAt(cope, landing, line, bezier(piece.stations, t), t < 0.5 ? 1 : -1);
      sum += (weight / PANELS) * (to - from) * speed * bezierRate(piece.stations, t);
    }
  }
  return sum;
}
