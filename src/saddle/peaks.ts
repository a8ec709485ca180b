import type { Mm } from '../measure/units.ts';
import { goldenSectionMaximum } from '../space/golden-section.ts';
import { wrapStation } from '../space/section.ts';

/** A high place of a function round the tube: its station in [0, turn) and how high. */
export interface Peak {
  readonly station: number;
  readonly height: number;
}

/** Heights within this of each other are equal, in mm (or radians). */
const TIE: Mm = 1e-9;

/** Samples of a function at equal steps, once round from `start`. */
export interface SampleRing {
  readonly start: number;
  readonly turn: number;
  readonly heights: readonly number[];
}

export function ringOf(
  height: (station: number) => number,
  turn: number,
  start: number,
  steps: number,
): SampleRing {
  const heights: number[] = [];
  for (let i = 0; i < steps; i++) heights.push(height(start + (i * turn) / steps));
  return { start, turn, heights };
}

/** A function round the tube, and how closely it is looked at. */
export interface Search {
  /** It may have kinks and be -Infinity where it does not count. */
  readonly height: (station: number) => number;
  /** Stands in for a dear function where that is only looked at, not climbed. */
  readonly rough?: (station: number) => number;
  readonly turn: number;
  /** Where it is likely even: the ring of samples starts here. */
  readonly start: number;
  readonly steps: number;
  /** Where it begins or ceases to count, or has a kink: beside these a hill may be as narrow as it likes. */
  readonly sideLimits: readonly number[];
}

/**
 * The highest place of a function round the tube; of equals the one with the least station. A ring of samples finds the
 * hills; each hill between two samples is climbed. Undefined where the function counts nowhere.
 */
export function highestOf(search: Search): Peak | undefined {
  const { height, rough = height, turn, start, steps, sideLimits } = search;
  const hills = hillsOf(height, ringOf(rough, turn, start, steps));
  return highest([...hills, ...besideBrinks(height, turn, turn / steps, sideLimits, rough)]);
}

/** The same from a ring of the function's own heights. */
export function highestOnRing(
  height: (station: number) => number,
  ring: SampleRing,
  sideLimits: readonly number[] = [],
): Peak | undefined {
  const { turn, heights } = ring;
  const hills = hillsOf(height, ring);
  return highest([...hills, ...besideBrinks(height, turn, turn / heights.length, sideLimits, height)]);
}

function highest(hills: readonly Peak[]): Peak | undefined {
  const best = Math.max(...hills.map((hill) => hill.height));
  const equals = hills.filter((hill) => hill.height >= best - TIE);
  return equals.sort((a, b) => a.station - b.station)[0];
}

/** Every hill that could be the highest, judged by the ring's own unevenness. */
function hillsOf(height: (station: number) => number, { start, turn, heights }: SampleRing): Peak[] {
  const highest = Math.max(...heights);
  if (highest === Number.NEGATIVE_INFINITY) return [];
  const step = turn / heights.length;
  const hills: Peak[] = [];
  let before = heights.at(-1) ?? highest;
  for (let i = 0; i < heights.length; i++) {
    const here = heights[i] ?? highest;
    const after = heights[i + 1] ?? heights[0] ?? highest;
    const drop = Math.max(finite(here - before), finite(here - after)) + STEADY;
    if (here >= before && here >= after && here + 2 * drop >= highest) {
      const isLevel = Math.abs(here - before) < SAME && Math.abs(here - after) < SAME;
      const middle = start + i * step;
      hills.push(isLevel ? peakAt(height, middle, turn) : climbed(height, middle, step, here, turn));
    }
    before = here;
  }
  return hills;
}

/** The top of the hill round a sample, which may be the top itself. */
function climbed(
  height: (station: number) => number,
  middle: number,
  step: number,
  here: number,
  turn: number,
): Peak {
  const top = goldenSectionMaximum(height, middle - step, middle + step);
  const station = height(top) > here + SAME ? top : middle;
  return peakAt(height, station, turn);
}

/**
 * The highest places beside sideLimits: samples ever nearer to each from both sides, and where these could hide the
 * highest of all, a climb.
 */
function besideBrinks(
  height: (station: number) => number,
  turn: number,
  step: number,
  sideLimits: readonly number[],
  rough: (station: number) => number,
): Peak[] {
  const sides = sideLimits.flatMap((limit) => [-step, step].map((side) => nearest(rough, turn, limit, side)));
  const highest = Math.max(...sides.map((side) => side.height));
  return sides.flatMap((side) => {
    if (side.height === Number.NEGATIVE_INFINITY || side.height + 2 * side.drop < highest) return [];
    const top = goldenSectionMaximum(height, side.from, side.to);
    const station = height(top) > height(side.station) + SAME ? top : side.station;
    return [peakAt(height, station, turn)];
  });
}

/** Its height is that at its station as told: beside a step or a graze the last bit tells. */
function peakAt(height: (station: number) => number, station: number, turn: number): Peak {
  const home = wrapStation(station, turn);
  return { station: home, height: height(home) };
}

interface Side extends Peak {
  readonly from: number;
  readonly to: number;
  readonly drop: number;
}

/** The best of samples ever nearer to a limit from one side, with the stretch that it stands for. */
function nearest(rough: (station: number) => number, turn: number, limit: number, side: number): Side {
  const ways: number[] = [];
  for (let way = 3 * side; Math.abs(way) > 1e-12 * turn; way /= 3) ways.push(way);
  const row = ways.map((way) => rough(limit + way));
  const inner = row.slice(1, -1);
  const at = 1 + inner.indexOf(Math.max(...inner));
  const here = row[at] ?? Number.NEGATIVE_INFINITY;
  const around = [row[at - 1] ?? here, row[at + 1] ?? here];
  const [far, near] = [limit + (ways[at - 1] ?? 0), limit + (ways[at + 1] ?? 0)];
  return {
    station: limit + (ways[at] ?? 0),
    height: here,
    from: Math.min(far, near),
    to: Math.max(far, near),
    drop: Math.max(...around.map((there) => finite(here - there))) + STEADY,
  };
}

/** A hill between samples rises above its sample by less than the drop to the sample's neighbours, but for this. */
const STEADY: Mm = 1e-6;

/** A climb that gains less than this found nothing better than the sample itself. */
const SAME: Mm = 1e-12;

function finite(drop: number): number {
  return Number.isFinite(drop) ? drop : 1;
}
