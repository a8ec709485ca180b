import type { AskedBend, AskedBox, AskedEnd, AskedHeader, AskedPart, AskedTube } from '../asked-end.ts';
import {
  dot,
  type EndName,
  type Header,
  type HeaderFrame,
  headerFrame,
  type Implicit,
  type Landing,
  landingOfLine,
  less,
  type Point,
  roundBar,
  trimSpace,
} from './implicit-solids.ts';

// The kinds of header as inequalities, each from its own definition. A direction `turn` round the header is reckoned
// from the body's side (`up`) towards the side of clock + 90 (`aside`), at either end.

/** All that one part of an end fills, and its trim, its work point moved by its shift towards the body. */
export function partAt(end: EndName, part: AskedPart): Header {
  const frame = headerFrame({ end, ...part });
  const solid = solidOf(part.header, frame);
  const moved = movedAlong(end === 'A' ? part.shift : -part.shift);
  const follow =
    part.header.kind === 'bend'
      ? { nearestWithin: reachOf(part.header) / Math.sin(part.angle) }
      : { convex: true };
  return { end, solid: moved(solid), trim: moved(trimSpace(frame)), ...follow };
}

/** A bend's tangents have no end: what they meet further off than its arc reaches is no part of the joint. */
function reachOf({ radius, bendRadius }: AskedBend): number {
  return bendRadius + 2 * radius;
}

/** Whether a bend, as far as its arc and what is near it reach, lies in the tube's body beyond the joint. */
export function crossesBody(tube: AskedTube, part: AskedPart): boolean {
  if (part.header.kind !== 'bend') return false;
  const header = partAt('A', { ...part, shift: 0 });
  const { turn, at } = wallOf({ tube });
  const stations = Array.from({ length: AROUND }, (_, i) => (i * turn) / AROUND);
  return stations.some((station) => {
    const [x, y] = at(station, 0);
    const { setback } = landingOfLine(header, x, y);
    for (let z = setback + 0.1; z < setback + 2 * (header.nearestWithin ?? 0); ) {
      const outside = header.solid([x, y, z]);
      if (outside < 0) return true;
      z += Math.max(0.1, outside);
    }
    return false;
  });
}

const AROUND = 48;

function movedAlong(way: number): (solid: Implicit) => Implicit {
  return (solid) =>
    ([x, y, z]) =>
      solid([x, y, z - way]);
}

function solidOf(header: AskedHeader, frame: HeaderFrame): Implicit {
  switch (header.kind) {
    case 'round':
      return roundBar(frame, header.radius);
    case 'plate':
    case 'mitre':
      return (point) => dot(less(point, frame.origin), frame.up);
    case 'box':
      return boxBar(frame, header);
    case 'bend':
      return bentBar(frame, header);
  }
}

/** Which smooth face of a part a point of its surface belongs to, in words; faces meet at edges and where arcs begin. */
export function faceOf(end: EndName, part: AskedPart, [x, y, z]: Point): string {
  const frame = headerFrame({ end, ...part });
  const point: Point = [x, y, z - (end === 'A' ? part.shift : -part.shift)];
  const { header } = part;
  if (header.kind === 'box') {
    const [d, w] = turned(frame, header.roll)(point);
    const overD = Math.abs(d) - header.deep / 2 + header.corner;
    const overW = Math.abs(w) - header.wide / 2 + header.corner;
    if (header.corner > 0 && overD > 0 && overW > 0) return `corner ${d > 0} ${w > 0}`;
    return overD > overW ? `deep ${d > 0}` : `wide ${w > 0}`;
  }
  if (header.kind === 'bend') {
    const [inwards] = turned(frame, header.centre)(point);
    if (inwards <= header.bendRadius) return 'arc';
    return `tangent ${dot(less(point, frame.origin), frame.along) > 0}`;
  }
  return 'all';
}

/** The two coordinates across a header turned round its axis. */
function turned({ origin, aside, up }: HeaderFrame, turn: number): (point: Point) => [number, number] {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return (point) => {
    const from = less(point, origin);
    const [high, side] = [dot(from, up), dot(from, aside)];
    return [high * cos + side * sin, side * cos - high * sin];
  };
}

/** An endless bar: every point within `corner` of a rectangle less its corners. */
function boxBar(frame: HeaderFrame, box: AskedBox): Implicit {
  const across = turned(frame, box.roll);
  return (point) => outsideRectangle(box, ...across(point));
}

/** How far a point, d across and w along its wide side, lies outside a rectangle with round corners. */
export function outsideRectangle(
  { wide, deep, corner }: { readonly wide: number; readonly deep: number; readonly corner: number },
  d: number,
  w: number,
): number {
  const [overD, overW] = [Math.abs(d) - deep / 2 + corner, Math.abs(w) - wide / 2 + corner];
  if (overD <= 0 && overW <= 0) return Math.max(overD, overW) - corner;
  return long(Math.max(overD, 0), Math.max(overW, 0), 0) - corner;
}

