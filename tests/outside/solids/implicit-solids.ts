/**
 * Where a tube's wall meets what it lands on, found by brute force from definitions alone. A solid is a function that
 * says how far outside it a point lies; a line along the wall is followed from the tube's body until it is inside.
 * Nothing here is taken from the program's source, and no closed form of a setback is used.
 *
 * The frame is the tube's: origin at this end's work point, z along the axis from A to B, station 0 on x. Lengths in
 * mm, angles in radians.
 */
export type Point = readonly [x: number, y: number, z: number];

/**
 * At most how far a point lies outside a solid; below zero inside it. It may say less than the true distance, never
 * more, so that a step this long cannot jump over anything.
 */
export type Implicit = (point: Point) => number;

export type EndName = 'A' | 'B';

/** How a header lies at an end: its angle to the tube's body, the station of its heel, its axis off the tube's. */
export interface Placement {
  readonly end: EndName;
  readonly angle: number;
  readonly clock: number;
  readonly offset: number;
}

/** What an end lands on: the solid, and the half space behind the plane to which a missed line is trimmed. */
export interface Header {
  readonly end: EndName;
  readonly solid: Implicit;
  readonly trim: Implicit;
  /** Of several entries the one nearest the trim plane counts, if it is within so many mm; else the first. */
  readonly nearestWithin?: number;
  /** The solid is convex and `solid` is too: no sliver of it is passed by. */
  readonly convex?: boolean;
}

/** The three directions of a header: `along` its axis, `aside` towards clock + 90, `up` towards the tube's body. */
export interface HeaderFrame {
  readonly origin: Point;
  readonly along: Point;
  readonly aside: Point;
  readonly up: Point;
}

/** The header's frame from its definition: axis through the work point + offset, leaning to u by its angle. */
export function headerFrame({ end, angle, clock, offset }: Placement): HeaderFrame {
  const bodySide = end === 'A' ? 1 : -1;
  const u: Point = [Math.cos(clock), Math.sin(clock), 0];
  const aside: Point = [-Math.sin(clock), Math.cos(clock), 0];
  const along: Point = [
    Math.sin(angle) * u[0],
    Math.sin(angle) * u[1],
    (angle === Math.PI / 2 ? 0 : Math.cos(angle)) * bodySide,
  ];
  const square = cross(along, aside);
  const up = square[2] * bodySide > 0 ? square : scaled(square, -1);
  return { origin: scaled(aside, offset), along, aside, up };
}

/** An endless round bar, the outside of a round tube. */
export function roundBar({ origin, along }: HeaderFrame, radius: number): Implicit {
  return (point) => {
    const across = cross(less(point, origin), along);
    return Math.sqrt(dot(across, across)) - radius;
  };
}

/** All that lies behind the plane through a work point, spanned by the header's direction and the offset's. */
export function trimSpace({ along, aside, up }: HeaderFrame): Implicit {
  const normal = scaled(cross(along, aside), Math.sign(dot(cross(along, aside), up)));
  return (point) => dot(point, normal);
}

/** Everything that any of these solids fills. */
export function unionOf(solids: readonly Implicit[]): Implicit {
  return (point) => Math.min(...solids.map((solid) => solid(point)));
}

/** A round header of this outside radius at an end. */
export function roundHeaderAt(placement: Placement, radius: number): Header {
  const frame = headerFrame(placement);
  return { end: placement.end, solid: roundBar(frame, radius), trim: trimSpace(frame) };
}

export interface Landing {
  readonly setback: number;
  readonly contact: boolean;
}

/** Where the line of the wall at this radius and station lands, coming from the body; trimmed where it misses. */
export function landingAt(header: Header, radius: number, station: number): Landing {
  return landingOfLine(header, radius * Math.cos(station), radius * Math.sin(station));
}

/** Where the line along the tube through this point of its cross-section lands; trimmed where it misses. */
export function landingOfLine(header: Header, x: number, y: number): Landing {
  const toBody = header.end === 'A' ? 1 : -1;
  const along =
    (solid: Implicit) =>
    (setback: number): number =>
      solid([x, y, setback * toBody]);
  if (header.nearestWithin === undefined) {
    const enter = header.convex ? firstInsideConvex : firstInside;
    const met = enter(along(header.solid));
    if (met !== undefined) return { setback: met, contact: true };
  }
  const trimmed = firstInside(along(header.trim));
  if (trimmed === undefined) throw new Error(`no trim plane across the line through ${x}, ${y}`);
  if (header.nearestWithin !== undefined) {
    const met = nearestInside(along(header.solid), trimmed, header.nearestWithin);
    if (met !== undefined) return { setback: met, contact: true };
  }
  return { setback: trimmed, contact: false };
}

