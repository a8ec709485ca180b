import type { Mm } from '../measure/units.ts';
import { climb } from '../space/climb.ts';

/** A high place of a function round the tube: its station in [0, turn) and how high. */
export interface Peak {
  readonly station: number;
  readonly height: number;
}

/** Heights within this of each other are equal, in mm (or radians). */
const TIE: Mm = 1e-9;

/**
 * The highest place of a function round the tube; of equals the one with the least station. It may have kinks and
 * be -Infinity where it does not count. A ring of `steps` samples from `start` finds the hills; each hill between
 * two samples is climbed. `rough` may stand in for a dear function on the ring. Undefined where the function counts
 * nowhere.
 */
export function highestOf(
  height: (station: number) => number,
  turn: number,
  start: number,
  steps: number,
  rough: (station: number) => number = height,
  brinks: readonly number[] = [],
): Peak | undefined {
  const hills = [
    ...hillsOf(height, turn, start, steps, rough),
    ...besideBrinks(height, turn, turn / steps, brinks, rough),
  ];
  if (hills.length === 0) return undefined;
  const best = Math.max(...hills.map((hill) => hill.height));
  const equals = hills.filter((hill) => hill.height >= best - TIE);
  return equals.sort((a, b) => a.station - b.station)[0];
}

/** Every hill that could be the highest, judged by the ring's own unevenness. */
function hillsOf(
  height: (station: number) => number,
  turn: number,
  start: number,
  steps: number,
  rough: (station: number) => number,
): Peak[] {
  const step = turn / steps;
  const ring = Array.from({ length: steps }, (_, i) => rough(start + i * step));
  const highest = Math.max(...ring);
  if (highest === Number.NEGATIVE_INFINITY) return [];
  const hills: Peak[] = [];
  ring.forEach((here, i) => {
    const before = ring[(i + steps - 1) % steps] ?? here;
    const after = ring[(i + 1) % steps] ?? here;
    if (here < before || here < after || here === Number.NEGATIVE_INFINITY) return;
    const middle = start + i * step;
    const drop = Math.max(finite(here - before), finite(here - after)) + STEADY;
    if (here + 2 * drop < highest) return;
    const top = climb(height, middle - step, middle + step);
    const station = height(top) > here + SAME ? top : middle;
    hills.push({ station: homeStation(station, turn), height: height(station) });
  });
  return hills;
}

/**
 * The highest places beside brinks: samples ever nearer to each from both sides, and where these could hide the
 * highest of all, a climb.
 */
function besideBrinks(
  height: (station: number) => number,
  turn: number,
  step: number,
  brinks: readonly number[],
  rough: (station: number) => number,
): Peak[] {
  const sides = brinks.flatMap((brink) => [-step, step].map((side) => nearest(rough, turn, brink, side)));
  const highest = Math.max(...sides.map((side) => side.height));
  return sides.flatMap((side) => {
    if (side.height === Number.NEGATIVE_INFINITY || side.height + 2 * side.drop < highest) return [];
    const top = climb(height, side.from, side.to);
    const station = height(top) > height(side.station) + SAME ? top : side.station;
    return [{ station: homeStation(station, turn), height: height(station) }];
  });
}

interface Side extends Peak {
  readonly from: number;
  readonly to: number;
  readonly drop: number;
}

/** The best of samples ever nearer to a brink from one side, with the stretch that it stands for. */
function nearest(rough: (station: number) => number, turn: number, brink: number, side: number): Side {
  const ways: number[] = [];
  for (let way = 3 * side; Math.abs(way) > 1e-12 * turn; way /= 3) ways.push(way);
  const row = ways.map((way) => rough(brink + way));
  const inner = row.slice(1, -1);
  const at = 1 + inner.indexOf(Math.max(...inner));
  const here = row[at] ?? Number.NEGATIVE_INFINITY;
  const around = [row[at - 1] ?? here, row[at + 1] ?? here];
  const [far, near] = [brink + (ways[at - 1] ?? 0), brink + (ways[at + 1] ?? 0)];
  return {
    station: brink + (ways[at] ?? 0),
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

/** The same station in [0, turn), with a hair below a whole turn taken as 0. */
export function homeStation(station: number, turn: number): number {
  const home = ((station % turn) + turn) % turn;
  return turn - home < 1e-12 * turn ? 0 : home;
}
