import {
  cross,
  dot,
  type EndName,
  type HeaderFrame,
  headerFrame,
  type Implicit,
  less,
  type Point,
  roundBar,
  scaled,
  trimSpace,
} from './implicit-solids.ts';

/** What a tube can land on. Lengths in mm, angles in degrees. */
export type Onto =
  | { readonly kind: 'round'; readonly od: number }
  | { readonly kind: 'plate' }
  | {
      readonly kind: 'mitre';
      /** Of the whole corner. */
      readonly turn: number;
      readonly elbow?: { readonly pieces: number; readonly radius: number };
    }
  | {
      readonly kind: 'box';
      readonly wide: number;
      readonly deep: number;
      readonly corner: number;
      readonly roll: number;
    }
  | { readonly kind: 'bend'; readonly od: number; readonly radius: number; readonly centre: number };

/** One header as it lies at an end; a mitre's angle is 90 less half its turn. Lengths in mm, angles in degrees. */
export interface AskedPart {
  readonly onto: Onto;
  readonly angle: number;
  readonly clock: number;
  readonly offset: number;
  readonly shift: number;
}

/** The tube that is coped: round by its outside diameter, or rectangular with corners of an outside radius. */
export type AskedTube =
  | { readonly od: number }
  | { readonly wide: number; readonly deep: number; readonly corner: number };

/** One end of a tube, asked for in numbers. */
export interface AskedEnd {
  readonly tube: AskedTube;
  readonly wall: number;
  readonly end: EndName;
  readonly parts: readonly [AskedPart, ...AskedPart[]];
}

/** What lies at an end, as inequalities in the tube's frame. */
export interface PartSolid {
  readonly kind: Onto['kind'];
  readonly solid: Implicit;
  /** All that lies behind the plane to which a missed line is trimmed. */
  readonly trim: Implicit;
  /** An entry further than this from the trim plane is not at the joint: a bend comes round, or runs off. */
  readonly near: number;
}

const DEGREE = Math.PI / 180;

/** The frame of a part, its work point moved by `shift` towards the tube's body. */
export function frameOf(part: AskedPart, end: EndName): HeaderFrame {
  const angle = part.angle === 90 ? Math.PI / 2 : part.angle * DEGREE;
  const frame = headerFrame({ end, angle, clock: part.clock * DEGREE, offset: part.offset });
  const [x, y, z] = frame.origin;
  return { ...frame, origin: [x, y, z + (end === 'A' ? part.shift : -part.shift)] };
}

/** A part as a solid and its trim space. */
export function solidOf(part: AskedPart, end: EndName): PartSolid {
  const frame = frameOf(part, end);
  const behind = trimSpace(frame);
  const trim: Implicit = (point) => behind(less(point, frame.origin));
  const { onto } = part;
  const near = onto.kind === 'bend' ? onto.radius + onto.od : Number.POSITIVE_INFINITY;
  return { kind: onto.kind, trim, solid: bodyOf(onto, frame, trim), near };
}

function bodyOf(onto: Onto, frame: HeaderFrame, trim: Implicit): Implicit {
  switch (onto.kind) {
    case 'round':
      return roundBar(frame, onto.od / 2);
    case 'plate':
    case 'mitre':
      return trim;
    case 'box':
      return rolledBox(frame, onto);
    case 'bend':
      return bentBar(frame, onto);
  }
}

/** The axis that begins on the body's side and turns towards w by this many degrees. */
export function turnedUp({ up, aside }: HeaderFrame, degrees: number): Point {
  return plus(scaled(up, Math.cos(degrees * DEGREE)), scaled(aside, Math.sin(degrees * DEGREE)));
}

/** An endless bar of rectangular section with round corners: all within `corner` of a smaller sharp rectangle. */
function rolledBox(frame: HeaderFrame, { wide, deep, corner, roll }: Onto & { kind: 'box' }): Implicit {
  const deepward = turnedUp(frame, roll);
  const wideward = turnedUp(frame, roll + 90);
  return (point) => {
    const from = less(point, frame.origin);
    const outDeep = Math.abs(dot(from, deepward)) - (deep / 2 - corner);
    const outWide = Math.abs(dot(from, wideward)) - (wide / 2 - corner);
    if (outDeep > 0 && outWide > 0) return Math.hypot(outDeep, outWide) - corner;
    return Math.max(outDeep, outWide) - corner;
  };
}

/** All within half the diameter of a centre line: a quarter of a circle each way, and a ray beyond each end. */
function bentBar(frame: HeaderFrame, { od, radius, centre }: Onto & { kind: 'bend' }): Implicit {
  const inward = turnedUp(frame, centre);
  const middle = plus(frame.origin, scaled(inward, radius));
  const ends = [1, -1].map((side) => plus(middle, scaled(frame.along, side * radius)));
  return (point) => {
    const from = less(point, middle);
    const turn = Math.atan2(dot(from, frame.along), -dot(from, inward));
    const kept = Math.min(Math.PI / 2, Math.max(-Math.PI / 2, turn));
    const onArc = plus(
      scaled(inward, -radius * Math.cos(kept)),
      scaled(frame.along, radius * Math.sin(kept)),
    );
    const toRays = ends.map((start) => {
      const away = less(point, start);
      return Math.hypot(...less(away, scaled(inward, Math.max(0, dot(away, inward)))));
    });
    return Math.min(Math.hypot(...less(from, onArc)), ...toRays) - od / 2;
  };
}

