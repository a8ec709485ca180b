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

/** Of a header what is left after one of its own ends was cut. */
function isLeft(
  tubes: readonly RayTube[],
  header: { tube: number; stops?: 'A' | 'B' },
  place: Place,
): boolean {
  const tube = tubes[header.tube];
  if (!tube || outsideOf(tube, place) > 0) return false;
  if (!header.stops) return true;
  const body = bodyOfEnd(tube, header.stops);
  const point = pointOfEnd(tube, header.stops);
  const cut = tube.ends[header.stops];
  const here = dotOf(minus(place, point), body);
  if (cut.kind === 'plain') return here >= -cut.past;
  if (cut.kind === 'plane')
    return dotOf(minus(place, point), cut.normal) * Math.sign(dotOf(body, cut.normal)) >= 0;
  const base = along(place, -here, body);
  if (isMetWithin(tubes, cut.headers, base, body, FAR, here)) return false;
  if (here >= trimmedAt(tubes, cut.headers, base, body)) return true;
  return isMetWithin(tubes, cut.headers, base, body, here, -FAR);
}

/** What passes beside them all is trimmed at the farthest of the planes through their axes that are square to the way to the body. */
function trimmedAt(
  tubes: readonly RayTube[],
  headers: readonly { tube: number }[],
  base: Place,
  body: Place,
): number {
  const planes = headers.flatMap(({ tube }) => {
    const header = tubes[tube];
    if (!header) return [];
    const axis = unitAlong(minus(header.to, header.from));
    const normal = crossOf(axis, crossOf(axis, body));
    return [dotOf(minus(header.from, base), normal) / dotOf(body, normal)];
  });
  return Math.max(...planes);
}

const FAR = 400;
/** A chord shorter than this may be stepped over: of a round tube of 13 mm and more that is 1e-4 mm of it. */
const FINE = 0.1;

/**
 * How far into the body from the plane through `base` the first of these headers is met on the way from the body; undefined where
 * none is. Far from all the way is as long as nothing can be; inside what was cut away it is fine steps.
 */
export function firstMet(
  tubes: readonly RayTube[],
  headers: readonly { tube: number; stops?: 'A' | 'B' }[],
  base: Place,
  body: Place,
): number | undefined {
  for (const { t, step } of strides(tubes, headers, base, body, FAR, -FAR)) {
    const inside = (at: number): boolean => isIn(tubes, headers, along(base, at, body));
    if (step > FINE || !inside(t - step)) continue;
    let [out, within] = [t, t - step];
    while (out - within > 1e-10) {
      const middle = (out + within) / 2;
      if (inside(middle)) within = middle;
      else out = middle;
    }
    return out;
  }
  return undefined;
}

type Headers = readonly { readonly tube: number; readonly stops?: 'A' | 'B' }[];

function isIn(tubes: readonly RayTube[], headers: Headers, place: Place): boolean {
  return headers.some((header) => isLeft(tubes, header, place));
}

/** Whether any of them is met on the way from one height to a lower one. */
function isMetWithin(
  tubes: readonly RayTube[],
  headers: Headers,
  base: Place,
  body: Place,
  from: number,
  to: number,
): boolean {
  if (isIn(tubes, headers, along(base, to, body))) return true;
  for (const { t, step } of strides(tubes, headers, base, body, from, to)) {
    if (step <= FINE && isIn(tubes, headers, along(base, t - step, body))) return true;
  }
  return false;
}

/** The way down in steps that nothing endless lies in, or fine ones. */
function* strides(
  tubes: readonly RayTube[],
  headers: Headers,
  base: Place,
  body: Place,
  from: number,
  to: number,
): Generator<{ readonly t: number; readonly step: number }> {
  for (let t = from; t > to; ) {
    const place = along(base, t, body);
    let free = FAR;
    for (const { tube } of headers) {
      const each = tubes[tube];
      if (each) free = Math.min(free, outsideOf(each, place));
    }
    const step = Math.max(free, FINE);
    yield { t, step };
    t -= step;
  }
}

/** Where the wall line at this place of the section is cut: undefined where it meets nothing. */
export function wallMet(
  tubes: readonly RayTube[],
  index: number,
  end: 'A' | 'B',
  radial: Place,
): number | undefined {
  const tube = tubes[index];
  if (!tube) return undefined;
  const cut = tube.ends[end];
  const body = bodyOfEnd(tube, end);
  const base = along(pointOfEnd(tube, end), 1, radial);
  if (cut.kind === 'plain') return -cut.past;
  if (cut.kind === 'plane') return -dotOf(radial, cut.normal) / dotOf(body, cut.normal);
  return firstMet(tubes, cut.headers, base, body);
}
