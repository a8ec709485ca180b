import type { Mm, Radians } from '../measure/units.ts';
import { climb } from './climb.ts';
import { exactCosine } from './round.ts';
import { type Entry, type Solid, TOUCH, type Unrolled } from './solid.ts';
import type { Vector } from './vector.ts';

export interface BendSize {
  /** Of the bent tube's outside. */
  readonly tubeRadius: Mm;
  /** Of the bend, to the tube's centre line. */
  readonly bendRadius: Mm;
  /** Where the bend's centre lies, seen along the tangent: 0 towards the body, positive towards w. */
  readonly centre: Radians;
}

/**
 * A bent round tube: a quarter of a turn each way from the work point, and straight tangents beyond. Its tangent at
 * the work point makes `angle` with the z axis and lies in the plane y = `offset`.
 */
export function bentHeader(size: BendSize, angle: Radians, offset: Mm): Solid {
  const frame = bendFrame(size, angle, offset);
  const way = (x: Mm, y: Mm, z: Mm): Mm => wayTo(size, frame(x, y, z));
  const enterAt = (x: Mm, y: Mm): Mm | undefined => {
    const trim = (x * exactCosine(angle)) / Math.sin(angle);
    return firstEntry((z) => way(x, y, z), trim, reachOf(size, angle));
  };
  return {
    enter(x: Mm, y: Mm): Entry | undefined {
      const z = enterAt(x, y);
      if (z === undefined) return undefined;
      const at = frame(x, y, z);
      const [nx, ny, nz] = normalAt(size, angle, at);
      return { z, nx, ny, nz, patch: patchOf(at) };
    },

    crests(x0: Mm, y0: Mm, x1: Mm, y1: Mm): readonly number[] {
      const entry = (t: number): Mm | undefined => enterAt(x0 + t * (x1 - x0), y0 + t * (y1 - y0));
      return [0, 1, highestAlong(entry), ...brinksAlong(entry)];
    },

    distance: way,

    // A bent surface does not unroll: round is true, along is measured on the tube's centre line.
    unroll(x: Mm, y: Mm, z: Mm): Unrolled {
      const { t, n, b } = frame(x, y, z);
      const turn = n <= 0 ? Math.atan2(t, -n) : (Math.sign(t) * Math.PI) / 2;
      const along = size.bendRadius * turn + (n > 0 ? Math.sign(t) * n : 0);
      const inwards = size.bendRadius - (n <= 0 ? Math.hypot(t, n) : Math.abs(t));
      const fromCentre = Math.atan2(b, inwards);
      const round = fromCentre + size.centre;
      return { round: size.tubeRadius * (round - 2 * Math.PI * Math.round(round / (2 * Math.PI))), along };
    },
  };
}

/** A point from the bend's centre: t along the tangent at the work point, n away from the work point, b off its plane. */
interface InBend {
  readonly t: Mm;
  readonly n: Mm;
  readonly b: Mm;
}

function bendFrame(
  { bendRadius, centre }: BendSize,
  angle: Radians,
  offset: Mm,
): (x: Mm, y: Mm, z: Mm) => InBend {
  const cos = exactCosine(angle);
  const sin = Math.sin(angle);
  const towardsBody = Math.cos(centre);
  const towardsW = Math.sin(centre);
  return (x, y, z) => {
    const p = z * sin - x * cos;
    const q = y - offset;
    return {
      t: x * sin + z * cos,
      n: p * towardsBody + q * towardsW - bendRadius,
      b: q * towardsBody - p * towardsW,
    };
  };
}

/** Signed way to the surface, never more than the true one: the arc where n is negative, its tangents elsewhere. */
function wayTo({ tubeRadius, bendRadius }: BendSize, { t, n, b }: InBend): Mm {
  const fromCentreLine = (n <= 0 ? Math.hypot(t, n) : Math.abs(t)) - bendRadius;
  return Math.hypot(fromCentreLine, b) - tubeRadius;
}