/**
 * The deepest landing of one station from the tube's inside to its outside: samples across the wall, and about the
 * best of them a search that closes in on it.
 */
export function deepestAcrossWall(header: Header, inner: number, outer: number, station: number): number {
  const depth = (radius: number): number => landingAt(header, radius, station).setback;
  const step = (outer - inner) / ACROSS;
  let best = 0;
  let deepest = Number.NEGATIVE_INFINITY;
  for (let i = 0; i <= ACROSS; i++) {
    const setback = depth(inner + i * step);
    if (setback > deepest) [deepest, best] = [setback, i];
  }
  let low = inner + Math.max(0, best - 1) * step;
  let high = inner + Math.min(ACROSS, best + 1) * step;
  while (high - low > CLOSE) {
    const left = low + (high - low) / 3;
    const right = high - (high - low) / 3;
    if (depth(left) < depth(right)) low = left;
    else high = right;
  }
  return Math.max(deepest, depth((low + high) / 2));
}

const ACROSS = 64;
const CLOSE = 1e-7;

/** Lines are followed from this far on the body's side to as far beyond the work point. */
const FAR = 20_000;

/** Steps are never shorter: a solid thinner than this along the line may be passed by. */
const LEAST_STEP = 1e-3;

/** The greatest setback at which the line is inside, followed from the body: a march, then bisection. */
function firstInside(
  outside: (setback: number) => number,
  from = FAR,
  to = -FAR,
  leastStep = LEAST_STEP,
): number | undefined {
  let before = from;
  let here = before - Math.max(leastStep, outside(before));
  while (here > to) {
    const gap = outside(here);
    if (gap <= 0) return bisect(outside, here, before);
    before = here;
    here -= Math.max(leastStep, gap);
  }
  return undefined;
}

/** The same where the gap along the line has but one least place: that is closed in on, then bisected from. */
function firstInsideConvex(outside: (setback: number) => number): number | undefined {
  let [low, high] = [-FAR, FAR];
  while (high - low > 1e-10) {
    const left = low + (high - low) * 0.45;
    const right = high - (high - low) * 0.45;
    const [atLeft, atRight] = [outside(left), outside(right)];
    // Where the gap is the same at both, it is level between them, and the side of the body is kept.
    if (atLeft < atRight) high = right;
    else low = left;
    if (atLeft <= 0 || atRight <= 0) return bisect(outside, atRight <= 0 ? right : left, FAR);
  }
  return undefined;
}

const FINE_STEP = 1e-5;

/** Of all setbacks at which the line goes in, the one nearest to `middle` and no further from it than `within`. */
function nearestInside(
  outside: (setback: number) => number,
  middle: number,
  within: number,
): number | undefined {
  const end = middle - within;
  const next = (solid: (setback: number) => number, from: number): number | undefined =>
    firstInside(solid, from, end, FINE_STEP);
  const leave = (from: number): number | undefined => next((setback) => -outside(setback), from);
  let nearest: number | undefined;
  let from: number | undefined = middle + within;
  if (outside(from) <= 0) from = leave(from);
  while (from !== undefined) {
    const entry = next(outside, from);
    if (entry === undefined) break;
    if (nearest === undefined || Math.abs(entry - middle) < Math.abs(nearest - middle)) nearest = entry;
    const out = leave(entry - FINE_STEP);
    from = out === undefined ? undefined : out - FINE_STEP;
  }
  return nearest;
}

function bisect(outside: (setback: number) => number, within: number, without: number): number {
  let inside = within;
  let clear = without;
  for (let i = 0; i < 60 && clear - inside > 1e-12; i++) {
    const middle = (inside + clear) / 2;
    if (outside(middle) <= 0) inside = middle;
    else clear = middle;
  }
  return (inside + clear) / 2;
}

export function dot(a: Point, b: Point): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

export function cross(a: Point, b: Point): Point {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

export function less(a: Point, b: Point): Point {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

export function scaled(a: Point, by: number): Point {
  return [a[0] * by, a[1] * by, a[2] * by];
}
