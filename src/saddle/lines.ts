import type { Mm } from '../measure/units.ts';
import { entryOn, type Landing, pastClock, setbackAt, towardsClock, whatCounts } from '../space/landing.ts';
import { placeWithin, speedWithin, straightWithin, type WallPoint } from '../space/section.ts';
import { MISSED, PATCHES } from '../space/solid.ts';
import { isEndFace } from '../space/stopped.ts';
import { edgeAngleAt } from './dihedral.ts';
import { type Joint, toCut } from './joint.ts';
import type { Line, LinePoint } from './line.ts';

/** The line on which the wall, `depth` in from its outside, meets what the end lands on. */
export function wallLine(joint: Joint, depth: Mm): Line {
  return (station) => meetAt(joint, station, depth);
}

/** Where the line of the wall at this station and depth meets what the end lands on, or is trimmed beside it. */
export function meetAt({ section, landings }: Joint, station: number, depth: Mm): LinePoint {
  return meet(landings, section.at(station), depth, 0);
}

/** The line to cut to when the cut face stays square to the tube: the deepest meeting from the outside to `depth`. */
export function squareLine({ section, landings }: Joint, depth: Mm): Line {
  const line: Line = (station) => {
    const outer = section.at(station);
    const share = deepestShare(landings, outer, depth);
    const within = share * depth;
    return meet(landings, outer, within, placeOf(outer, within, depth));
  };
  return landings.some(({ stops }) => stops) ? withSeenSlope(line, section.turn) : line;
}

/** A crest may run along the edge in which a header ends, whose way through the wall no formula here follows. */
function withSeenSlope(line: Line, turn: number): Line {
  const step = 1e-7 * turn;
  return (station) => {
    const point = line(station);
    if (point.region < CREST * REGIONS) return point;
    return { ...point, slope: (line(station + step).setback - line(station - step).setback) / (2 * step) };
  };
}

/** What of the wall is met deepest, in numbers that tell regions apart. */
function placeOf(outer: WallPoint, within: Mm, depth: Mm): number {
  if (within === 0) return OUTER_EDGE;
  if (within === depth) return INNER_EDGE;
  const straight = straightWithin(outer, depth);
  return straight < depth && Math.abs(within - straight) < 1e-12 * depth ? BEND : CREST;
}

const OUTER_EDGE = 0;
const INNER_EDGE = 1;
/** Between the edges, and where the way from one to the other bends. */
const CREST = 2;
const BEND = 3;

/** How far through the wall, 0 to 1, it meets what the end lands on deepest. */
function deepestShare(landings: Joint['landings'], outer: WallPoint, depth: Mm): number {
  const shares =
    landings.length === 1
      ? sharesOn(landings[0], outer, depth)
      : landings.flatMap((landing) => sharesOn(landing, outer, depth));
  return shares.length === 1 && shares[0] !== undefined
    ? shares[0]
    : deepestOf(shares, landings, outer, depth);
}

function sharesOn(landing: Landing, outer: WallPoint, depth: Mm): readonly number[] {
  const straight = straightWithin(outer, depth);
  if (straight < depth) return sharesRoundBend(landing, outer, straight, depth);
  const { x, y, nx, ny } = outer;
  const towards = towardsClock(landing, x, y);
  const past = pastClock(landing, x, y);
  return landing.solid.crests(
    towards,
    past,
    towards - depth * towardsClock(landing, nx, ny),
    past - depth * pastClock(landing, nx, ny),
  );
}

function sharesRoundBend(landing: Landing, outer: WallPoint, straight: Mm, depth: Mm): readonly number[] {
  const bend = straight / depth;
  const outwards = straight > 0 ? crestsOn(landing, outer, 0, straight).map((share) => share * bend) : [];
  const aslant = crestsOn(landing, outer, straight, depth).map((share) => bend + share * (1 - bend));
  return [...outwards, ...aslant];
}

/** The shares of a straight way through the wall at which it may meet a header deepest. */
function crestsOn(landing: Landing, outer: WallPoint, from: Mm, to: Mm): readonly number[] {
  const [start, end] = [placeWithin(outer, from), placeWithin(outer, to)];
  return landing.solid.crests(
    towardsClock(landing, start.x, start.y),
    pastClock(landing, start.x, start.y),
    towardsClock(landing, end.x, end.y),
    pastClock(landing, end.x, end.y),
  );
}

function deepestOf(
  shares: readonly number[],
  landings: Joint['landings'],
  outer: WallPoint,
  depth: Mm,
): number {
  let deepest = Number.NEGATIVE_INFINITY;
  let best = 0;
  for (const share of shares) {
    const setback = setbackWithin(landings, outer, share * depth);
    if (setback > deepest) {
      deepest = setback;
      best = share;
    }
  }
  return best;
}

/** An end has fewer headers than this: a list of a job has 2,000 entries at most. */
const PARTS = 2048;

/** Regions of one place in the wall. The most that is made of them, for a land, is under 2^51, and so exact. */
const REGIONS = PATCHES * PARTS;

