import type { Mm } from '../measure/units.ts';
import type { Joint } from '../saddle/joint.ts';
import type { Line } from '../saddle/line.ts';
import { wallLine } from '../saddle/lines.ts';

const STATIONS = 180;
/** Depths at which a wall is looked through, as shares of it. */
export const LAYERS = [0, 0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1];

/**
 * The stations where the wall, at one of nine depths, begins or ceases to touch what it lands on. Beside these a
 * face may stand up as narrow as it likes. None where the whole wall touches all round.
 */
export function sideLimitsOf(joint: Joint, wall: Mm): readonly number[] {
  const layers = wall === 0 ? [0] : LAYERS;
  return layers.flatMap((layer) => sideLimitsOfLine(wallLine(joint, layer * wall), joint.section.turn));
}

/** Those of the headers themselves, and of what the end is cut to in their place. */
export function allSideLimitsOf(joint: Joint, wall: Mm): readonly number[] {
  const { rooted, filled } = joint;
  return [joint, rooted, filled].flatMap((each) => (each ? sideLimitsOf(each, wall) : []));
}

/** The stations, in [0, turn), where one line begins or ceases to touch: between samples of a ring, by halving. */
export function sideLimitsOfLine(line: Line, turn: number): readonly number[] {
  const step = turn / STATIONS;
  const ring = Array.from({ length: STATIONS }, (_, i) => line(i * step).contact);
  return ring.flatMap((here, i) => {
    if (here === ring[(i + 1) % STATIONS]) return [];
    let [low, high] = [i * step, (i + 1) * step];
    while (high - low > 1e-12 * turn) {
      const middle = (low + high) / 2;
      if (line(middle).contact === here) low = middle;
      else high = middle;
    }
    return [(low + high) / 2];
  });
}
