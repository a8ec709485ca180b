import type { Mm } from '../measure/units.ts';
import { pastClock, towardsClock } from '../space/landing.ts';
import { placeWithin, wrapStation } from '../space/section.ts';
import { type Break, changesBetween } from './breaks.ts';
import type { Joint } from './joint.ts';
import { meetAt } from './lines.ts';
import { samplesOf } from './samples.ts';

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
  const { turn, cornersAt } = joint.section;
  const breaks = [
    ...edgesOf(joint, depth),
    ...[...cornersAt(depth), ...sidesOf(joint)].map((at) => ({
      before: at - SAME_STATION * turn,
      after: at + SAME_STATION * turn,
    })),
  ].sort((a, b) => a.before - b.before);
  const starts = [0, ...breaks.map(({ after }) => after)];
  const ends = [...breaks.map(({ before }) => before), turn];
  return starts.map((from, i) => ({ from, to: ends[i] ?? turn })).filter(({ from, to }) => to > from);
}

/** Beside a break whose place is known, of a whole turn: more than the station's last bits. */
const SAME_STATION = 1e-12;

/** Where the tube is widest, seen along each header: of a round tube a quarter turn from the clock. */
function sidesOf({ section, landings }: Joint): number[] {
  return landings.flatMap(({ cosClock, sinClock }) =>
    [-1, 1].map((side) =>
      wrapStation(section.towards(Math.atan2(sinClock, cosClock) + (side * Math.PI) / 2), section.turn),
    ),
  );
}

/** Where the line meets something else: between neighbours of a ring of looks, found to the last bit. */
function edgesOf(joint: Joint, depth: Mm): readonly Break[] {
  return changesBetween(
    (station) => metBy(joint, station, depth),
    samplesOf(joint, [depth]),
    joint.section.turn,
  );
}

/** The region, told apart from where the line but touches that header, as near as counts: there it runs another way. */
function metBy(joint: Joint, station: number, depth: Mm): number {
  const { section, landings } = joint;
  const { part, region, contact } = meetAt(joint, station, depth);
  const landing = landings[part];
  if (!contact || !landing) return region;
  const { x, y } = placeWithin(section.at(station), depth);
  const entry = landing.solid.enter(towardsClock(landing, x, y), pastClock(landing, x, y));
  return entry && entry.nz > 0 ? region : region + 0.5;
}
