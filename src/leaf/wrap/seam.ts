import type { Mm } from '../../measure/units.ts';
import { type Cope, clockStation } from '../../saddle/cope.ts';
import { faceOf } from '../../saddle/lines.ts';
import { wrapStation } from '../../space/section.ts';

const STEPS = 72;

/** A seam keeps this far off the spine, whose name has room then, and the named places where the girth allows it, mm. */
const OFF: Mm = 6;

/**
 * The station of the seam: what the job says, else where the cut is shallowest and smoothest, off the spine and off
 * the places that are named and where the cut goes over to another face, and well off the `edges`: folds, and changes from
 * one header to another. `way` is -1 for the opposite hand, so that twins have mirrored seams.
 */
export function seamOf(cope: Cope, named: readonly number[], edges: readonly number[], way: 1 | -1): number {
  const { turn, girth } = cope.joint.section;
  const asked = cope.end.seam;
  if (asked) return wrapStation('rad' in asked ? asked.rad : asked.mm, turn);
  const deep = Math.max(cope.throat.setback - cope.longPoint.setback, 1e-6);
  const off = Math.min(OFF, girth / 16);
  const offSpine = Math.max(girth / 8, Math.min(OFF, girth / 5));
  const crowded = [...named, ...twins(cope, turn)];
  const isKinked = kinkedSteps(cope, Math.ceil((off * STEPS) / girth), way);
  let best = turn / 2;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < STEPS; i++) {
    const station = way === 1 ? (i * turn) / STEPS : turn - (i * turn) / STEPS;
    const { setback, slope } = cope.cut(station);
    const lean = Math.min(10, Math.abs((slope * turn) / girth));
    const depth = ((setback - cope.longPoint.setback) / deep) * Math.min(1, deep / 10);
    const isNear = (place: number): boolean => gap(station, place, turn) * (girth / turn) < off;
    const crowd = edges.some(isNear) ? 3 : isKinked(i) || crowded.some(isNear) ? 0.5 : 0;
    const spine = gap(station, 0, turn) * (girth / turn) < offSpine ? 4 : 0;
    const cost = depth + lean + crowd + spine;
    if (cost < least - 1e-7) {
      least = cost;
      best = station;
    }
  }
  return best;
}

/** Whether the cut goes over to another face within so many steps of one. */
function kinkedSteps(cope: Cope, aside: number, way: 1 | -1): (step: number) => boolean {
  const { turn } = cope.joint.section;
  // Between the steps, off their middles too: there the edges of a joint that is set out in round numbers are not.
  const faces = Array.from({ length: STEPS }, (_, i) =>
    faceOf(cope.cut(wrapStation((way * (i + 0.37) * turn) / STEPS, turn))),
  );
  return (step) => {
    const near = Array.from({ length: 2 * aside }, (_, k) => faces[(step - aside + k + STEPS) % STEPS]);
    return near.some((face) => face !== near[0]);
  };
}

/**
 * The long point and the throat, and where they would be on the other side of the clock. Of two equal ones only the
 * first is named, and which is first depends on the hand.
 */
function twins({ end, joint, longPoint, throat }: Cope, turn: number): number[] {
  const clock = clockStation(joint, end);
  return [longPoint, throat].flatMap(({ station }) => [station, wrapStation(2 * clock - station, turn)]);
}

/** The shorter way round between two stations. */
export function gap(a: number, b: number, turn: number): number {
  const way = wrapStation(a - b, turn);
  return Math.min(way, turn - way);
}
