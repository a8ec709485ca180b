import type { Mm } from '../measure/units.ts';
import { breaksOf } from '../saddle/breaks.ts';
import type { Cope } from '../saddle/cope.ts';
import { type Joint, toCut } from '../saddle/joint.ts';
import type { Line } from '../saddle/line.ts';
import { wallLine } from '../saddle/lines.ts';
import { depthsOf, type Face } from './face.ts';

const STATIONS = 180;

/**
 * The stations where the wall, at one of these depths, begins or ceases to touch what it lands on, of the headers themselves and of
 * what the end is cut to in their place. Beside these a face may stand up as narrow as it likes. None where the whole wall touches
 * all round.
 */
export function allSideLimitsOf(joint: Joint, depths: readonly Mm[]): readonly number[] {
  const { rooted, filled } = joint;
  return [joint, rooted, filled].flatMap((each) =>
    each ? depths.flatMap((depth) => sideLimitsOfLine(wallLine(each, depth), each.section.turn)) : [],
  );
}

/**
 * Those of an end's own face; of one with a land also where its land begins and ceases, for there a face has edges, and hills
 * as narrow.
 */
export function faceSideLimits(cope: Cope, face: Face): readonly number[] {
  const limits = allSideLimitsOf(cope.joint, depthsOf(face));
  const { preparation } = cope.end;
  const land = preparation.edge === 'bevel' ? preparation.land : undefined;
  return land ? [...limits, ...breaksOf(toCut(cope.joint), cope.cut, land.mm)] : limits;
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