/**
 * The outside line with its feather taken off by `land`: the square line of the outermost `land` of the wall where
 * the wall stands thinner than 45 degrees, faded to the outside line by 60 degrees.
 */
export function landLine(joint: Joint, land: Mm): Line {
  const outside = wallLine(toCut(joint), 0);
  const squared = squareLine(toCut(joint), land);
  const shareAt = (station: number): number => landShare(edgeAngleAt(joint, station));
  return (station) => {
    const plain = outside(station);
    const share = shareAt(station);
    if (share === 0) return plain;
    const full = squared(station);
    const more = full.setback - plain.setback;
    const shareRate = (shareAt(station + SLOPE_STEP) - shareAt(station - SLOPE_STEP)) / (2 * SLOPE_STEP);
    return {
      setback: plain.setback + share * more,
      slope: plain.slope + share * (full.slope - plain.slope) + shareRate * more,
      contact: plain.contact,
      part: plain.part,
      // The fade begins and ends at edges of its own.
      region: plain.region + REGIONS * (full.region + 1) * (share < 1 ? 1 : REGIONS),
    };
  };
}

const SLOPE_STEP = 1e-8;
const LAND_WHOLLY = Math.PI / 4;
const NO_LAND = Math.PI / 3;

function landShare(thinness: number): number {
  const t = Math.min(1, Math.max(0, (NO_LAND - thinness) / (NO_LAND - LAND_WHOLLY)));
  return t * t * (3 - 2 * t);
}

/** The setback of `meet` alone, without the rest of the point: the square line compares several. */
function setbackWithin(landings: Joint['landings'], outer: WallPoint, depth: Mm): Mm {
  const { x, y } = placeWithin(outer, depth);
  return setbackAt(landings, x, y);
}

/**
 * Where the wall line `depth` below a point of the outside ends: at the deepest header touched; only where none is
 * touched, at the deepest plane to which a missed line is trimmed.
 */
function meet(landings: Joint['landings'], outer: WallPoint, depth: Mm, place: number): LinePoint {
  const meetPart = (landing: Landing, part: number, floor?: Mm): LinePoint =>
    meetOne({ landing, part, floor }, outer, depth, place);
  return whatCounts(landings, placeWithin(outer, depth), meetPart) ?? meetPart(landings[0], 0);
}

interface PartMet {
  readonly landing: Landing;
  readonly part: number;
  /** What is met no deeper does not count. */
  readonly floor?: Mm | undefined;
}

function meetOne({ landing, part, floor }: PartMet, outer: WallPoint, depth: Mm, place: number): LinePoint {
  const { trimClimb, shift } = landing;
  const { nx, ny, run } = outer;
  const within = placeWithin(outer, depth);
  const x = towardsClock(landing, within.x, within.y);
  const speed = straightWithin(outer, depth) < depth && place !== BEND ? 0 : speedWithin(run, depth);
  let dx = speed * towardsClock(landing, -ny, nx);
  let dy = speed * pastClock(landing, -ny, nx);
  if (place >= CREST) {
    const inwards = place === CREST ? alongEdge(landing, outer, dy) : alongBend(outer);
    dx -= inwards * towardsClock(landing, nx, ny);
    dy -= inwards * pastClock(landing, nx, ny);
  }
  const entry = entryOn(landing, within.x, within.y, floor);
  return {
    setback: (entry ? entry.z : x * trimClimb) + shift,
    // A line that only just touches runs along the trim plane.
    slope: entry && entry.nz > 0 ? -(entry.nx * dx + entry.ny * dy) / entry.nz : dx * trimClimb,
    contact: entry !== undefined,
    part,
    region: place * REGIONS + part * PATCHES + (entry ? entry.patch : MISSED),
  };
}

/** Whether a point of a line lies on the face in which a header ends. */
export function onEndFace({ region }: Pick<LinePoint, 'region'>): boolean {
  return isEndFace(region % PATCHES);
}

/**
 * The header's face that a point of a line is on, or that header's miss: a whole number, the same for every place in the wall,
 * where `region` tells apart whether the outside, the inside or a crest between meets it.
 */
export function faceOf({ region }: Pick<LinePoint, 'region'>): number {
  return region % REGIONS;
}

/**
 * How fast a crest moves in through the wall with the station. On an edge of a straight header it stays on the edge; where
 * the header is even, going in or out changes nothing, so the same holds of every crest.
 */
function alongEdge(landing: Landing, { nx, ny }: WallPoint, beside: number): number {
  const across = pastClock(landing, nx, ny);
  return Math.abs(across) < 1e-12 ? 0 : beside / across;
}

/** The same where the way through the wall of a sharp corner bends: as far in as the point is from the next face's wall. */
function alongBend({ x, y, nx, ny, run: { bend } }: WallPoint): number {
  if (bend > 0) return 0;
  return nx === 0 ? Math.sign(x) * ny : -Math.sign(y) * nx;
}
