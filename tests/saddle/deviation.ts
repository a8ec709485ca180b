import type { Curve } from '../../src/saddle/curve.ts';
import type { CurvePiece, Quad } from '../../src/saddle/fit-piece.ts';
import type { Line } from '../../src/saddle/line.ts';

/** A point on the flat: station times scale across, setback up, both in mm. */
interface FlatPoint {
  readonly across: number;
  readonly up: number;
}

export interface Stray {
  /** The most that a point of the curve lies from the nearest point of the line, in mm on the flat. */
  readonly curveFromLine: number;
  /** The most that a point of the line lies from the nearest point of the curve. */
  readonly lineFromCurve: number;
  /** Where the greater was found. */
  readonly station: number;
}

/** How far a curve and the line it stands for are apart, looked at `looks` times on each piece. */
export function strayBetween(curve: Curve, line: Line, scale: number, looks: number): Stray {
  let [curveFromLine, lineFromCurve, station] = [0, 0, 0];
  for (const piece of curve) {
    for (let i = 0; i <= looks; i++) {
      const t = i / looks;
      const at = along(piece.stations, t);
      const offLine = distanceToLine(line, scale, { across: at * scale, up: along(piece.setbacks, t) });
      if (offLine > Math.max(curveFromLine, lineFromCurve)) station = at;
      curveFromLine = Math.max(curveFromLine, offLine);
      if (i % SPARSE !== 0) continue;
      const flat = piece.stations[0] + t * (piece.stations[3] - piece.stations[0]);
      const offCurve = distanceToPiece(piece, scale, { across: flat * scale, up: line(flat).setback });
      if (offCurve > Math.max(curveFromLine, lineFromCurve)) station = flat;
      lineFromCurve = Math.max(lineFromCurve, offCurve);
    }
  }
  return { curveFromLine, lineFromCurve, station };
}

/** A point of a cubic Bézier (Bernstein form). */
export function along([a, b, c, d]: Quad, t: number): number {
  const u = 1 - t;
  return u * u * u * a + 3 * u * t * (u * b + t * c) + t * t * t * d;
}

/**
 * Straight up or down is a true distance to the line, and the nearest point lies no further off to either side. Where
 * the line runs almost upright, the place where it passes the point's own height is looked for too.
 */
function distanceToLine(line: Line, scale: number, point: FlatPoint): number {
  const station = point.across / scale;
  const upright = Math.abs(line(station).setback - point.up);
  if (upright < PLAINLY_NEAR) return upright;
  const away = (t: number): number => Math.hypot(t * scale - point.across, line(t).setback - point.up);
  const passing = [1, -1].map((side) => passingPlace(line, station, point.up, (side * upright) / scale));
  const level = Math.min(...passing.map((place) => (place === undefined ? upright : away(place))));
  if (level < PLAINLY_NEAR) return level;
  return Math.min(level, nearest(away, station - upright / scale, station + upright / scale));
}

/** Where the line passes this height between a station and one so far beside it, nearest first, if it does. */
function passingPlace(line: Line, station: number, height: number, reach: number): number | undefined {
  const above = (t: number): boolean => line(t).setback > height;
  const here = above(station);
  for (let far = reach * 2 ** -30; Math.abs(far) <= Math.abs(reach); far *= 2) {
    if (above(station + far) === here) continue;
    let [near, beyond] = [station, station + far];
    for (let i = 0; i < 60; i++) {
      const middle = (near + beyond) / 2;
      if (above(middle) === here) near = middle;
      else beyond = middle;
    }
    return near;
  }
  return undefined;
}

function distanceToPiece(piece: CurvePiece, scale: number, point: FlatPoint): number {
  const away = (t: number): number =>
    Math.hypot(along(piece.stations, t) * scale - point.across, along(piece.setbacks, t) - point.up);
  return nearest(away, 0, 1);
}

/** Nearer than this straight up, a nearer point need not be looked for. */
const PLAINLY_NEAR = 1e-3;

/** The line is looked at from this share of the curve's points: enough to see a part that the curve leaves out. */
const SPARSE = 5;

/** The least of a function: samples, then thirds about the best; where that seems far, again with more samples. */
function nearest(away: (t: number) => number, from: number, to: number): number {
  const least = leastOf(away, from, to, 32);
  return least < PLAINLY_NEAR ? least : Math.min(least, leastOf(away, from, to, 1024));
}

function leastOf(away: (t: number) => number, from: number, to: number, samples: number): number {
  let [best, least] = [0, Number.POSITIVE_INFINITY];
  const at = (sample: number): number =>
    from + ((to - from) * Math.min(samples, Math.max(0, sample))) / samples;
  for (let i = 0; i <= samples; i++) {
    const here = away(at(i));
    if (here < least) [least, best] = [here, i];
  }
  let [low, high] = [at(best - 1), at(best + 1)];
  for (let i = 0; i < 50; i++) {
    const left = low + (high - low) / 3;
    const right = high - (high - low) / 3;
    if (away(left) < away(right)) high = right;
    else low = left;
  }
  return Math.min(least, away((low + high) / 2));
}
