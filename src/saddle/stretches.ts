import type { Mm } from '../measure/units.ts';
import { climb } from '../space/climb.ts';
import { inwards } from '../space/section.ts';
import { type Joint, pastClock, towardsClock } from './joint.ts';
import { meetAt } from './lines.ts';
import { homeStation } from './peaks.ts';

/** A stretch of a line on which one face of one header is met, or none: both its ends still lie on it. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/**
 * The line of the wall `depth` in, parted wherever it meets something else, at the tube's own corners, and at its sides, where on a header as
 * wide as the tube it has a kink: stretches in order of station, from 0 once round. Unlike the breaks of a drawn curve these
 * are exact, for a hair beyond an edge the line runs another way.
 */
export function stretchesOf(joint: Joint, depth: Mm): readonly Stretch[] {
  const { turn, corners } = joint.section;
  const breaks = [
    ...edgesOf(joint, depth),
    ...[...corners, ...sidesOf(joint)].map((at) => ({ before: at - HAIR * turn, after: at + HAIR * turn })),
  ].sort((a, b) => a.before - b.before);
  const starts = [0, ...breaks.map(({ after }) => after)];
  const ends = [...breaks.map(({ before }) => before), turn];
  return starts.map((from, i) => ({ from, to: ends[i] ?? turn })).filter(({ from, to }) => to > from);
}

/** The last station of one stretch and the first of the next. */
interface Break {
  readonly before: number;
  readonly after: number;
}

/** Beside a break whose place is known, of a whole turn: more than the station's last bits. */
const HAIR = 1e-12;

/** Where the tube is widest, seen along each header: of a round tube a quarter turn from the clock. */
function sidesOf({ section, landings }: Joint): number[] {
  return landings.flatMap(({ cosClock, sinClock }) =>
    [-1, 1].map((side) =>
      homeStation(section.towards(Math.atan2(sinClock, cosClock) + (side * Math.PI) / 2), section.turn),
    ),
  );
}

/** Where the line meets something else: between neighbours of a ring of looks, found to the last bit. */
function edgesOf(joint: Joint, depth: Mm): Break[] {
  const looks = looksOf(joint, depth);
  const met = (station: number): number => metBy(joint, station, depth);
  return looks.flatMap((from, i) => edgesBetween(met, from, looks[i + 1] ?? joint.section.turn));
}

/** The region, told apart from where the line but touches that header, as near as counts: there it runs another way. */
function metBy(joint: Joint, station: number, depth: Mm): number {
  const { section, landings } = joint;
  const { part, region, contact } = meetAt(joint, station, depth);
  const landing = landings[part];
  if (!contact || !landing) return region;
  const { x, y } = inwards(section.at(station), depth);
  const entry = landing.solid.enter(towardsClock(landing, x, y), pastClock(landing, x, y));
  return entry && entry.nz > 0 ? region : region + 0.5;
}

function edgesBetween(met: (station: number) => number, from: number, to: number): Break[] {
  const edges: Break[] = [];
  const last = met(to);
  let here = met(from);
  for (let low = from; here !== last; ) {
    let high = to;
    for (let middle = (low + high) / 2; middle > low && middle < high; middle = (low + high) / 2) {
      if (met(middle) === here) low = middle;
      else high = middle;
    }
    edges.push({ before: low, after: high });
    here = met(high);
    low = high;
  }
  return edges;
}

const LOOKS = 240;

/** Where to look for regions: a ring, and wherever one could hide between two stations of it. */
function looksOf(joint: Joint, depth: Mm): number[] {
  const { turn } = joint.section;
  const ring = Array.from({ length: LOOKS }, (_, i) => (i * turn) / LOOKS);
  const hidden = showingsOf(joint, depth).flatMap((showing) => topsOf(showing, turn));
  return [...ring, ...hidden.map((station) => homeStation(station, turn))].sort((a, b) => a - b);
}

/**
 * What has a top where a narrow region hides: the tube's reach to either side, for another face or the open beside the
 * header, and how far another header stands above what is met, as long as it does not.
 */
function showingsOf(joint: Joint, depth: Mm): Array<(station: number) => number> {
  const { section, landings } = joint;
  return landings.flatMap((landing) => {
    const reach = (station: number): number => {
      const { x, y } = section.at(station);
      return pastClock(landing, x, y);
    };
    const alone: Joint = { section, landings: [landing] };
    const above = (station: number): number => {
      const met = meetAt(joint, station, depth);
      const own = meetAt(alone, station, depth);
      return own.contact ? own.setback - met.setback : Number.NEGATIVE_INFINITY;
    };
    return [reach, (station: number) => -reach(station), ...(landings.length > 1 ? [above] : [])];
  });
}

/** The tops between stations of the ring, but for those of a plain. */
function topsOf(height: (station: number) => number, turn: number): number[] {
  const step = turn / LOOKS;
  const heights = Array.from({ length: LOOKS }, (_, i) => height(i * step));
  return heights.flatMap((here, i) => {
    const before = heights.at(i - 1) ?? here;
    const after = heights[(i + 1) % LOOKS] ?? here;
    const isTop = here >= before && here >= after && (here > before || here > after);
    return isTop ? [climb(height, (i - 1) * step, (i + 1) * step)] : [];
  });
}
