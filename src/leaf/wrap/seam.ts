import type { Mm } from '../../measure/units.ts';
import { type Cope, clockStation } from '../../saddle/cope.ts';
import { faceOf } from '../../saddle/lines.ts';
import { wrapStation } from '../../space/section.ts';

const STEPS = 72;

/** A seam keeps this far off the spine, whose name has room then, and the named places where the girth allows it, mm. */
const OFF: Mm = 6;

/** So many steps to either side of a tip or the heel, 25 degrees, stay in one piece: halves on two edges are laid on by guess. */
const WHOLE = 5;

/** A tip that stands out less than this over such a piece may be cut in two: it is hardly one, mm. */
const FLAT: Mm = 0.2;

/**
 * The station of the seam: what the job says, else where the cut is shallowest and smoothest, off the spine, well off its tips and
 * the heel, where the cut goes over to another face, and the `edges`: folds, and changes from one header to another; and off
 * the places that are named. `way` is -1 for the opposite hand, so that twins have mirrored seams.
 */
export function seamOf(cope: Cope, named: readonly number[], edges: readonly number[], way: 1 | -1): number {
  const { turn, girth } = cope.joint.section;
  const asked = cope.end.seam;
  if (asked) return wrapStation('rad' in asked ? asked.rad : asked.mm, turn);
  const deep = Math.max(cope.throat.setback - cope.longPoint.setback, 1e-6);
  const off = Math.min(OFF, girth / 16);
  const offSpine = Math.max(girth / 8, Math.min(OFF, girth / 5));
  const whole = (WHOLE * girth) / STEPS;
  const crowded = [...named, ...twins(cope, cope.throat)];
  const looks = Array.from({ length: STEPS }, (_, i) => {
    const station = wrapStation((way * i * turn) / STEPS, turn);
    return { station, ...cope.cut(station) };
  });
  const tips = [...twins(cope, cope.longPoint), ...tipsAmong(looks), ...heels(cope)];
  const isKinked = kinkedSteps(cope, Math.ceil((off * STEPS) / girth), way);
  let best = turn / 2;
  let least = Number.POSITIVE_INFINITY;
  for (const [i, { station, setback, slope }] of looks.entries()) {
    const lean = Math.min(10, Math.abs((slope * turn) / girth));
    const depth = ((setback - cope.longPoint.setback) / deep) * Math.min(1, deep / 10);
    const away = (place: number): Mm => gap(station, place, turn) * (girth / turn);
    const isNear = (place: number): boolean => away(place) < off;
    const crowd = edges.some(isNear) ? 3 : isKinked(i) ? 1 : crowded.some(isNear) ? 0.5 : 0;
    const split = 3 * Math.max(0, ...tips.map((tip) => 1 - away(tip) / whole));
    const spine = away(0) < offSpine ? 4 : 0;
    const cost = depth + lean + crowd + split + spine;
    if (cost < least - 1e-7) {
      least = cost;
      best = station;
    }
  }
  return best;
}

/** Where the cut reaches out beyond what lies to either side. */
function tipsAmong(looks: readonly { readonly station: number; readonly setback: Mm }[]): number[] {
  return looks.flatMap(({ station, setback }, i) => {
    const back = (aside: number): Mm => (looks.at((i + aside) % looks.length)?.setback ?? setback) - setback;
    const isLeast = Math.min(back(-1), back(1)) > -1e-7;
    return isLeast && Math.min(back(-WHOLE), back(WHOLE)) > FLAT ? [station] : [];
  });
}

/** The heel, of an end that has one. */
function heels({ heel, joint: { section } }: Cope): number[] {
  return heel === undefined ? [] : [wrapStation(section.towards(heel), section.turn)];
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
 * The long point or the throat, and where it would be on the other side of the clock. Of two equal ones only the
 * first is named, and which is first depends on the hand.
 */
function twins({ end, joint }: Cope, { station }: Cope['longPoint']): number[] {
  return [station, wrapStation(2 * clockStation(joint, end) - station, joint.section.turn)];
}

/** The shorter way round between two stations. */
export function gap(a: number, b: number, turn: number): number {
  const way = wrapStation(a - b, turn);
  return Math.min(way, turn - way);
}
