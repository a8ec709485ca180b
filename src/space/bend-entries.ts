import type { Mm } from '../measure/units.ts';
import { type Polynomial, polynomialAt, rootOf, rootsBetween, slopeOf } from './polynomial.ts';
import { TOUCH } from './solid.ts';

/** A point from a bend's centre: t along the tangent at the work point, n away from the work point, b off its plane. */
export interface InBend {
  readonly t: Mm;
  readonly n: Mm;
  readonly b: Mm;
}

export interface Radii {
  /** Of the bent tube's outside. */
  readonly tubeRadius: Mm;
  /** Of the bend, to the tube's centre line. */
  readonly bendRadius: Mm;
}

/** A line past a bend: the point at `at` 0, and how it moves for every mm. */
export interface PassingLine {
  readonly start: InBend;
  readonly way: InBend;
}

/** Signed way to the surface, never more than the true one: the arc where n is negative, its tangents elsewhere. */
export function wayToBend({ tubeRadius, bendRadius }: Radii, { t, n, b }: InBend): Mm {
  const fromCentreLine = (n <= 0 ? Math.hypot(t, n) : Math.abs(t)) - bendRadius;
  return Math.hypot(fromCentreLine, b) - tubeRadius;
}

/**
 * Of all places, within `reach` of the line's start, where it goes into a bent tube, coming down from above, the one
 * nearest to the start; undefined where there is none. A line that only touches goes in there.
 */
export function nearestEntry(radii: Radii, line: PassingLine, reach: Mm): Mm | undefined {
  let nearest: Mm | undefined;
  const consider = (entry: Mm): void => {
    if (nearest === undefined || Math.abs(entry) < Math.abs(nearest)) nearest = entry;
  };
  // Each part by itself: where a line is nearest to one tangent it may be deep in the other.
  const touching =
    (fromCentreLine: (point: InBend) => Mm) =>
    (at: Mm): boolean => {
      const point = pointOn(line, at);
      return Math.hypot(fromCentreLine(point), point.b) - radii.tubeRadius <= TOUCH;
    };
  const [arcFrom, arcTo, raysFrom, raysTo] = partedAtSeam(line, reach);
  if (arcFrom < arcTo) {
    const touches = touching(({ t, n }) => Math.hypot(t, n) - radii.bendRadius);
    entriesInto(arcPolynomial(radii, line), arcFrom, arcTo, touches, consider);
  }
  if (raysFrom < raysTo) {
    for (const side of [-1, 1]) {
      const touches = touching(({ t }) => t - side * radii.bendRadius);
      entriesInto(rayPolynomial(radii, line, side), raysFrom, raysTo, touches, consider);
    }
  }
  return nearest;
}

function pointOn({ start, way }: PassingLine, at: Mm): InBend {
  return { t: start.t + at * way.t, n: start.n + at * way.n, b: start.b + at * way.b };
}

/** The stretch of the line beside the arc, and the one beside its tangents; each a hair longer, so that none is lost. */
function partedAtSeam({ start, way }: PassingLine, reach: Mm): readonly [Mm, Mm, Mm, Mm] {
  if (way.n === 0) return start.n <= 0 ? [-reach, reach, 0, 0] : [0, 0, -reach, reach];
  const seam = Math.min(reach, Math.max(-reach, -start.n / way.n));
  const [below, above] = [Math.min(reach, seam + TOUCH), Math.max(-reach, seam - TOUCH)];
  return way.n > 0 ? [-reach, below, above, reach] : [above, reach, -reach, below];
}

/**
 * Negative inside a torus. From the work point, with m = n + R and Q = t^2 + m^2 + b^2 - r^2, the torus
 * (sqrt(t^2 + n^2) - R)^2 + b^2 = r^2 is (1 - m / R) Q + Q^2 / 4 R^2 - t^2 = 0, which no large R makes inexact.
 */
function arcPolynomial({ tubeRadius, bendRadius }: Radii, { start, way }: PassingLine): Polynomial {
  const m = start.n + bendRadius;
  const q0 = start.t * start.t + m * m + start.b * start.b - tubeRadius * tubeRadius;
  const q1 = 2 * (start.t * way.t + m * way.n + start.b * way.b);
  const a0 = 1 - m / bendRadius;
  const a1 = -way.n / bendRadius;
  const share = 1 / (4 * bendRadius * bendRadius);
  return [
    a0 * q0 + share * q0 * q0 - start.t * start.t,
    a0 * q1 + a1 * q0 + 2 * share * q0 * q1 - 2 * start.t * way.t,
    a0 + a1 * q1 + share * (2 * q0 + q1 * q1) - way.t * way.t,
    a1 + 2 * share * q1,
    share,
  ];
}

/** Negative inside the tangent of one side, endless: (t - side R)^2 + b^2 = r^2. */
function rayPolynomial(
  { tubeRadius, bendRadius }: Radii,
  { start, way }: PassingLine,
  side: number,
): Polynomial {
  const t = start.t - side * bendRadius;
  return [
    t * t + start.b * start.b - tubeRadius * tubeRadius,
    2 * (t * way.t + start.b * way.b),
    way.t * way.t + way.b * way.b,
  ];
}

/** Where on the stretch, coming down it, a polynomial goes below zero, or is least and touches. */
function entriesInto(
  polynomial: Polynomial,
  low: Mm,
  high: Mm,
  touches: (at: Mm) => boolean,
  found: (at: Mm) => void,
): void {
  const slope = slopeOf(polynomial);
  const turnings = rootsBetween(slope, low, high);
  let above = high;
  let atAbove = polynomialAt(polynomial, above);
  for (let i = turnings.length - 1; i >= -1; i--) {
    const here = turnings[i] ?? low;
    const atHere = polynomialAt(polynomial, here);
    if (atAbove > 0 && atHere <= 0) found(rootOf(polynomial, slope, here, above, false));
    else if (atAbove > atHere && atHere > 0 && i >= 0 && touches(here)) found(here);
    above = here;
    atAbove = atHere;
  }
}
