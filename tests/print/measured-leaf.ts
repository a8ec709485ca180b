import type { Raster } from '../ink/raster.ts';
import { girthOfPaper, type Landing, type Lie, type Line, onPaper } from './exact-lines.ts';
import type { RoughBar, RoughLie } from './laid-wraps.ts';
import { CUT_WIDTH, placeOfLine, steps, strayAt } from './printed-line.ts';

/** How far the printed cut line lies from the exact one, at the stations that are clear of other ink. */
export interface Strays {
  /** Each as its station, in radians, and its distance, mm. */
  readonly each: readonly { readonly station: number; readonly stray: number }[];
  /** How many stations were looked at. */
  readonly of: number;
  readonly worst: number;
}

/** The leaf's cut line against the exact one, square to it, at equal steps between two places across the page. */
export function straysOf(
  raster: Raster,
  lie: Lie,
  landing: Landing,
  line: Line,
  [left, right]: readonly [number, number],
  count: number,
): Strays {
  const perStation = girthOfPaper(landing) / (2 * Math.PI);
  const each = steps(left, right, count).flatMap((x) => {
    const station = (x - lie.spine) / perStation;
    const at = onPaper(lie, landing, line, station);
    const before = onPaper(lie, landing, line, station - 1e-4);
    const after = onPaper(lie, landing, line, station + 1e-4);
    const length = Math.hypot(after.x - before.x, after.y - before.y);
    const square = { x: (before.y - after.y) / length, y: (after.x - before.x) / length };
    const stray = strayAt(raster, at, square, CUT_WIDTH);
    return stray === undefined ? [] : [{ station, stray }];
  });
  return { each, of: count, worst: Math.max(...each.map(({ stray }) => Math.abs(stray))) };
}

/**
 * Where a leaf lies by its own printed spine and base edge. The base edge is known to stand a whole number of `step` mm from
 * the work point; of these, the one at which a cut line is found most nearly in its place all along is meant.
 */
export function lieOf(raster: Raster, rough: RoughLie, landing: Landing, line: Line, step: number): Lie {
  const { end } = rough;
  const right = rough.left + girthOfPaper(landing) - 1;
  const left = Math.max(rough.left + 1, (rough.clip?.left ?? 0) + 1);
  const baseEdge = placeOfLine(raster, 'up', rough.baseEdge, steps(left, right, 60));
  const downSpine = steps(1, 60, 200).map((depth) => baseEdge + (end === 'A' ? -depth : depth));
  const spine = placeOfLine(raster, 'across', rough.spine, downSpine);
  const most = Math.round(FURTHEST / step);
  const bases = steps(1, most, most).map((times) => times * step);
  const known = reckonedOnce(line);
  const found = bases.map((baseSetback) => {
    const lie = { end, spine, baseEdge, baseSetback };
    return { lie, strays: straysOf(raster, lie, landing, known, [left, right], 60) };
  });
  const clear = Math.max(...found.map(({ strays }) => strays.each.length));
  const [best] = found
    .filter(({ strays }) => strays.each.length > 0.9 * clear)
    .sort((a, b) => a.strays.worst - b.strays.worst);
  if (!best || clear < 20) throw new Error(`No cut line is found for ${rough.leaf.title}.`);
  return best.lie;
}

/** The line of one landing, reckoned once a station. */
function reckonedOnce(line: Line): Line {
  const known = new Map<number, number>();
  return (landing, station) => {
    const setback = known.get(station) ?? line(landing, station);
    known.set(station, setback);
    return setback;
  };
}

/** No base edge of the samples is further from its work point, mm. */
const FURTHEST = 300;

/** Where the left or the right seam edge of a leaf stands, measured from near its base edge to its cut. */
export function seamEdgeOf(
  raster: Raster,
  rough: RoughLie,
  landing: Landing,
  side: 'left' | 'right',
): number {
  const depths = steps(2, 30, 60).map((depth) => rough.baseEdge + (rough.end === 'A' ? -depth : depth));
  const edge = rough.left + (side === 'left' ? 0 : girthOfPaper(landing));
  return placeOfLine(raster, 'across', edge, depths);
}

/** A seam of two tiles as one of them shows it. */
export interface SeamMarks {
  /** Where the line stands that is trimmed on, or laid on. */
  readonly x: number;
  /** How high the level lines through the lower and the upper diamond lie. */
  readonly heights: readonly [lower: number, upper: number];
}

/** The marks of an upright seam that stands roughly at `x`. */
export function seamAt(raster: Raster, x: number, { diamonds }: RoughLie): SeamMarks {
  const [lower, upper] = diamonds;
  if (!lower || !upper) throw new Error('no diamonds');
  const between = steps(lower.y + 4, upper.y - 4, 90);
  // The level line reaches 4 mm to each side, out of the diamond of 3 mm.
  const beside = [...steps(x - 3.9, x - 3.3, 9), ...steps(x + 3.3, x + 3.9, 9)];
  return {
    x: placeOfLine(raster, 'across', x, between),
    heights: [placeOfLine(raster, 'up', lower.y, beside), placeOfLine(raster, 'up', upper.y, beside)],
  };
}

/** The length of a printed bar, between the middles of its end ticks as they stand out to its own side of the line. */
export function lengthOf(raster: Raster, { axis, side, from, to }: RoughBar): number {
  const [first, last] = [from, to].map((end) =>
    axis === 'across'
      ? placeOfLine(raster, axis, end.x, steps(end.y + side * 0.4, end.y + side * 1.1, 9))
      : placeOfLine(raster, axis, end.y, steps(end.x - side * 0.4, end.x - side * 1.1, 9)),
  );
  return (last ?? Number.NaN) - (first ?? Number.NaN);
}
