import type { Mm } from '../measure/units.ts';
import { inwards } from '../space/section.ts';
import type { Unrolled } from '../space/solid.ts';
import { type Cope, curveOf } from './cope.ts';
import { bezier, bezierRate, type CurvePiece } from './fit-piece.ts';
import type { Landing } from './joint.ts';
import type { Line } from './line.ts';

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
  const landing = cope.joint.landings[part];
  if (!landing)
    throw new RangeError(`the end lands on ${cope.joint.landings.length} headers, there is no ${part}`);
  const curve = curveOf(
    cope,
    line,
    cope.longPoint.station,
    cope.joint.section.girth / cope.joint.section.turn,
  );
  const touching = curve.map((piece) => touches(line, part, piece));
  const runs: OutlinePiece[][] = [];
  curve.forEach((piece, i) => {
    if (!touching[i]) return;
    if (i === 0 || !touching[i - 1]) runs.push([]);
    runs.at(-1)?.push(...unrolledPieces(cope, landing, line, piece, 0, 1));
  });
  return { closed: touching.every(Boolean), runs };
}

function touches(line: Line, part: number, piece: CurvePiece): boolean {
  const middle = line(bezier(piece.stations, 0.5));
  return middle.contact && middle.part === part;
}

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
  const first = poseAt(cope, landing, line, bezier(piece.stations, from + HAIR * (to - from)));
  const last = poseAt(cope, landing, line, bezier(piece.stations, to - HAIR * (to - from)));
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

/** Kept this share inside a piece, so that its ends are met from its own side of an edge. */
const HAIR = 1e-9;

function between(first: Pose, last: Pose): OutlinePiece {
  const handle = Math.hypot(last.at.round - first.at.round, last.at.along - first.at.along) / 3;
  return [
    first.at,
    { round: first.at.round + handle * first.round, along: first.at.along + handle * first.along },
    { round: last.at.round - handle * last.round, along: last.at.along - handle * last.along },
    last.at,
  ];
}

const LOOKS = [0.5, 0.25, 0.75];

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
    place = Math.min(1 - HAIR, Math.max(HAIR, place + ahead / chord));
    pose = exact(place);
  }
  return Math.hypot(point.round - pose.at.round, point.along - pose.at.along);
}

const STEP: Mm = 1e-4;

/**
 * The outline runs square to both outward normals: along the tube's tangent t, climbing dz = -(n t) / nz. Scaled by
 * nz that direction is finite even where the line grazes.
 */
function poseAt(cope: Cope, landing: Landing, line: Line, station: number): Pose {
  const { setback: fromTube, depth } = line(station);
  const wall = inwards(cope.joint.section.at(station), depth);
  const { solid, cosClock, sinClock, shift } = landing;
  const setback = fromTube - shift;
  const x = wall.x * cosClock + wall.y * sinClock;
  const y = wall.y * cosClock - wall.x * sinClock;
  const dx = wall.dx * cosClock + wall.dy * sinClock;
  const dy = wall.dy * cosClock - wall.dx * sinClock;
  const { nx, ny, nz } = solid.enter(x, y) ?? { nx: 0, ny: Math.sign(y - landing.offset), nz: 0 };
  const climb = -(nx * dx + ny * dy);
  const size = STEP / Math.hypot(dx * nz, dy * nz, climb);
  const before = solid.unroll(x - dx * nz * size, y - dy * nz * size, setback - climb * size);
  const after = solid.unroll(x + dx * nz * size, y + dy * nz * size, setback + climb * size);
  const length = Math.hypot(after.round - before.round, after.along - before.along);
  return {
    at: solid.unroll(x, y, setback),
    round: (after.round - before.round) / length,
    along: (after.along - before.along) / length,
    speed: length / (2 * size * Math.abs(nz)),
  };
}

/**
 * How long the exact outline is, in mm, as it lies on the unrolled header: by Gauss's rule along the pieces of the
 * line. On a surface that unrolls without stretching it is as long as the line on the tube.
 */
export function footprintLength(cope: Cope, line: Line, part: number): Mm {
  const landing = cope.joint.landings[part];
  if (!landing)
    throw new RangeError(`the end lands on ${cope.joint.landings.length} headers, there is no ${part}`);
  const curve = curveOf(
    cope,
    line,
    cope.longPoint.station,
    cope.joint.section.girth / cope.joint.section.turn,
  );
  const pieces = curve.filter((piece) => touches(line, part, piece));
  return pieces.reduce((sum, piece) => sum + pieceLength(cope, landing, line, piece), 0);
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

function pieceLength(cope: Cope, landing: Landing, line: Line, { stations }: CurvePiece): Mm {
  let sum = 0;
  for (let panel = 0; panel < PANELS; panel++) {
    for (const [place, weight] of GAUSS) {
      const t = (panel + place) / PANELS;
      const { speed } = poseAt(cope, landing, line, bezier(stations, t));
      sum += (weight / PANELS) * speed * bezierRate(stations, t);
    }
  }
  return sum;
}
