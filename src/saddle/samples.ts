import type { Mm } from '../measure/units.ts';
import { goldenSectionMaximum } from '../space/golden-section.ts';
import { pastClock } from '../space/landing.ts';
import { wrapStation } from '../space/section.ts';
import type { Joint } from './joint.ts';
import { meetAt } from './lines.ts';

const LOOKS = 240;

/** Where to look for what lines at these depths meet: a ring, and wherever something could hide between two stations of it. */
export function samplesOf(joint: Joint, depths: readonly Mm[]): readonly number[] {
  const { turn } = joint.section;
  const ring = Array.from({ length: LOOKS }, (_, i) => (i * turn) / LOOKS);
  const hidden = depths.flatMap((depth) => showingsOf(joint, depth)).flatMap((show) => topsOf(show, turn));
  return [...ring, ...hidden.map((station) => wrapStation(station, turn))].sort((a, b) => a - b);
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
    return isTop ? [goldenSectionMaximum(height, (i - 1) * step, (i + 1) * step)] : [];
  });
}
