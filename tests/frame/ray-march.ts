/**
 * A frame's ends by brute force: solids that know points and sizes alone, and rays along each tube's wall that are walked until they
 * come to one. Nothing of the program is called.
 */
export type Place = readonly [number, number, number];

export interface RayTube {
  readonly from: Place;
  readonly to: Place;
  /** Round by its radius, or a box by half its depth along `face` and half its width across. */
  readonly size:
    | { readonly radius: number }
    | { readonly deep: number; readonly wide: number; readonly corner: number; readonly face: Place };
  readonly ends: { readonly A: RayEnd; readonly B: RayEnd };
}

/** What rays are walked through, and how far apart their looks are: less of a header than lies between two is not seen. */
export interface RayScene {
  readonly tubes: readonly RayTube[];
  readonly fine: number;
}

/** How an end is cut: square off, in a plane through its point, or onto others, of which some stop where they end. */
export type RayEnd =
  | { readonly kind: 'plain'; readonly past: number }
  | { readonly kind: 'plane'; readonly normal: Place }
  | {
      readonly kind: 'onto';
      readonly headers: readonly { readonly tube: number; readonly stops?: 'A' | 'B' }[];
    };

export const minus = (a: Place, b: Place): Place => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const dotOf = (a: Place, b: Place): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const along = (a: Place, t: number, d: Place): Place => [
  a[0] + t * d[0],
  a[1] + t * d[1],
  a[2] + t * d[2],
];
export const crossOf = (a: Place, b: Place): Place => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const unitAlong = (a: Place): Place => {
  const size = Math.hypot(...a);
  return [a[0] / size, a[1] / size, a[2] / size];
};

/** How far a place is outside an endless tube; less than 0 inside. */
function outsideOf({ from, to, size }: RayTube, place: Place): number {
  const axis = unitAlong(minus(to, from));
  const off = minus(place, along(from, dotOf(minus(place, from), axis), axis));
  if ('radius' in size) return Math.hypot(...off) - size.radius;
  const face = unitAlong(along(size.face, -dotOf(size.face, axis), axis));
  const side = crossOf(axis, face);
  const a = Math.abs(dotOf(off, face)) - (size.deep - size.corner);
  const b = Math.abs(dotOf(off, side)) - (size.wide - size.corner);
  return Math.hypot(Math.max(a, 0), Math.max(b, 0)) + Math.min(0, Math.max(a, b)) - size.corner;
}

const pointOfEnd = (tube: RayTube, end: 'A' | 'B'): Place => (end === 'A' ? tube.from : tube.to);
const bodyOfEnd = (tube: RayTube, end: 'A' | 'B'): Place =>
  unitAlong(end === 'A' ? minus(tube.to, tube.from) : minus(tube.from, tube.to));

/** Of a header what is left, at a place in its endless tube, after one of its own ends was cut. */
function isLeft(scene: RayScene, header: Headers[number], place: Place): boolean {
  const tube = scene.tubes[header.tube];
  if (!tube) return false;
  if (!header.stops) return true;
  const body = bodyOfEnd(tube, header.stops);
  const point = pointOfEnd(tube, header.stops);
  const cut = tube.ends[header.stops];
  const here = dotOf(minus(place, point), body);
  if (cut.kind === 'plain') return here >= -cut.past;
  if (cut.kind === 'plane')
    return dotOf(minus(place, point), cut.normal) * Math.sign(dotOf(body, cut.normal)) >= 0;
  const base = along(place, -here, body);
  if (firstMet(scene, cut.headers, base, body, [FAR, here]) !== undefined) return false;
  if (here >= trimmedAt(scene, cut.headers, base, body)) return true;
  return firstMet(scene, cut.headers, base, body, [here, -FAR]) !== undefined;
}

/** What passes beside them all is trimmed at the farthest of the planes through their axes that are square to the way to the body. */
function trimmedAt(scene: RayScene, headers: readonly { tube: number }[], base: Place, body: Place): number {
  const planes = headers.flatMap(({ tube }) => {
    const header = scene.tubes[tube];
    if (!header) return [];
    const axis = unitAlong(minus(header.to, header.from));
    const normal = crossOf(axis, crossOf(axis, body));
    return [dotOf(minus(header.from, base), normal) / dotOf(body, normal)];
  });
  return Math.max(...planes);
}

const FAR = 400;
/** Of a chord as many at least. */
const LOOKS = 16;

type Headers = readonly { readonly tube: number; readonly stops?: 'A' | 'B' }[];

/** A stretch of a line, in mm into the body from the plane through its base. */
interface Chord {
  readonly top: number;
  readonly bottom: number;
}

