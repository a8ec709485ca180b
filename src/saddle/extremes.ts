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

/** The long point and the throat of a line; of equals the one with the least station. `clock` is where it is likely even. */
export function extremesOf(line: Line, turn: number, clock: number): Extremes {
  const farthest = highestOf((station) => -line(station).setback, turn, clock, STEPS);
  const deepest = highestOf((station) => line(station).setback, turn, clock, STEPS);
  return {
    longPoint: { station: farthest?.station ?? clock, setback: -(farthest?.height ?? 0) },
    throat: { station: deepest?.station ?? clock, setback: deepest?.height ?? 0 },
  };
}
