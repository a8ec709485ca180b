import type { Point } from '../../draw/drawing.ts';
import type { EndName } from '../../job/job.ts';
import type { Mm } from '../../measure/units.ts';
import { type Section, speedWithin, wrapStation } from '../../space/section.ts';

/** How the end of a tube lies on paper: stations to the right from the seam, the tube's B direction up. */
export interface Flat {
  readonly end: EndName;
  readonly section: Section;
  /** The station of the left edge, and of the right one, a whole turn later. */
  readonly seam: number;
  readonly turn: number;
  /** Once round, of the bent paper's middle. */
  readonly width: Mm;
  /** How many mm one unit of station is, over the whole way round. */
  readonly scale: Mm;
  /** Up, 1, at end A, where the body lies above the cut; down, -1, at end B. */
  readonly bodyWay: 1 | -1;
  /** How far outside the tube the bent paper's middle lies. */
  readonly outside: Mm;
  /** How far round the bent paper's middle a station lies from the spine, mm, for any number of turns. */
  readonly round: (station: number) => Mm;
}

/**
 * The flat of a tube with this section. Paper bends about its middle, half its thickness t outside: a whole turn takes pi t more
 * than the steel does, W = pi (D + t) round a round tube. Faces are as long as the steel's.
 */
export function flatOf(end: EndName, section: Section, seam: number, paperThickness: Mm): Flat {
  const { turn, girth } = section;
  const width = girth + Math.PI * paperThickness;
  const scale = width / turn;
  const outside = paperThickness / 2;
  const round = (station: number): Mm => section.wayRound(station, outside);
  return { end, section, seam, turn, width, scale, bodyWay: end === 'A' ? 1 : -1, outside, round };
}

/** Where a station lies between the left edge (0) and the right edge (width), mm. */
export function xAt(flat: Flat, station: number): Mm {
  return flat.round(flat.seam + wrapStation(station - flat.seam, flat.turn)) - flat.round(flat.seam);
}

/** The station at x mm from the left edge. */
export function stationAt(flat: Flat, x: Mm): number {
  const guess = flat.seam + x / flat.scale;
  const wanted = flat.round(flat.seam) + x;
  // Where the outside bends alike all round, paper is stretched alike.
  if (Math.abs(flat.round(guess) - wanted) < NO_WAY) return guess;
  const { girth } = flat.section;
  const slack = (flat.width - girth) * (flat.turn / girth);
  let [low, high] = [guess - slack, guess + slack];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (flat.round(middle) < wanted) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** How high a setback lies, mm from the work point's line. */
export function height(flat: Flat, setback: Mm): Mm {
  return flat.bodyWay * setback;
}

/** Four of a kind: the control points of a cubic. */
type Four<Value> = readonly [Value, Value, Value, Value];

/**
 * The control points of a piece of the cut, whose stations need not be home: the curve runs from seam to seam. A piece
 * lies on one face or on one corner, at each end of which it runs as fast over the paper as the station does there.
 */
export function placesOn(flat: Flat, stations: Four<number>, setbacks: Four<Mm>): Four<Point> {
  const [first, afterFirst, beforeLast, last] = stations;
  // Taken just inside the piece: paper steps over a sharp corner.
  const inside = flat.section.corners.length === 0 ? 0 : INSIDE * (last - first);
  const seam = flat.round(flat.seam);
  const [start, end] = [flat.round(first + inside) - seam, flat.round(last - inside) - seam];
  const rate = (station: number): number => speedWithin(flat.section.at(station).run, -flat.outside);
  const xs: Four<Mm> = [
    start,
    start + (afterFirst - first) * rate(first + inside),
    end - (last - beforeLast) * rate(last - inside),
    end,
  ];
  const placed = (i: 0 | 1 | 2 | 3): Point => ({ x: xs[i], y: flat.bodyWay * setbacks[i] });
  return [placed(0), placed(1), placed(2), placed(3)];
}

/** How far inside a piece its ends are looked at, as a part of it. */
const INSIDE = 1e-9;
const NO_WAY: Mm = 1e-9;
