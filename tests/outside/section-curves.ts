import type { SectionCurve } from './solids/b-rep-kernel.ts';
import { less, type Point } from './solids/implicit-solids.ts';

/** A curve of the kernel's with points along it, to find the nearest from. */
export interface Sampled {
  readonly curve: SectionCurve;
  readonly points: readonly Point[];
}

export function sampled(curves: readonly SectionCurve[]): readonly Sampled[] {
  return curves.map((curve) => ({ curve, points: samplesOf(curve) }));
}

const SAMPLES = 240;

function samplesOf(curve: SectionCurve): Point[] {
  return Array.from({ length: SAMPLES + 1 }, (_, i) => curve.at(parameterAt(curve, i)));
}

function parameterAt({ first, last }: SectionCurve, sample: number): number {
  return first + ((last - first) * sample) / SAMPLES;
}

/** Distance from a point to the curves: from the nearest samples of each, closed in on by thirds. */
export function distanceTo(curves: readonly Sampled[], point: Point): number {
  let least = Number.POSITIVE_INFINITY;
  for (const { curve, points } of curves) {
    const away = points.map((sample) => distance(sample, point));
    for (let i = 0; i <= SAMPLES; i++) {
      const here = away[i] ?? 0;
      if (here > (away[i - 1] ?? Infinity) || here > (away[i + 1] ?? Infinity)) continue;
      if (here > chordAbout(points, i)) continue;
      least = Math.min(least, closeIn(curve, point, i));
    }
  }
  return least;
}

/** A curve that comes to the point near this sample has it within its neighbours' reach. */
function chordAbout(points: readonly Point[], sample: number): number {
  const here = points[sample];
  let reach = 0;
  for (const next of [points[sample - 1], points[sample + 1]]) {
    if (here && next) reach = Math.max(reach, distance(here, next));
  }
  return reach;
}

function closeIn(curve: SectionCurve, point: Point, sample: number): number {
  const away = (parameter: number): number => distance(curve.at(parameter), point);
  let low = parameterAt(curve, Math.max(0, sample - 1));
  let high = parameterAt(curve, Math.min(SAMPLES, sample + 1));
  for (let i = 0; i < 60; i++) {
    const left = low + (high - low) / 3;
    const right = high - (high - low) / 3;
    if (away(left) < away(right)) high = right;
    else low = left;
  }
  return away((low + high) / 2);
}

function distance(a: Point, b: Point): number {
  return Math.hypot(...less(a, b));
}