/** A point of the tube's outside in the plane square to it, and the outward normal there. */
export interface OutsidePoint {
  readonly x: number;
  readonly y: number;
  readonly nx: number;
  readonly ny: number;
}

/** All the way round a tube in its stations: 2 pi, or mm round the outside of a rectangular one. */
export function turnOf(tube: AskedTube): number {
  if ('od' in tube) return 2 * Math.PI;
  return 2 * (tube.wide + tube.deep) + (2 * Math.PI - 8) * tube.corner;
}

/** The point of the outside at a station: an angle, or mm walked from the middle of the wide face on +x towards +y. */
export function outsideAt(tube: AskedTube, station: number): OutsidePoint {
  if ('od' in tube) {
    const [nx, ny] = [Math.cos(station), Math.sin(station)];
    return { x: (tube.od / 2) * nx, y: (tube.od / 2) * ny, nx, ny };
  }
  const { wide, deep, corner } = tube;
  const arc = (Math.PI / 2) * corner;
  let left = station;
  let across = deep / 2;
  let along = wide / 2;
  let begun = -0;
  for (let face = 0; face < 5; face++) {
    const flat = along - corner;
    if (left <= flat - begun) return quarterTurned(face, { x: across, y: begun + left, nx: 1, ny: 0 });
    left -= flat - begun;
    if (left < arc) {
      const [nx, ny] = [Math.cos(left / corner), Math.sin(left / corner)];
      const [x, y] = [across - corner + corner * nx, flat + corner * ny];
      return quarterTurned(face, { x, y, nx, ny });
    }
    left -= arc;
    [across, along] = [along, across];
    begun = -(along - corner);
  }
  throw new Error(`station ${station} is not on the tube`);
}

function quarterTurned(times: number, { x, y, nx, ny }: OutsidePoint): OutsidePoint {
  if (times === 0) return { x, y, nx, ny };
  return quarterTurned(times - 1, { x: -y, y: x, nx: -ny, ny: nx });
}

/** Where a line along the tube lands, coming from the body. */
export interface Landed {
  readonly setback: number;
  readonly contact: boolean;
  /** A bend was met, but not near its work point. */
  readonly far: boolean;
}

/**
 * The greatest setback over the parts touched, else over the trim planes. Of a line that enters a bend more than
 * once, the entry nearest its trim plane.
 */
export function landedAt(parts: readonly PartSolid[], end: EndName, x: number, y: number): Landed {
  const line = (solid: Implicit) => (setback: number) => solid([x, y, end === 'A' ? setback : -setback]);
  const trims = parts.map(({ trim }) => entryInto(line(trim)) ?? Number.NaN);
  let far = false;
  const touched = parts.flatMap(({ kind, solid, near }, i) => {
    const plane = trims[i] ?? Number.NaN;
    const entry = kind === 'bend' ? entryNearest(plane, line(solid)) : entryInto(line(solid));
    far ||= entry !== undefined && Math.abs(entry - plane) > near;
    return entry ?? [];
  });
  if (touched.length > 0) return { setback: Math.max(...touched), contact: true, far };
  return { setback: Math.max(...trims), contact: false, far };
}

const FAR = 1500;
const LEAST_STEP = 1e-3;

/** Where the line enters a convex solid: how far it is outside falls to one least value and rises again. */
function entryInto(outside: (setback: number) => number): number | undefined {
  let low = -FAR;
  let high = FAR;
  for (let i = 0; i < 90 && high - low > 1e-13; i++) {
    const left = low + (high - low) / 3;
    const right = high - (high - low) / 3;
    if (outside(left) <= 0) return rootBetween(outside, left, FAR);
    if (outside(left) < outside(right)) high = right;
    else low = left;
  }
  const within = (low + high) / 2;
  return outside(within) <= 0 ? rootBetween(outside, within, FAR) : undefined;
}

function entryNearest(plane: number, outside: (setback: number) => number): number | undefined {
  const away = (entry: number): number => Math.abs(entry - plane);
  return entriesAlong(outside).sort((a, b) => away(a) - away(b))[0];
}

/** Every setback at which the line passes from outside to inside, the one furthest to the body first. */
function entriesAlong(outside: (setback: number) => number): number[] {
  const entries: number[] = [];
  let before = FAR;
  let gap = outside(before);
  while (before > -FAR) {
    const here = before - Math.max(LEAST_STEP, Math.abs(gap));
    const next = outside(here);
    if (gap > 0 && next <= 0) entries.push(rootBetween(outside, here, before));
    before = here;
    gap = next;
  }
  return entries;
}

function rootBetween(outside: (setback: number) => number, within: number, without: number): number {
  let inside = within;
  let clear = without;
  for (let i = 0; i < 60; i++) {
    const middle = (inside + clear) / 2;
    if (outside(middle) <= 0) inside = middle;
    else clear = middle;
  }
  return (inside + clear) / 2;
}

function plus(a: Point, b: Point): Point {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

/** A direction square to two others, of length 1. */
export function squareTo(a: Point, b: Point): Point {
  const c = cross(a, b);
  return scaled(c, 1 / Math.hypot(...c));
}
