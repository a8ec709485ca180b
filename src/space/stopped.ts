import type { Mm, Radians } from '../measure/units.ts';
import { type Landing, type Met, pastClock, towardsClock, whatCounts } from './landing.ts';
import { exactCosine } from './round.ts';
import { MISSED, PATCHES, type Solid, type WallEntry } from './solid.ts';
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
  const evenOnes = stop.cut.filter(isConvex);
  const standing = (x: Mm, y: Mm, z: Mm): Standing => {
    const [a, b, c] = own.place(x, y, z);
    const face = endFaceAt(stop.cut, a, b);
    return { above: c - face.setback, face, a, b };
  };
  const away = (x: Mm, y: Mm, z: Mm): readonly boolean[] => awayUnder(evenOnes, own.place(x, y, z));
  const enter = (x: Mm, y: Mm): WallEntry | undefined => {
    const side = solid.enter(x, y);
    if (!side) return undefined;
    const under = away(x, y, side.z);
    const isAway = under.some(Boolean);
    if (!isAway && standing(x, y, side.z).above >= 0) return side;
    // A straight header is its own image through its work point.
    const leaves = -(solid.enter(-x, 2 * offset - y)?.z ?? -side.z);
    if (isAway && away(x, y, leaves).some((each, i) => each && under[i])) return undefined;
    const found = firstBelow((at) => standing(x, y, at), side.z, leaves);
    if (found === undefined) return undefined;
    const { z, above } = found;
    const { face } = standing(x, y, z);
    const step =
      above === undefined ? undefined : stepBetween(stop.cut, standing(x, y, above), standing(x, y, z));
    const [nx, ny, nz] = own.back(step ?? face.normal);
    // A step is entered from the side, whichever way it is told.
    const sign = nz < 0 ? -1 : 1;
    const patch = step ? STEP_FACE : END_FACE + (face.patch % (STEP_FACE - END_FACE));
    return { z, nx: sign * nx, ny: sign * ny, nz: sign * nz, patch };
  };
  return {
    ...solid,
    enter,
    deepest: (x, y) => solid.enter(x, y)?.z,
    convex: stop.cut.every(({ mitred }) => mitred),
    crests: (x0, y0, x1, y1) => crestsOf(solid, enter, x0, y0, x1, y1),
    distance: (x, y, z) => Math.max(solid.distance(x, y, z), -standing(x, y, z).above * own.squareTo),
  };
}

/** The headers that an end was cut to are convex, and so is one that stops where all that it was cut to are planes. */
function isConvex({ solid }: Landing): boolean {
  return !solid.deepest || solid.convex === true;
}

/** Under which of these, each convex, a place was cut away: of two such places all between them was. */
function awayUnder(landings: readonly Landing[], [a, b, c]: Vector): readonly boolean[] {
  return landings.map((landing) => {
    const entry = landing.solid.enter(towardsClock(landing, a, b), pastClock(landing, a, b));
    return entry !== undefined && c < entry.z + landing.shift;
  });
}

/** How far above the face in which the header ends a place stands, on the header's body side, and what that face is there. */
interface Standing {
  readonly above: Mm;
  readonly face: EndFace;
  /** The line along the header on which that is. */
  readonly a: Mm;
  readonly b: Mm;
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

/** The face in which a header ends, on one line along it: the other side of what the header was cut to. */
interface EndFace extends Met {
  readonly normal: Vector;
  /** Where it changes the face has an edge or a step. */
  readonly patch: number;
}

const SQUARE_OFF: EndFace = { contact: false, setback: 0, normal: [0, 0, -1], patch: 0 };

function endFaceAt(cut: readonly Landing[], x: Mm, y: Mm): EndFace {
  return whatCounts(cut, { x, y }, (landing, part) => faceOn(landing, part, x, y)) ?? SQUARE_OFF;
}

/** Which way a step of the end face looks: across the side of the header beside which it begins; undefined at an edge. */
function stepBetween(cut: readonly Landing[], near: Standing, far: Standing): Vector | undefined {
  const touches = (landing: Landing, { a, b }: Standing): boolean =>
    landing.solid.enter(towardsClock(landing, a, b), pastClock(landing, a, b)) !== undefined;
  const side = cut.find((landing) => touches(landing, near) !== touches(landing, far));
  return side && [-side.sinClock, side.cosClock, 0];
}

function faceOn(landing: Landing, part: number, a: Mm, b: Mm): EndFace {
  const { solid, cosClock, sinClock, trimClimb, shift } = landing;
  const x = towardsClock(landing, a, b);
  const entry = solid.enter(x, pastClock(landing, a, b));
  const steep = Math.hypot(1, trimClimb);
  const { nx, ny, nz, z, patch } = entry ?? {
    nx: -trimClimb / steep,
    ny: 0,
    nz: 1 / steep,
    z: x * trimClimb,
    patch: MISSED,
  };
  const normal: Vector = [ny * sinClock - nx * cosClock, -nx * sinClock - ny * cosClock, -nz];
  return { contact: entry !== undefined, setback: z + shift, normal, patch: PATCHES * part + patch };
}

/** Where the header stands first and, where that is beyond a step of its end face, the last place before the step. */
interface Found {
  readonly z: Mm;
  readonly above?: Mm;
}

const LOOKS = 16;

/**
 * The first place on the way down from `top`, where nothing stands, to `bottom` at which the header stands: undefined where it
 * nowhere does. Its end face has edges and steps, beside which what stands may be as thin as it likes, and these are found first.
 */
function firstBelow(standing: (z: Mm) => Standing, top: Mm, bottom: Mm): Found | undefined {
  let [from, before] = [top, standing(top)];
  for (let look = 1; look <= LOOKS; look++) {
    const to = top + ((bottom - top) * look) / LOOKS;
    const after = standing(to);
    for (let edge = 0; edge < LOOKS && before.face.patch !== after.face.patch; edge++) {
      const [near, far] = edgeBetween(standing, from, to, before.face.patch);
      if (standing(near).above >= 0) return { z: rootBetween(standing, from, near) };
      [from, before] = [far, standing(far)];
      if (before.above >= 0) return { z: far, above: near };
    }
    if (after.above >= 0) return { z: rootBetween(standing, from, to) };
    [from, before] = [to, after];
  }
  return undefined;
}

/** Where the end face goes over to another patch: the last place on this one and the first beyond. */
function edgeBetween(
  standing: (z: Mm) => Standing,
  from: Mm,
  to: Mm,
  patch: number,
): readonly [near: Mm, far: Mm] {
  let [near, far] = [from, to];
  while (Math.abs(far - near) > SHARP) {
    const middle = (near + far) / 2;
    // A line that runs all but along the header is so long that numbers lie farther apart than that.
    if (middle === near || middle === far) break;
    if (standing(middle).face.patch === patch) near = middle;
    else far = middle;
  }
  return [near, far];
}

const SHARP: Mm = 1e-11;

/** Regula falsi (Illinois), which is done at once where the face is a plane. */
function rootBetween(standing: (z: Mm) => Standing, from: Mm, to: Mm): Mm {
  let [low, high] = [from, to];
  let [atLow, atHigh] = [standing(low).above, standing(high).above];
  for (let round = 0; round < 100 && Math.abs(high - low) > SHARP; round++) {
    const at = low + ((high - low) * atLow) / (atLow - atHigh);
    const here = standing(at).above;
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
