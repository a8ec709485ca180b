import type { Mm } from '../measure/units.ts';
import type { Line } from './line.ts';

/** A point of a line that matters: its station in [0, turn) and its setback. */
export interface Place {
  readonly station: number;
  readonly setback: Mm;
}

export interface Extremes {
  /** The least setback: the tube reaches furthest. */
  readonly longPoint: Place;
  /** The greatest: the cut goes deepest. */
  readonly throat: Place;
}

const STEPS = 96;
const TIE: Mm = 1e-9;

/** The long point and the throat of a line; of equals the one with the least station. `clock` is where it is likely even. */
export function extremesOf(line: Line, turn: number, clock: number): Extremes {
  const deep = peaks(line, turn, clock, 1);
  const long = peaks(line, turn, clock, -1);
  return { longPoint: firstOf(long, -1), throat: firstOf(deep, 1) };
}

/** Every local top of sign * setback, found by halving between neighbours of a ring of samples. */
function peaks(line: Line, turn: number, clock: number, sign: 1 | -1): Place[] {
  const step = turn / STEPS;
  const height = (station: number): number => sign * line(station).setback;
  const ring = Array.from({ length: STEPS }, (_, i) => height(clock + i * step));
  const found: Place[] = [];
  const best = Math.max(...ring);
  const spread = best - Math.min(...ring);
  ring.forEach((here, i) => {
    const before = ring[(i + STEPS - 1) % STEPS] ?? here;
    const after = ring[(i + 1) % STEPS] ?? here;
    if (here < before || here < after || here < best - 0.05 * spread) return;
    const middle = clock + i * step;
    const top = climb(height, middle - step, middle + step);
    const station = height(top) > here + 1e-12 ? top : middle;
    found.push({ station: homeStation(station, turn), setback: sign * height(station) });
  });
  return found;
}

/** The top of a single-peaked stretch, by golden section: needs no slope, so a kink is no trouble. */
function climb(height: (station: number) => number, from: number, to: number): number {
  const ratio = (Math.sqrt(5) - 1) / 2;
  let low = from;
  let high = to;
  let left = high - ratio * (high - low);
  let right = low + ratio * (high - low);
  let atLeft = height(left);
  let atRight = height(right);
  for (let i = 0; i < 60; i++) {
    if (atLeft >= atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - ratio * (high - low);
      atLeft = height(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + ratio * (high - low);
      atRight = height(right);
    }
  }
  return (low + high) / 2;
}

function firstOf(places: readonly Place[], sign: 1 | -1): Place {
  const best = Math.max(...places.map((place) => sign * place.setback));
  const equals = places.filter((place) => sign * place.setback >= best - TIE);
  const [first, ...rest] = equals.sort((a, b) => a.station - b.station);
  if (!first) throw new Error('a closed line has a highest and a lowest point', { cause: rest });
  return first;
}

/** The same station in [0, turn), with a hair below a whole turn taken as 0. */
export function homeStation(station: number, turn: number): number {
  const home = ((station % turn) + turn) % turn;
  return turn - home < 1e-12 * turn ? 0 : home;
}
