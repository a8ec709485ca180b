import type { Mm } from '../measure/units.ts';
import { wrapStation } from '../space/section.ts';
import { findEdge } from './edge.ts';
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
const STRAY: Mm = 0.001;

/** Ends of a stretch are looked at this share of it inside, so that a kink has its own slope on each side. */
const NUDGE = 1e-5;

/** A stretch shorter than this, in stations, is kept as it is: what is left of a corner. */
const SHORTEST = 1e-7;

/** Two setbacks a hair apart in station that differ by more than this are the two sides of a step. */
const STEP: Mm = 0.01;

/** The line as few smooth pieces: cubic Béziers from its exact slopes, split until they hold, broken at its edges. */
export function traceCurve(line: Line, tracing: Tracing): Curve {
  const { from, turn, scale } = tracing;
  const pieces: CurvePiece[] = [];
  let start = from;
  for (const end of [...homeNodes(tracing), from + turn]) {
    traceStretch(line, scale, lookAt(line, scale, start, end), lookAt(line, scale, end, start), pieces);
    start = end;
  }
  return welded(pieces);
}

/** Each piece begins where the last one ended, to the last bit, but for true steps. */
function welded(pieces: readonly CurvePiece[]): Curve {
  let end: Mm | undefined;
  return pieces.map((piece) => {
    const [z0, z1, z2, z3] = piece.setbacks;
    const run = end !== undefined && Math.abs(z0 - end) <= STEP ? end : z0;
    end = z3;
    return run === z0 ? piece : { ...piece, setbacks: [run, z1, z2, z3] };
  });
}

function homeNodes({ from, turn, nodes }: Tracing): number[] {
  const home = nodes.map((node) => from + wrapStation(node - from, turn));
  return home.filter((node) => node > from + SHORTEST && node < from + turn - SHORTEST).sort((a, b) => a - b);
}

/** An end of a stretch as seen from inside it: where the line steps, the two sides of a station differ. */
interface Look {
  readonly tip: Tip;
  readonly region: number;
}

function lookAt(line: Line, scale: Mm, station: number, other: number): Look {
  const hair = NUDGE * (other - station);
  const { region, setback, slope } = line(station + hair);
  const atEnd = line(station).setback;
  // Beside a header the setback runs off as a square root: its slope grows tenfold for a hundredth of the way.
  const grazes =
    !(Math.abs(slope) < scale / 4) && !(Math.abs(line(station + hair / 100).slope) < 3 * Math.abs(slope));
  const root = 2 * slope * Math.sqrt(Math.abs(hair)) * Math.sign(hair);
  const expected = setback - slope * hair;
  const beside =
    Math.abs(expected - atEnd) > STEP ? line(station + Math.sign(hair) * SHARPLY).setback : atEnd;
  const stands = Math.abs(beside - atEnd) > STEP ? beside : atEnd;
  return { region, tip: grazes ? { station, setback: stands, root } : { station, setback: stands, slope } };
}

/** Just beyond what an edge is found to: a graze has risen by less than STEP there, a step wholly. */
const SHARPLY = 1e-12;

/** Breaks the stretch where the line changes region, then fits each part. */
function traceStretch(line: Line, scale: Mm, first: Look, last: Look, pieces: CurvePiece[]): void {
  const from = first.tip.station;
  const to = last.tip.station;
  if (first.region === last.region || to - from < SHORTEST) {
    fitSpan(line, scale, first, last, pieces);
    return;
  }
  const hair = NUDGE * (to - from);
  const edge = findEdge(line, from + hair, to - hair, first.region);
  // An even edge is not found to the last bit, so its near side is told its region rather than asked.
  const nearSide = { tip: lookAt(line, scale, edge, from).tip, region: first.region };
  traceStretch(line, scale, first, nearSide, pieces);
  traceStretch(line, scale, lookAt(line, scale, edge, to), last, pieces);
}

function fitSpan(line: Line, scale: Mm, first: Look, last: Look, pieces: CurvePiece[]): void {
  const length = last.tip.station - first.tip.station;
  const piece = fitPiece(line, scale, first.tip, last.tip, STRAY);
  if (piece.stray <= STRAY || length < SHORTEST) {
    pieces.push(piece);
    return;
  }
  const station = first.tip.station + length / 2;
  const { region, setback, slope } = line(station);
  if (region !== first.region || !Number.isFinite(slope)) {
    traceStretch(line, scale, first, lookAt(line, scale, station, first.tip.station), pieces);
    traceStretch(line, scale, lookAt(line, scale, station, last.tip.station), last, pieces);
    return;
  }
  const middle: Look = { region, tip: { station, setback, slope } };
  fitSpan(line, scale, first, middle, pieces);
  fitSpan(line, scale, middle, last, pieces);
}
