import { landed, type Target } from './followed-lines.ts';

/**
 * How an end seats, found by sampling. A header is a function that says how far outside it a point lies; the cut face
 * is a cloud of points; the tube is slid along its axis until the first of them touches; the gap is measured at the
 * outer edge by that same function. No formula of a setback, a gap or a slide is used, and nothing of the program.
 *
 * Stations in radians from the spine, lengths in mm, setbacks positive towards the tube's body.
 */

/** A tube and how far in from its outside its metal goes. */
export interface Pipe {
  readonly radius: number;
  readonly wall: number;
}

/**
 * A part of the cut face, from one radius to another: left square, one setback through the metal, or following a
 * header, each radius its own.
 */
export type Zone = { readonly inner: number; readonly outer: number } & (
  | { readonly kind: 'square'; readonly cut: (station: number) => number }
  | { readonly kind: 'following'; readonly at: (station: number, radius: number) => number }
);

/** A cut face: its zones, the setback of its outer edge, and the header that it was made for. */
export interface Face {
  readonly zones: readonly Zone[];
  readonly edge: (station: number) => number;
  /** Stations where the line at this radius begins or ceases to touch that header: the face has a kink or a step. */
  readonly sideLimits: (radius: number) => readonly number[];
}

export interface Widest {
  readonly station: number;
  readonly mm: number;
}

/** A full bevel: the face follows the header from the outer edge to the inner. */
export function bevelledFace(target: Target, { radius, wall }: Pipe): Face {
  const at = (station: number, rho: number): number => landed(target, station, rho).setback;
  return {
    zones: [{ kind: 'following', at, inner: radius - wall, outer: radius }],
    edge: (station) => at(station, radius),
    sideLimits: (rho) => brinksOf(target, rho),
  };
}

/** A face left square on this line to cut to. */
export function squareFace(cut: (station: number) => number, target: Target, { radius, wall }: Pipe): Face {
  return {
    zones: [{ kind: 'square', cut, inner: radius - wall, outer: radius }],
    edge: cut,
    sideLimits: (rho) => brinksOf(target, rho),
  };
}

/** A bevel that follows the header, but for a land that nowhere reaches past this line to cut to. */
export function landFace(cut: (station: number) => number, land: number, target: Target, pipe: Pipe): Face {
  const at = (station: number, rho: number): number => landed(target, station, rho).setback;
  const { radius, wall } = pipe;
  return {
    zones: [
      {
        kind: 'following',
        at: (station, rho) => Math.max(cut(station), at(station, rho)),
        inner: radius - land,
        outer: radius,
      },
      { kind: 'following', at, inner: radius - wall, outer: radius - land },
    ],
    edge: cut,
    sideLimits: (rho) => brinksOf(target, rho),
  };
}

/** The face cut from a leaf of the wrong scale: stations about the spine, and setbacks, alike. */
export function scaledFace({ zones, edge, sideLimits }: Face, scale: number): Face {
  const fromSpine = (station: number): number => Math.atan2(Math.sin(station), Math.cos(station));
  const meant = (station: number): number => fromSpine(station) / scale;
  const scaled = (zone: Zone): Zone =>
    zone.kind === 'square'
      ? { ...zone, cut: (station) => scale * zone.cut(meant(station)) }
      : { ...zone, at: (station, radius) => scale * zone.at(meant(station), radius) };
  return {
    zones: zones.map(scaled),
    edge: (station) => scale * edge(meant(station)),
    // Opposite the spine the two ends of a leaf of the wrong scale do not meet.
    sideLimits: (radius) => [Math.PI, ...sideLimits(radius).map((station) => scale * fromSpine(station))],
  };
}

/** The deepest landing from one radius to another: a row of samples, then a search about the best of them. */
export function deepestBetween(target: Target, inner: number, outer: number, station: number): number {
  const depth = (radius: number): number => landed(target, station, radius).setback;
  return summit(depth, inner, outer, 8, 2e-4 * (outer - inner)).height;
}

/** The best of `steps` + 1 samples from low to high, closed in on until the bracket is this narrow. */
function summit(height: (at: number) => number, low: number, high: number, steps: number, narrow: number) {
  let [at, best, half] = [low, Number.NEGATIVE_INFINITY, (high - low) / steps];
  const look = (place: number): void => {
    if (place < low || place > high) return;
    const here = height(place);
    if (here > best) [at, best] = [place, here];
  };
  for (let i = 0; i <= steps; i++) look(low + ((high - low) * i) / steps);
  while (half > narrow) {
    const middle = at;
    for (const share of [-2 / 3, -1 / 3, 1 / 3, 2 / 3]) look(middle + share * half);
    half /= 2;
  }
  return { at, height: best };
}

/** Once round: a sample every 3 degrees. */
const STATIONS = 120;
const STEP = (2 * Math.PI) / STATIONS;
/**
 * Each hill of the samples is closed in on down to 3 degrees / 2^24: 3e-9 radians. Near a graze a setback runs off
 * as sqrt(2 R r d): for R = r = 120 mm and that d it is off by 9e-3 mm; elsewhere by under 1e-6 mm.
 */
const NARROW = STEP / 2 ** 24;

/** How far the end slides along its axis, away from the header, until its face just touches; negative: on to it. */
export function slideUntilTouch(target: Target, face: Face): number {
  const slides = face.zones.map((zone) =>
    zone.kind === 'square' ? squareFoul(target, face, zone) : followingFoul(target, face, zone),
  );
  return Math.max(...slides);
}

