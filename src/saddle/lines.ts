import type { Mm } from '../measure/units.ts';
import { inwards, type WallPoint } from '../space/section.ts';
import { dihedralAt } from './dihedral.ts';
import { type Joint, type Landing, pastClock, towardsClock } from './joint.ts';
import { type Line, type LinePoint, touchedOrDeeper } from './line.ts';

/** The line on which the wall, `depth` in from its outside, meets what the end lands on. */
export function wallLine(joint: Joint, depth: Mm): Line {
  return (station) => meetAt(joint, station, depth);
}

/** Where the line of the wall at this station and depth meets what the end lands on, or is trimmed beside it. */
export function meetAt({ section, landings }: Joint, station: number, depth: Mm): LinePoint {
  const outside = section.at(station);
  return meet(landings, depth === 0 ? outside : inwards(outside, depth), depth, 0);
}

/** The line to cut to when the cut face stays square to the tube: the deepest meeting from the outside to `depth`. */
export function squareLine({ section, landings }: Joint, depth: Mm): Line {
  return (station) => {
    const outer = section.at(station);
    const inner = inwards(outer, depth);
    let deepest = deeper(meet(landings, outer, 0, 0), meet(landings, inner, depth, 1));
    for (const landing of landings) {
      for (const along of crestsOf(landing, outer, inner)) {
        const within = along * depth;
        deepest = deeper(deepest, meet(landings, inwards(outer, within), within, 2));
      }
    }
    return deepest;
  };
}

function deeper(first: LinePoint, second: LinePoint): LinePoint {
  return second.setback > first.setback ? second : first;
}

/** Regions of one place in the wall: the outside, the inside, a crest between. */
const REGIONS = 1024;

function crestsOf(landing: Landing, outer: WallPoint, inner: WallPoint): readonly number[] {
  return landing.solid.crests(
    towardsClock(landing, outer.x, outer.y),
    pastClock(landing, outer.x, outer.y),
    towardsClock(landing, inner.x, inner.y),
    pastClock(landing, inner.x, inner.y),
  );
}

/**
 * The outside line with its feather taken off by `land`: the square line of the outermost `land` of the wall where
 * the wall stands thinner than 45 degrees, faded to the outside line by 60 degrees.
 */
export function bluntLine(joint: Joint, land: Mm): Line {
  const outside = wallLine(joint, 0);
  const squared = squareLine(joint, land);
  const shareAt = (station: number): number => bluntShare(Math.PI - dihedralAt(joint, station));
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
      depth: full.depth * share,
    };
  };
}

const SLOPE_STEP = 1e-8;
const BLUNT_WHOLLY = Math.PI / 4;
const BLUNT_NOT = Math.PI / 3;

function bluntShare(thinness: number): number {
  const t = Math.min(1, Math.max(0, (BLUNT_NOT - thinness) / (BLUNT_NOT - BLUNT_WHOLLY)));
  return t * t * (3 - 2 * t);
}

/** The deepest header touched; only where none is touched, the deepest plane to which a missed line is trimmed. */
function meet(landings: Joint['landings'], wall: WallPoint, depth: Mm, place: number): LinePoint {
  let met = meetOne(landings[0], 0, wall, depth, place);
  for (let part = 1; part < landings.length; part++) {
    const landing = landings[part];
    if (landing) met = touchedOrDeeper(met, meetOne(landing, part, wall, depth, place));
  }
  return met;
}

function meetOne(landing: Landing, part: number, wall: WallPoint, depth: Mm, place: number): LinePoint {
  const { trimClimb, shift } = landing;
  const x = towardsClock(landing, wall.x, wall.y);
  const y = pastClock(landing, wall.x, wall.y);
  const dx = towardsClock(landing, wall.dx, wall.dy);
  const entry = landing.solid.enter(x, y);
  if (!entry) {
    const region = place * REGIONS + part * PATCHES + PATCHES - 1;
    return { setback: x * trimClimb + shift, slope: dx * trimClimb, contact: false, part, region, depth };
  }
  const dy = pastClock(landing, wall.dx, wall.dy);
  const { nx, ny, nz } = entry;
  const region = place * REGIONS + part * PATCHES + entry.patch;
  // A line that only just touches runs along the trim plane.
  const slope = nz > 0 ? -(nx * dx + ny * dy) / nz : dx * trimClimb;
  return { setback: entry.z + shift, slope, contact: true, part, region, depth };
}

/** A header has fewer patches than this, missing it counted as one. */
const PATCHES = 32;
