import type { Mm, Radians } from '../measure/units.ts';
import { awayUnder, isConvex, overFaceAt, standsAbove, stepBetween } from './end-face.ts';
import { firstBelow, type LineDown } from './first-below.ts';
import type { Landing } from './landing.ts';
import { exactCosine } from './round.ts';
import { type Solid, TOUCH, type WallEntry } from './solid.ts';
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
/** Of that face where it steps along the header's axis. */
const STEP_FACE = 30;

/** Whether a wall line was met by the face in which a header ends, on which there is no wall. */
export function isEndFace(patch: number): boolean {
  return patch >= END_FACE && patch <= STEP_FACE;
}

/**
 * What is left of a straight header, whose axis lies in the plane y = `offset` at `angle` to z, after its own end was cut: all
 * of it that stands on its body's side of that cut, as filled.
 */
export function stopped(solid: Solid, angle: Radians, offset: Mm, stop: Stop): Solid {
  const own = ownFrame(angle, offset, stop);
  const even = stop.cut.filter(isConvex);
  const enter = (x: Mm, y: Mm, above = Number.NEGATIVE_INFINITY): WallEntry | undefined => {
    const side = solid.enter(x, y);
    if (!side || side.z <= above) return undefined;
    const line: LineDown = {
      standing: (z) => overFaceAt(stop.cut, own.place(x, y, z)),
      under: (z, among = even) => awayUnder(among, own.place(x, y, z)),
    };
    const [a, b, c] = own.place(x, y, side.z);
    if (standsAbove(stop.cut, [a, b, c + TOUCH])) return side;
    const under = line.under(side.z);
    // A straight header is its own image through its work point.
    const leaves = -(solid.enter(-x, 2 * offset - y)?.z ?? -side.z);
    if (line.under(Math.max(leaves, above), under).length > 0) return undefined;
    const found = firstBelow(line, side.z, leaves, above);
    if (found === undefined) return undefined;
    const { z, before } = found;
    const here = line.standing(z);
    const step = before && stepBetween(stop.cut, before, here);
    const [nx, ny, nz] = own.back(step ?? here.face.normal);
    // A step is entered from the side, whichever way it is told.
    const sign = nz < 0 ? -1 : 1;
    const patch = step ? STEP_FACE : END_FACE + (here.face.patch % (STEP_FACE - END_FACE));
    return { z, nx: sign * nx, ny: sign * ny, nz: sign * nz, patch };
  };
  return {
    ...solid,
    enter,
    deepest: (x, y) => solid.enter(x, y)?.z,
    convex: stop.cut.every(({ mitred }) => mitred),
    crests: (x0, y0, x1, y1) => crestsOf(solid, enter, x0, y0, x1, y1),
    distance: (x, y, z) => {
      const { above } = overFaceAt(stop.cut, own.place(x, y, z));
      return Math.max(solid.distance(x, y, z), -above * own.squareTo);
    },
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