/** Station by station, the first point of the metal to touch is the one that the header reaches deepest. */
function squareFoul(target: Target, face: Face, { inner, outer, cut }: Zone & { kind: 'square' }): number {
  const foul = (station: number): number => {
    const reach = (radius: number): number => reached(target, station, radius);
    return summit(reach, inner, outer, 8, 2e-4 * (outer - inner)).height - cut(station);
  };
  const sideLimits = [inner, outer].flatMap((radius) => [
    ...face.sideLimits(radius),
    ...brinksOf(target, radius),
  ]);
  return topOfRing(foul, sideLimits).height;
}

/** Radius by radius, five of them, the highest place round the tube; then in between, about the best. */
function followingFoul(
  target: Target,
  face: Face,
  { inner, outer, at }: Zone & { kind: 'following' },
): number {
  const top = (radius: number): number => {
    const foul = (station: number): number => reached(target, station, radius) - at(station, radius);
    return topOfRing(foul, [...face.sideLimits(radius), ...brinksOf(target, radius)]).height;
  };
  return summit(top, inner, outer, 4, (outer - inner) / 4 / 2 ** 6).height;
}

/** How deep the header reaches on a line of the wall; not at all where the line passes by. */
function reached(target: Target, station: number, radius: number): number {
  const { setback, contact } = landed(target, station, radius);
  return contact ? setback : Number.NEGATIVE_INFINITY;
}

/**
 * The highest place round the tube: a ring of samples, each hill of them closed in on; and beside each limit, where a
 * line begins to touch and heights may stand up as narrow as they like, samples ever nearer to it from both sides.
 */
function topOfRing(height: (station: number) => number, sideLimits: readonly number[]): Top {
  const ring = Array.from({ length: STATIONS }, (_, i) => height(i * STEP));
  let best: Top = { at: 0, height: Number.NEGATIVE_INFINITY };
  const take = (top: Top): void => {
    if (top.height > best.height) best = top;
  };
  for (const i of hills(ring)) take(summit(height, (i - 1) * STEP, (i + 1) * STEP, 4, NARROW));
  for (const limit of sideLimits) {
    for (const side of [-1, 1]) {
      const near = Array.from({ length: 16 }, (_, k) => {
        const at = limit + (side * STEP) / 3 ** k;
        return { at, height: height(at) };
      });
      const top = near.reduce((a, b) => (b.height > a.height ? b : a));
      const reach = Math.abs(top.at - limit);
      take(top);
      if (top.height > best.height - reach * NEAR) {
        const [low, high] = [limit + (side * reach) / 3, limit + side * reach * 3];
        take(summit(height, Math.min(low, high), Math.max(low, high), 8, Math.max(1e-12, reach / 2 ** 14)));
      }
    }
  }
  return best;
}

interface Top {
  readonly at: number;
  readonly height: number;
}

/** A sample beside a limit is closed in on if it is lower than the best by no more than this, in mm a radian. */
const NEAR = 2000;

/** Stations where the line at this radius begins or ceases to touch: between samples of a ring, by halving. */
function brinksOf(target: Target, radius: number): readonly number[] {
  const known = BRINKS.get(target)?.get(radius);
  if (known) return known;
  const contact = (station: number): boolean => landed(target, station, radius).contact;
  const ring = Array.from({ length: STATIONS }, (_, i) => contact(i * STEP));
  const found = ring.flatMap((here, i) => {
    if (here === ring[(i + 1) % STATIONS]) return [];
    let [low, high] = [i * STEP, (i + 1) * STEP];
    while (high - low > 1e-11) {
      const middle = (low + high) / 2;
      if (contact(middle) === here) low = middle;
      else high = middle;
    }
    return [(low + high) / 2];
  });
  const rows = BRINKS.get(target) ?? new Map<number, readonly number[]>();
  rows.set(radius, found);
  BRINKS.set(target, rows);
  return found;
}

const BRINKS = new WeakMap<Target, Map<number, readonly number[]>>();

/** Of a ring of samples, those that no neighbour tops and that could hide the highest place. */
function hills(ring: readonly number[]): number[] {
  const highest = Math.max(...ring);
  return ring.flatMap((here, i) => {
    const before = ring.at(i - 1) ?? here;
    const after = ring[(i + 1) % ring.length] ?? here;
    if (here === Number.NEGATIVE_INFINITY || here < before || here < after) return [];
    const drops = [here - before, here - after].map((drop) => (Number.isFinite(drop) ? drop : 5));
    return here + 3 * Math.max(...drops, 1e-3) < highest ? [] : [i];
  });
}

/** The widest way from the cut's outer edge to the header, over the stations that count, once slid. */
export function widestGap(
  target: Target,
  face: Face,
  slide: number,
  pipe: Pipe,
  counts: (station: number) => boolean,
): Widest {
  const gap = (station: number): number =>
    counts(station) ? outerGap(target, face, slide, pipe, station) : Number.NEGATIVE_INFINITY;
  const sideLimits = [pipe.radius, pipe.radius - pipe.wall].flatMap((radius) => [
    ...face.sideLimits(radius),
    ...brinksOf(target, radius),
  ]);
  const { at, height } = topOfRing(gap, sideLimits);
  return { station: at, mm: Math.max(0, height) };
}

/** From the cut's outer edge at one station to the header's surface. */
export function outerGap(
  { solid, bodySide }: Target,
  face: Face,
  slide: number,
  { radius }: Pipe,
  station: number,
): number {
  const setback = face.edge(station) + slide;
  return Math.abs(solid(radius * Math.cos(station), radius * Math.sin(station), setback * bodySide));
}

/** Whether the tube's outside meets the header at a station. */
export function touches(target: Target, { radius }: Pipe): (station: number) => boolean {
  return (station) => landed(target, station, radius).contact;
}
