import type { Mm } from '../measure/units.ts';
import type { Line } from './line.ts';
import { highestOf } from './peaks.ts';

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

const STEPS = 48;

/**
 * The long point and the throat of a line; of equals the one with the least station. `start` is where it is likely
 * even. A line with narrow hills, as a blunt one has, wants more `steps` than the usual.
 */
export function extremesOf(line: Line, turn: number, start: number, steps = STEPS): Extremes {
  const ring = Array.from({ length: steps }, (_, i) => line(start + (i * turn) / steps).setback);
  const onRing = (station: number): Mm => ring[Math.round(((station - start) / turn) * steps)] ?? 0;
  const farthest = highestOf(
    (at) => -line(at).setback,
    turn,
    start,
    steps,
    (at) => -onRing(at),
  );
  const deepest = highestOf((at) => line(at).setback, turn, start, steps, onRing);
  return {
    longPoint: { station: farthest?.station ?? start, setback: -(farthest?.height ?? 0) },
    throat: { station: deepest?.station ?? start, setback: deepest?.height ?? 0 },
  };
}
