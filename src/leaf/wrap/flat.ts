import type { Point } from '../../draw/drawing.ts';
import type { EndName } from '../../job/job.ts';
import type { Mm } from '../../measure/units.ts';
import { homeStation } from '../../saddle/peaks.ts';
import { countsInAngles } from '../../saddle/station.ts';
import type { Section } from '../../space/section.ts';
import { type Bend, bendsOf } from './folds.ts';

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
  /** How far round the bent paper's middle a station lies from the spine, mm, for any number of turns. */
  readonly round: (station: number) => Mm;
}

/**
 * The flat of a tube with this section. Paper bends about its middle: W = pi (D + t) round a round tube. On a rectangular one
 * the faces are as long as the steel's, and each corner's quarter turn takes pi t / 4 more.
 */
export function flatOf(end: EndName, section: Section, seam: number, paperThickness: Mm): Flat {
  const { turn, girth } = section;
  const width = girth + Math.PI * paperThickness;
  const scale = width / turn;
  const round = countsInAngles(section)
    ? (station: number) => station * scale
    : roundFolds(bendsOf(section), turn, (Math.PI / 4) * paperThickness);
  return { end, section, seam, turn, width, scale, bodyWay: end === 'A' ? 1 : -1, round };
}

function roundFolds(bends: readonly Bend[], turn: number, more: Mm): (station: number) => Mm {
  return (station) => {
    const turns = Math.floor(station / turn);
    const home = station - turns * turn;
    const shares = bends.map(({ from, to }) => (home >= to ? 1 : Math.max(0, (home - from) / (to - from))));
    return station + more * (turns * bends.length + shares.reduce((sum, share) => sum + share, 0));
  };
}

/** Where a station lies between the left edge (0) and the right edge (width), mm. */
export function across(flat: Flat, station: number): Mm {
  return flat.round(flat.seam + homeStation(station - flat.seam, flat.turn)) - flat.round(flat.seam);
}

/** The station at x mm from the left edge. */
export function stationAt(flat: Flat, x: Mm): number {
  const guess = flat.seam + x / flat.scale;
  if (countsInAngles(flat.section)) return guess;
  const wanted = flat.round(flat.seam) + x;
  const slack = flat.width - flat.section.girth;
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
 * lies on one face or on one corner, so the flat only moves and scales it.
 */
export function placesOn(flat: Flat, stations: Four<number>, setbacks: Four<Mm>): Four<Point> {
  const [first, , , last] = stations;
  // Taken a hair inside the piece: paper steps over a sharp corner.
  const hair = countsInAngles(flat.section) ? 0 : HAIR * (last - first);
  const start = flat.round(first + hair) - flat.round(flat.seam);
  const rate =
    last === first ? flat.scale : (flat.round(last - hair) - start - flat.round(flat.seam)) / (last - first);
  const placed = (i: 0 | 1 | 2 | 3): Point => ({
    x: start + (stations[i] - first) * rate,
    y: flat.bodyWay * setbacks[i],
  });
  return [placed(0), placed(1), placed(2), placed(3)];
}

const HAIR = 1e-9;