/** Every point within `radius` of a centre line: half a circle round the bend's centre, and a ray beyond each end. */
function bentBar(frame: HeaderFrame, { radius, bendRadius, centre }: AskedBend): Implicit {
  const across = turned(frame, centre);
  return (point) => {
    const t = dot(less(point, frame.origin), frame.along);
    const [inwards, off] = across(point);
    const beyond = inwards - bendRadius;
    const toRays = long(Math.abs(t) - bendRadius, off, Math.min(beyond, 0));
    const swing = Math.min(Math.max(Math.atan2(t, -beyond), -Math.PI / 2), Math.PI / 2);
    const [onT, onDepth] = [bendRadius * Math.sin(swing), -bendRadius * Math.cos(swing)];
    const toArc = long(t - onT, beyond - onDepth, off);
    return Math.min(toRays, toArc) - radius;
  };
}

/** Asked for millions of times: `Math.hypot` takes ten times as long. */
function long(a: number, b: number, c: number): number {
  return Math.sqrt(a * a + b * b + c * c);
}

/**
 * Where the line through (x, y) lands on all parts of an end together: the deepest of those it touches; only where it
 * touches none, the deepest of the planes to which it is trimmed.
 */
export function landingOnAll(headers: readonly Header[], x: number, y: number): Landing {
  const each = headers.map((header) => landingOfLine(header, x, y));
  const touched = each.filter(({ contact }) => contact);
  const setbacks = (touched.length > 0 ? touched : each).map(({ setback }) => setback);
  return { setback: Math.max(...setbacks), contact: touched.length > 0 };
}

/** A point of a tube's cross-section, `depth` inside the outside, square to it. */
export type WallAt = (station: number, depth: number) => readonly [x: number, y: number];

/** How to walk round a tube's wall, and how far it is once round: an angle, or mm round a rectangular one. */
export function wallOf({ tube }: Pick<AskedEnd, 'tube'>): { readonly turn: number; readonly at: WallAt } {
  if (tube.kind === 'round') {
    const at: WallAt = (station, depth) => [
      (tube.radius - depth) * Math.cos(station),
      (tube.radius - depth) * Math.sin(station),
    ];
    return { turn: 2 * Math.PI, at };
  }
  const { wide, deep, corner } = tube;
  const flats = [
    wide / 2 - corner,
    deep - 2 * corner,
    wide - 2 * corner,
    deep - 2 * corner,
    wide / 2 - corner,
  ];
  const arc = (Math.PI / 2) * corner;
  const turn = flats.reduce((sum, flat) => sum + flat, 0) + 4 * arc;
  const at: WallAt = (station, depth) => {
    const [x, y] = walk(flats, corner, deep / 2, modulo(station, turn), depth);
    return [keptWithin(deep / 2 - depth, x), keptWithin(wide / 2 - depth, y)];
  };
  return { turn, at };
}

/** Walks from the middle of a face, straight on and round each corner to the left, and steps aside by `depth`. */
function walk(
  flats: readonly number[],
  corner: number,
  out: number,
  station: number,
  depth: number,
): [number, number] {
  let [x, y, heading, left] = [out, 0, Math.PI / 2, station];
  const arc = (Math.PI / 2) * corner;
  for (const flat of flats) {
    const straight = Math.min(left, flat);
    x += straight * Math.cos(heading);
    y += straight * Math.sin(heading);
    left -= straight;
    const bend = Math.min(left, arc);
    const after = heading + (corner > 0 ? bend / corner : left > 0 ? Math.PI / 2 : 0);
    x += corner * (Math.sin(after) - Math.sin(heading));
    y -= corner * (Math.cos(after) - Math.cos(heading));
    heading = after;
    left -= bend;
    if (left <= 0) break;
  }
  return [x - depth * Math.sin(heading), y + depth * Math.cos(heading)];
}

/** Inside a corner less round than the wall is thick the inner edge is sharp: none lies beyond the inner faces. */
function keptWithin(inside: number, coordinate: number): number {
  return Math.max(-inside, Math.min(inside, coordinate));
}

function modulo(station: number, turn: number): number {
  return ((station % turn) + turn) % turn;
}

/** Whether the tube's outside touches what it lands on all round, as far as a ring of 360 stations shows. */
export function touchesAllRound(ask: AskedEnd): boolean {
  const headers = ask.parts.map((part) => partAt('A', part));
  const { turn, at } = wallOf(ask);
  return Array.from({ length: 360 }, (_, i) => (i * turn) / 360).every(
    (station) => landingOnAll(headers, ...at(station, 0)).contact,
  );
}
