import { type AskedPart, type AskedTube, headerAt, outsideAt, turnOf } from '../outside/asked-in-degrees.ts';
import type { EndName, Implicit, Point } from '../outside/solids/implicit-solids.ts';

/**
 * What a person measures at a frame, taken on the exact solids with rays and distances: no formula of a setback, and
 * nothing from the program's source. The frame is the tube's, end A's work point at its origin and end B's at
 * z = between. Lengths in mm, angles in degrees where a part asks for them and in radians elsewhere.
 */
export interface Frame {
  readonly tube: AskedTube;
  readonly between: number;
  readonly A: AskedPart;
  readonly B: AskedPart;
}

/** A header of the frame as a solid in the tube's frame. */
function headerOf(frame: Frame, end: EndName): Implicit {
  const { solid } = headerAt(frame[end], end);
  if (end === 'A') return solid;
  return ([x, y, z]) => solid([x, y, z - frame.between]);
}

/** How far down the tube's z a ray from the middle of the tube meets the header at an end; undefined where it misses. */
export function rayTo(frame: Frame, end: EndName, x: number, y: number): number | undefined {
  const header = headerOf(frame, end);
  const way = end === 'A' ? -1 : 1;
  const outside = (gone: number): number => header([x, y, frame.between / 2 + way * gone]);
  let before = 0;
  for (let gone = outside(0); gone < frame.between * 2; gone += Math.max(1e-3, outside(gone))) {
    if (outside(gone) <= 0) return frame.between / 2 + way * rootBetween(outside, before, gone);
    before = gone;
  }
  return undefined;
}

function rootBetween(outside: (gone: number) => number, clear: number, within: number): number {
  let [low, high] = [clear, within];
  for (let i = 0; i < 70; i++) {
    const middle = (low + high) / 2;
    if (outside(middle) <= 0) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** From header to header along one line of the tube; undefined where it misses one. */
export function straightedge(frame: Frame, x: number, y: number): number | undefined {
  const [a, b] = [rayTo(frame, 'A', x, y), rayTo(frame, 'B', x, y)];
  return a === undefined || b === undefined ? undefined : b - a;
}

/** Where the tube's outside reaches furthest to an end: the height of its long point, by a ring and a closing search. */
export function longPoint(frame: Frame, end: EndName): number {
  const way = end === 'A' ? -1 : 1;
  const reach = (station: number): number => {
    const { x, y } = outsideAt(frame.tube, at(station, turnOf(frame.tube)));
    return way * (rayTo(frame, end, x, y) ?? Number.NaN);
  };
  const step = turnOf(frame.tube) / 720;
  const ring = Array.from({ length: 720 }, (_, i) => reach(i * step));
  const best = ring.indexOf(Math.max(...ring));
  let [low, high] = [(best - 1) * step, (best + 1) * step];
  while (high - low > 1e-9) {
    const [left, right] = [low + (high - low) / 3, high - (high - low) / 3];
    if (reach(left) < reach(right)) low = left;
    else high = right;
  }
  return way * reach((low + high) / 2);
}

function at(station: number, turn: number): number {
  return ((station % turn) + turn) % turn;
}

/** The direction of a header's axis, towards the side of its clock: between two points that rays meet on one ridge. */
export function directionOf(frame: Frame, end: EndName): Point {
  const part = frame[end];
  const clock = (part.clock * Math.PI) / 180;
  const [u, w] = [
    [Math.cos(clock), Math.sin(clock)],
    [-Math.sin(clock), Math.cos(clock)],
  ] as const;
  const point = (out: number): Point => {
    const [x, y] = [out * u[0] + part.offset * w[0], out * u[1] + part.offset * w[1]];
    return [x, y, rayTo(frame, end, x, y) ?? Number.NaN];
  };
  const [from, to] = [point(-6), point(6)];
  const way: Point = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  const long = Math.hypot(...way);
  return [way[0] / long, way[1] / long, way[2] / long];
}

/** From an end along the tube. */
export function bodyOf(end: EndName): Point {
  return [0, 0, end === 'A' ? 1 : -1];
}

/** The station on the acute side of a joint, as an angle. */
export function heelOf(frame: Frame, end: EndName): number {
  const [x, y, z] = directionOf(frame, end);
  const acute = z * bodyOf(end)[2] >= 0 ? 1 : -1;
  return Math.atan2(acute * y, acute * x);
}

/** The way along a curve from 0 to 1, by chords: twice as many give what is left out by either (Richardson). */
export function walked(point: (share: number) => readonly [number, number]): number {
  const chords = (count: number): number => {
    let sum = 0;
    for (let i = 0; i < count; i++) {
      const [from, to] = [point(i / count), point((i + 1) / count)];
      sum += Math.hypot(to[0] - from[0], to[1] - from[1]);
    }
    return sum;
  };
  return (4 * chords(4096) - chords(2048)) / 3;
}
