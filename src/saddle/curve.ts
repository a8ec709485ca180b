import type { Mm } from '../measure/units.ts';
import { type CurvePiece, fitPiece, type Tip } from './fit-piece.ts';
import type { Line } from './line.ts';

/** Pieces in order of station, each starting where the last one ended; a jump in setback is a step of the line. */
export type Curve = readonly CurvePiece[];

export interface Tracing {
  /** The curve starts here, goes once round, and ends `turn` later. */
  readonly from: number;
  readonly turn: number;
  /** Stations, besides the ends, where a piece shall end: the line's likely extremes and kinks. */
  readonly nodes: readonly number[];
  /** How many mm on the flat one unit of station is. */
  readonly scale: Mm;
}

/** A drawn curve strays from the exact line by no more than this where it is looked at; the bar is 0.002. */
const STRAY: Mm = 0.0012;

/** Ends of a stretch are looked at this share of it inside, so that a kink has its own slope on each side. */
const NUDGE = 1e-5;

/** A stretch shorter than this, in stations, is kept as it is: what is left of a corner. */
const SHORTEST = 1e-7;

/** Two setbacks a hair apart in station that differ by more than this are the two sides of a step. */
const STEP: Mm = 0.01;

/** The line as few smooth pieces: cubic Béziers from its exact slopes, split until they hold, broken at its edges. */
export function traceCurve(line: Line, tracing: Tracing): Curve {
  const end = tracing.from + tracing.turn;
  const pieces: CurvePiece[] = [];
  let from = tracing.from;
  for (const to of [...homeNodes(tracing), end]) {
    traceStretch(line, tracing.scale, from, to, pieces);
    from = to;
  }
  return pieces;
}

function homeNodes({ from, turn, nodes }: Tracing): number[] {
  const home = nodes.map((node) => from + ((((node - from) % turn) + turn) % turn));
  return home.filter((node) => node > from + SHORTEST && node < from + turn - SHORTEST).sort((a, b) => a - b);
}

/** Breaks the stretch where the line changes region, then fits each part. */
function traceStretch(line: Line, scale: Mm, from: number, to: number, pieces: CurvePiece[]): void {
  const hair = NUDGE * (to - from);
  const first = line(from + hair).region;
  const last = line(to - hair).region;
  if (first === last || to - from < SHORTEST) {
    fitSpan(line, scale, tipAt(line, scale, from, to), tipAt(line, scale, to, from), first, pieces);
    return;
  }
  const edge = findEdge(line, from + hair, to - hair, first);
  traceStretch(line, scale, from, edge, pieces);
  traceStretch(line, scale, edge, to, pieces);
}

/** The station where the region at `low` ends. A graze found this nearly is off by less than 1e-4 mm of setback. */
function findEdge(line: Line, low: number, high: number, region: number): number {
  let inside = low;
  let outside = high;
  while (outside - inside > EDGE) {
    const middle = (inside + outside) / 2;
    if (line(middle).region === region) inside = middle;
    else outside = middle;
  }
  return outside;
}

const EDGE = 1e-13;

/** An end of a stretch as seen from inside it: where the line steps, the two sides of a station differ. */
function tipAt(line: Line, scale: Mm, station: number, other: number): Tip {
  const hair = NUDGE * (other - station);
  const inside = line(station + hair);
  const nearer = Math.abs(line(station + hair / 100).slope);
  // Beside a header the setback runs off as a square root: its slope grows tenfold for a hundredth of the way.
  const grazes = nearer > scale && !(nearer < 3 * Math.abs(inside.slope));
  const root = 2 * inside.slope * Math.sqrt(Math.abs(hair)) * Math.sign(hair);
  const seen = inside.setback - (grazes ? root * Math.sqrt(Math.abs(hair)) : inside.slope * hair);
  const atEnd = line(station).setback;
  const setback = Math.abs(seen - atEnd) > STEP ? seen : atEnd;
  return grazes ? { station, setback, root } : { station, setback, slope: inside.slope };
}

function fitSpan(line: Line, scale: Mm, first: Tip, last: Tip, region: number, pieces: CurvePiece[]): void {
  const length = last.station - first.station;
  const piece = fitPiece(line, scale, first, last);
  if (piece.stray <= STRAY || length < SHORTEST) {
    pieces.push(piece);
    return;
  }
  const middle = first.station + length / 2;
  const point = line(middle);
  if (point.region !== region || !Number.isFinite(point.slope)) {
    traceStretch(line, scale, first.station, middle, pieces);
    traceStretch(line, scale, middle, last.station, pieces);
    return;
  }
  const tip: Tip = { station: middle, setback: point.setback, slope: point.slope };
  fitSpan(line, scale, first, tip, region, pieces);
  fitSpan(line, scale, tip, last, region, pieces);
}