/** The outward unit normal: away from the nearest point of the tube's centre line. */
function normalAt({ bendRadius, centre }: BendSize, angle: Radians, { t, n, b }: InBend): Vector {
  const round = n <= 0 ? Math.hypot(t, n) : Math.abs(t);
  const out = (round - bendRadius) / round;
  const alongT = out * t;
  const alongN = n <= 0 ? out * n : 0;
  const size = Math.hypot(alongT, alongN, b);
  const towardsBody = (alongN * Math.cos(centre) - b * Math.sin(centre)) / size;
  const towardsW = (alongN * Math.sin(centre) + b * Math.cos(centre)) / size;
  const cos = exactCosine(angle);
  const sin = Math.sin(angle);
  return [(alongT / size) * sin - towardsBody * cos, towardsW, (alongT / size) * cos + towardsBody * sin];
}

function patchOf({ t, n }: InBend): number {
  if (n <= 0) return 0;
  return t > 0 ? 1 : 2;
}

/** How far from the trim plane a line can still meet the tube near the joint. */
function reachOf({ tubeRadius, bendRadius }: BendSize, angle: Radians): Mm {
  return (2 * tubeRadius + bendRadius) / Math.sin(angle);
}

/**
 * Where a line first enters, coming down on the joint: of all entries the one nearest the trim plane. The way to the
 * surface shrinks no faster than the line runs, so steps of its own size miss nothing but a graze.
 */
function firstEntry(way: (z: Mm) => Mm, trim: Mm, reach: Mm): Mm | undefined {
  let nearest: Mm | undefined;
  let z = trim + reach;
  let here = way(z);
  while (z > trim - reach) {
    const step = Math.max(Math.abs(here), GRAZE);
    const next = z - step;
    const there = way(next);
    const entered = here > 0 && there <= 0 ? rootBetween(way, next, z) : undefined;
    const closer =
      entered !== undefined && (nearest === undefined || Math.abs(entered - trim) < Math.abs(nearest - trim));
    if (closer) nearest = entered;
    z = next;
    here = there;
  }
  return nearest;
}

/** The least step down a line, in mm: a lens thinner than this under a graze may be passed by. */
const GRAZE: Mm = 1e-3;

/** The place between, found to the last bits, by halving where the secant does not hasten it. */
function rootBetween(way: (z: Mm) => Mm, inside: Mm, outside: Mm): Mm {
  let low = inside;
  let high = outside;
  let atLow = way(low);
  let atHigh = way(high);
  for (let i = 0; i < 200 && high - low > 1e-13 * Math.max(1, Math.abs(high)); i++) {
    const secant = low - (atLow * (high - low)) / (atHigh - atLow);
    const even = i % 3 === 2 || !(secant > low && secant < high);
    const z = even ? (low + high) / 2 : secant;
    const at = way(z);
    if (Math.abs(at) < TOUCH * 1e-4) return z;
    if (at > 0) [high, atHigh] = [z, at];
    else [low, atLow] = [z, at];
  }
  return (low + high) / 2;
}

/** Where along 0 to 1 the entry is deepest, by sampling and golden section. */
function highestAlong(entry: (t: number) => Mm | undefined): number {
  const height = (t: number): Mm => entry(t) ?? Number.NEGATIVE_INFINITY;
  const samples = Array.from({ length: 17 }, (_, i) => i / 16);
  const best = samples.reduce((a, b) => (height(b) > height(a) ? b : a));
  return climb(height, Math.max(0, best - 1 / 16), Math.min(1, best + 1 / 16), 45);
}

/** Where along 0 to 1 a line first passes by. */
function brinksAlong(entry: (t: number) => Mm | undefined): readonly number[] {
  const meets = (t: number): boolean => entry(t) !== undefined;
  const brinks: number[] = [];
  for (let i = 0; i < 16; i++) {
    let [met, missed] = [i / 16, (i + 1) / 16];
    if (meets(met) === meets(missed)) continue;
    if (!meets(met)) [met, missed] = [missed, met];
    for (let halving = 0; halving < 36; halving++) {
      const middle = (met + missed) / 2;
      if (meets(middle)) met = middle;
      else missed = middle;
    }
    brinks.push(missed);
  }
  return brinks;
}
