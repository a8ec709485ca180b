import type { Mm } from '../measure/units.ts';
import type { Line } from './line.ts';

/** A cubic Bézier in the plane of station and setback, by its four control points. */
export interface CurvePiece {
  readonly stations: Quad;
  readonly setbacks: Quad;
  /** How far it was seen to stray from the line, in mm on the flat, square to the line. */
  readonly stray: Mm;
}

export type Quad = readonly [number, number, number, number];

/**
 * An end of a piece: where, and which way the line leaves it. A line that grazes a header leaves upright, as
 * setback + root * sqrt(distance in stations).
 */
export type Tip =
  | { readonly station: number; readonly setback: Mm; readonly slope: number }
  | { readonly station: number; readonly setback: Mm; readonly root: number };

/**
 * The cubic that leaves both tips along the line and crosses it at a third and two thirds. Its two handles are what
 * is free; Newton's method finds them. This strays with the sixth power of the length, where handles left at a
 * third of the way would stray with the fourth.
 */
export function fitPiece(line: Line, scale: Mm, first: Tip, last: Tip, enough: Mm): CurvePiece {
  const length = last.station - first.station;
  const lead = handleWay(first, length);
  const trail = handleWay(last, -length);
  let a = 'root' in last ? 2 / 3 : 1 / 3;
  let b = 'root' in first ? 2 / 3 : 1 / 3;
  for (let round = 0; round < 3; round++) {
    const stations = quad(first.station, last.station, a * lead.x, b * trail.x);
    const setbacks = quad(first.setback, last.setback, a * lead.z, b * trail.z);
    const near = missAt(line, stations, setbacks, lead, trail, 1 / 3);
    const far = missAt(line, stations, setbacks, lead, trail, 2 / 3);
    const missed = Math.abs(near.by) + Math.abs(far.by);
    if (missed < SETTLED || missed > HOPELESS) break;
    const size = near.perLead * far.perTrail - far.perLead * near.perTrail;
    const stepA = (far.by * near.perTrail - near.by * far.perTrail) / size;
    const stepB = (near.by * far.perLead - far.by * near.perLead) / size;
    if (!isHandle(a + stepA) || !isHandle(b + stepB)) break;
    a += stepA;
    b += stepB;
    if (Math.abs(stepA) + Math.abs(stepB) < SMALL_STEP) break;
  }
  const stations = quad(first.station, last.station, a * lead.x, b * trail.x);
  const setbacks = quad(first.setback, last.setback, a * lead.z, b * trail.z);
  return { stations, setbacks, stray: strayOf(line, scale, { stations, setbacks }, enough) };
}

/** A crossing this near, in mm, needs no further round. */
const SETTLED: Mm = 2e-4;

/** After so small a step of the handles the next would not show: the error shrinks as its square. */
const SMALL_STEP = 0.02;

/** Newton's method mends no miss larger than this, in mm: of those that it did mend, one in a thousand was as large. */
const HOPELESS: Mm = 0.5;

interface Way {
  readonly x: number;
  readonly z: number;
}

/** The way from a tip into the piece, as long as the piece: a handle is a share of it. */
function handleWay(tip: Tip, length: number): Way {
  if ('root' in tip) return { x: 0, z: tip.root * Math.sqrt(Math.abs(length)) };
  return { x: length, z: length * tip.slope };
}

function isHandle(share: number): boolean {
  return share > 0.05 && share < 0.95;
}

function quad(first: number, last: number, lead: number, trail: number): Quad {
  return [first, first + lead, last + trail, last];
}

/** By how much a piece misses the line somewhere, and how that changes with each handle. */
interface Miss {
  readonly by: Mm;
  readonly perLead: number;
  readonly perTrail: number;
}

function missAt(line: Line, stations: Quad, setbacks: Quad, lead: Way, trail: Way, t: number): Miss {
  const point = line(bezier(stations, t));
  const u = 1 - t;
  return {
    by: bezier(setbacks, t) - point.setback,
    perLead: 3 * u * u * t * (lead.z - point.slope * lead.x),
    perTrail: 3 * u * t * t * (trail.z - point.slope * trail.x),
  };
}

/**
 * Where a piece is looked at: where one that fits a smooth line strays most, and beside its tips, where a fade or a
 * near graze bends the line sharply.
 */
const LOOKS: readonly number[] = [0.5, 0.17, 0.83, 0.04, 0.96];

/** The most that the piece is away from the line where it is looked at; no more looks are spent once it is too far. */
function strayOf(line: Line, scale: Mm, piece: Pick<CurvePiece, 'stations' | 'setbacks'>, enough: Mm): Mm {
  let most = 0;
  for (const t of LOOKS) {
    const away = awayFrom(line, scale, bezier(piece.stations, t), bezier(piece.setbacks, t), enough);
    if (!(away <= most)) most = away;
    if (!(most <= enough)) break;
  }
  return most;
}

/**
 * At most how far a point lies from the line: straight along the tube, or, where the line is steep, to the place
 * where the line's tangent has its foot, whichever is nearer. Both are true distances to points of the line.
 */
function awayFrom(line: Line, scale: Mm, station: number, setback: Mm, enough: Mm): Mm {
  const upright = line(station);
  const miss = setback - upright.setback;
  const lean = upright.slope / scale;
  if (Math.abs(miss) <= enough || !(Math.abs(lean) > 0.3)) return Math.abs(miss);
  const foot = station + (miss * lean) / (1 + lean * lean) / scale;
  return Math.min(Math.abs(miss), Math.hypot((foot - station) * scale, line(foot).setback - setback));
}

/** A point of a cubic Bézier, one coordinate, at t from 0 to 1. */
export function bezier(quad: Quad, t: number): number {
  const u = 1 - t;
  return u * u * u * quad[0] + 3 * u * u * t * quad[1] + 3 * u * t * t * quad[2] + t * t * t * quad[3];
}
