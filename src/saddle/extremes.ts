import type { Mm } from '../measure/units.ts';
import type { Line } from './line.ts';
import { highestOnRing, ringOf } from './peaks.ts';

/** A point of a line that matters: its station in [0, turn) and its setback. */
export interface Extreme {
  readonly station: number;
  readonly setback: Mm;
}

export interface Extremes {
  /** The least setback: the tube reaches furthest. */
  readonly longPoint: Extreme;
  /** The greatest: the cut goes deepest. */
  readonly throat: Extreme;
}

const STEPS = 48;

/**
 * The long point and the throat of a line; of equals the one with the least station. `start` is where it is likely
 * even, `breaks` are where it has kinks and steps. A line with narrow hills, as one with a land has, wants more `steps` than the usual.
 */
export function extremesOf(
  line: Line,
  turn: number,
  start: number,
  breaks: readonly number[] = [],
  steps = STEPS,
): Extremes {
  const depth = (station: number): Mm => line(station).setback;
  const reach = (station: number): Mm => -line(station).setback;
  const depths = ringOf(depth, turn, start, steps);
  const reaches = { ...depths, heights: depths.heights.map((setback) => -setback) };
  const deepest = highestOnRing(depth, depths, breaks);
  const farthest = highestOnRing(reach, reaches, breaks);
  return {
    longPoint: { station: farthest?.station ?? start, setback: -(farthest?.height ?? 0) },
    throat: { station: deepest?.station ?? start, setback: deepest?.height ?? 0 },
  };
}
