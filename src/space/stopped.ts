import type { Mm, Radians } from '../measure/units.ts';
import { type Landing, pastClock, setbackAt, touchedOrDeeper, towardsClock } from './landing.ts';
import { exactCosine } from './round.ts';
import type { Solid, WallEntry } from './solid.ts';
import type { Vector } from './vector.ts';

/**
 * The end of a straight header that stops at a joint, and how that end's own frame lies in the frame of the end that lands on
 * the header: a point of the header lies `along` its axis from the work point, `towards` the tube's body and `beside` it.
 */
export interface Stop {
  /** What the header's own end was cut to; none where it was cut square off at its work point. */
  readonly cut: readonly Landing[];
  /** Where its end's work point lies, along the header's axis from the work point of what lands on it. */
  readonly at: Mm;
  /** Whether its body runs on from there the way the axis points, or back: 1 or -1. */
  readonly ahead: 1 | -1;
  /** Its station that looks to the tube's body, and whether its stations grow away from w: 1 or -1. */
  readonly turn: Radians;
  readonly round: 1 | -1;
}

/** Patches of the face in which a header ends, beyond those of any kind of header. */
const END_FACE = 16;

/** Whether a wall line was met by the face in which a header ends, on which there is no wall. */
export function isEndFace(patch: number): boolean {
  return patch >= END_FACE && patch < 2 * END_FACE - 1;
}

/**
 * What is left of a straight header, whose axis lies in the plane y = `offset` at `angle` to z, after its own end was cut: all
 * of it that stands on its body's side of that cut, as filled.
 */
export function stopped(solid: Solid, angle: Radians, offset: Mm, stop: Stop): Solid {
  const own = ownFrame(angle, offset, stop);
  const stands = (x: Mm, y: Mm, z: Mm): Mm => {
    const [a, b, c] = own.place(x, y, z);
    return c - (stop.cut.length === 0 ? 0 : setbackAt(stop.cut, a, b));
  };
  const enter = (x: Mm, y: Mm): WallEntry | undefined => {
    const side = solid.enter(x, y);
    if (!side || stands(x, y, side.z) >= 0) return side;
    // A straight header is its own image through its work point.
    const leaves = -(solid.enter(-x, 2 * offset - y)?.z ?? -side.z);
    const z = rootBelow((at) => stands(x, y, at), side.z, leaves);
    return z === undefined ? undefined : { z, ...faceAt(own, stop.cut, x, y, z) };
  };
  return {
    ...solid,
    enter,
    crests: (x0, y0, x1, y1) => crestsOf(solid, enter, x0, y0, x1, y1),
    distance: (x, y, z) => Math.max(solid.distance(x, y, z), -stands(x, y, z) * own.squareTo),
  };
}

interface OwnFrame {
  /** A place of the landing's frame in that of the header's own end. */
  place(x: Mm, y: Mm, z: Mm): Vector;
  /** A direction of the header's own end in the landing's frame. */
  back(direction: Vector): Vector;
  /** How much nearer than along the header its end may lie. */
  readonly squareTo: number;
}

function ownFrame(angle: Radians, offset: Mm, { at, ahead, turn, round, cut }: Stop): OwnFrame {
  const [cos, sin] = [exactCosine(angle), Math.sin(angle)];
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const [first] = cut;
  return {
    place(x, y, z) {
      const towards = z * sin - x * cos;
      const beside = round * (y - offset);
      return [towards * c - beside * s, towards * s + beside * c, ahead * (x * sin + z * cos - at)];
    },
    back([a, b, own]) {
      const towards = a * c + b * s;
      const beside = b * c - a * s;
      const along = ahead * own;
      return [along * sin - towards * cos, round * beside, along * cos + towards * sin];
    },
    squareTo: first?.mitred ? 1 / Math.hypot(1, first.trimClimb) : 1,
  };
}

/** The face in which the header ends, at a point of it: the other side of what the header was cut to. */
function faceAt(own: OwnFrame, cut: readonly Landing[], x: Mm, y: Mm, z: Mm): Omit<WallEntry, 'z'> {
  const [a, b] = own.place(x, y, z);
  const met = cut.map((landing, part) => metBy(landing, part, a, b));
  const { normal, patch } = met.reduce(touchedOrDeeper, SQUARE_OFF);
  const [nx, ny, nz] = own.back(normal);
  return { nx, ny, nz, patch: END_FACE + (patch % (END_FACE - 1)) };
}

interface Met {
  readonly contact: boolean;
  readonly setback: Mm;
  readonly normal: Vector;
  readonly patch: number;
}

const SQUARE_OFF: Met = { contact: false, setback: Number.NEGATIVE_INFINITY, normal: [0, 0, -1], patch: 0 };

function metBy(landing: Landing, part: number, a: Mm, b: Mm): Met {
  const { solid, cosClock, sinClock, trimClimb, shift } = landing;
  const x = towardsClock(landing, a, b);
  const entry = solid.enter(x, pastClock(landing, a, b));
  const steep = Math.hypot(1, trimClimb);
  const { nx, ny, nz, z, patch } = entry ?? {
    nx: -trimClimb / steep,
    ny: 0,
    nz: 1 / steep,
    z: x * trimClimb,
    patch: 4,
  };
  const normal: Vector = [ny * sinClock - nx * cosClock, -nx * sinClock - ny * cosClock, -nz];
  return { contact: entry !== undefined, setback: z + shift, normal, patch: 5 * part + patch };
}

const LOOKS = 8;

/** The highest root of a function that is negative at `top` and rises below it; undefined where it does not, as far as `bottom`. */
function rootBelow(height: (z: Mm) => number, top: Mm, bottom: Mm): Mm | undefined {
  let above = top;
  for (let look = 1; look <= LOOKS; look++) {
    const below = top + ((bottom - top) * look) / LOOKS;
    if (height(below) >= 0) return bisected(height, above, below);
    above = below;
  }
  return undefined;
}

/** Regula falsi (Illinois), which is done at once where the function is a line. */
function bisected(height: (z: Mm) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  let [atLow, atHigh] = [height(low), height(high)];
  for (let round = 0; round < 100 && Math.abs(high - low) > 1e-12; round++) {
    const at = low + ((high - low) * atLow) / (atLow - atHigh);
    const here = height(at);
    if (Math.abs(here) < 1e-12) return at;
    if (here >= 0) {
      [high, atHigh] = [at, here];
      atLow /= 2;
    } else {
      [low, atLow] = [at, here];
      atHigh /= 2;
    }
  }
  return high;
}

const WALL_LOOKS = 12;

/** Of the header itself, and where the way through the wall passes from its side to its end. */
function crestsOf(solid: Solid, enter: Solid['enter'], x0: Mm, y0: Mm, x1: Mm, y1: Mm): readonly number[] {
  const patchAt = (share: number): number =>
    enter(x0 + share * (x1 - x0), y0 + share * (y1 - y0))?.patch ?? -1;
  const edges: number[] = [];
  for (let look = 0; look < WALL_LOOKS; look++) {
    let [low, high] = [look / WALL_LOOKS, (look + 1) / WALL_LOOKS];
    const before = patchAt(low);
    if (before === patchAt(high)) continue;
    while (high - low > 1e-13) {
      const middle = (low + high) / 2;
      if (patchAt(middle) === before) low = middle;
      else high = middle;
    }
    edges.push(low, high);
  }
  return [0, 1, ...solid.crests(x0, y0, x1, y1), ...edges];
}