/** Where a line runs inside an endless tube, however short that is. */
function chordOf(tube: RayTube, base: Place, body: Place): Chord | undefined {
  return 'radius' in tube.size
    ? chordOfRound(tube, tube.size.radius, base, body)
    : chordOfConvex(tube, base, body);
}

/** Square to the axis the line is at `radius` from it twice. */
function chordOfRound({ from, to }: RayTube, radius: number, base: Place, body: Place): Chord | undefined {
  const axis = unitAlong(minus(to, from));
  const start = minus(base, from);
  const off = along(start, -dotOf(start, axis), axis);
  const way = along(body, -dotOf(body, axis), axis);
  const square = dotOf(way, way);
  const middle = -dotOf(off, way) / square;
  const nearest = along(off, middle, way);
  const half = (radius ** 2 - dotOf(nearest, nearest)) / square;
  return half < 0 ? undefined : { top: middle + Math.sqrt(half), bottom: middle - Math.sqrt(half) };
}

/** How far a line is from a convex tube falls and rises again. */
function chordOfConvex(tube: RayTube, base: Place, body: Place): Chord | undefined {
  const out = (t: number): number => outsideOf(tube, along(base, t, body));
  let [low, high] = [-FAR, FAR];
  while (high - low > 1e-9) {
    const third = (high - low) / 3;
    if (out(low + third) < out(high - third)) high -= third;
    else low += third;
  }
  if (out(low) > 0) return undefined;
  return { top: brink(out, low, FAR), bottom: brink(out, low, -FAR) };
}

/** The last place inside on the way from a place inside to one outside. */
function brink(out: (t: number) => number, inside: number, outside: number): number {
  let [within, beyond] = [inside, outside];
  while (Math.abs(beyond - within) > 1e-10) {
    const middle = (within + beyond) / 2;
    if (out(middle) > 0) beyond = middle;
    else within = middle;
  }
  return within;
}

/**
 * How far into the body from the plane through `base` the first of these headers is met on the way from the body, from one height
 * down to another; undefined where none is.
 */
export function firstMet(
  scene: RayScene,
  headers: Headers,
  base: Place,
  body: Place,
  [from, to]: readonly [number, number] = [FAR, -FAR],
): number | undefined {
  let met: number | undefined;
  for (const header of headers) {
    const tube = scene.tubes[header.tube];
    const chord = tube && chordOf(tube, base, body);
    if (!chord) continue;
    const [top, bottom] = [Math.min(chord.top, from), Math.max(chord.bottom, to, met ?? to)];
    const found = top >= bottom ? firstLeft(scene, header, base, body, { top, bottom }) : undefined;
    if (found !== undefined) met = Math.max(met ?? found, found);
  }
  return met;
}

/** The first place on a chord of a header at which some of it is left. */
function firstLeft(
  scene: RayScene,
  header: Headers[number],
  base: Place,
  body: Place,
  { top, bottom }: Chord,
): number | undefined {
  const gone = (t: number): number => (isLeft(scene, header, along(base, t, body)) ? -1 : 1);
  if (!header.stops || gone(top) < 0) return top;
  const looks = Math.max(LOOKS, Math.ceil((top - bottom) / scene.fine));
  for (let look = 1; look <= looks; look++) {
    const at = top + ((bottom - top) * look) / looks;
    if (gone(at) < 0) return brink(gone, at, top + ((bottom - top) * (look - 1)) / looks);
  }
  return undefined;
}

/** Where the wall line at this place of the section is cut: undefined where it meets nothing. */
export function wallMet(scene: RayScene, index: number, end: 'A' | 'B', radial: Place): number | undefined {
  const tube = scene.tubes[index];
  if (!tube) return undefined;
  const cut = tube.ends[end];
  const body = bodyOfEnd(tube, end);
  const base = along(pointOfEnd(tube, end), 1, radial);
  if (cut.kind === 'plain') return -cut.past;
  if (cut.kind === 'plane') return -dotOf(radial, cut.normal) / dotOf(body, cut.normal);
  return firstMet(scene, cut.headers, base, body);
}

/** Whether any of what an end lands on is left at a height of one of its wall lines. */
export function standsAt(
  scene: RayScene,
  index: number,
  end: 'A' | 'B',
  radial: Place,
  height: number,
): boolean {
  const tube = scene.tubes[index];
  const cut = tube?.ends[end];
  if (!tube || cut?.kind !== 'onto') return false;
  const body = bodyOfEnd(tube, end);
  const place = along(along(pointOfEnd(tube, end), 1, radial), height, body);
  return cut.headers.some((header) => {
    const its = scene.tubes[header.tube];
    return its !== undefined && outsideOf(its, place) <= 0 && isLeft(scene, header, place);
  });
}
