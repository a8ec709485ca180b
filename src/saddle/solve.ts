import type { Job, Tube } from '../job/job.ts';
import { mirroredTube } from '../job/opposite.ts';
import { tubeFactsOf } from '../job/sections.ts';
import { type Complaint, Refusal } from '../job/text/complaint.ts';
import { complainAt } from '../job/text/origin.ts';
import type { Mm, Radians } from '../measure/units.ts';
import { type Section, wrapStation } from '../space/section.ts';
import { asWritten } from '../words/said.ts';
import { bendCrosses } from './bend-crossing.ts';
import { type EndSolution, solveEnd } from './cope.ts';
import { type ReadLength, readLengths } from './readings.ts';
import { betweenRead, complaintsOfLengths } from './readings-told.ts';

export type Hand = 'as-drawn' | 'opposite';

/** A whole tube of one hand, solved. */
export interface TubeSolution {
  /** As asked; of the opposite hand, its mirror image. */
  readonly tube: Tube;
  readonly hand: Hand;
  /** Of a frame: the tubes that are this piece, the first of which it was solved as. */
  readonly places?: readonly Placing[];
  /** It is its own mirror image, and stands for both hands of a pair. */
  readonly bothHands?: true;
  readonly section: Section;
  readonly ends: { readonly A?: EndSolution; readonly B?: EndSolution };
  /** How its length was measured and what each way came to; none where an end is lacking or it is only marked. */
  readonly readings: readonly ReadLength[];
  /** Stated when both ends are and the length is known. */
  readonly lengths?: Lengths;
  /** From end A's heel to end B's heel, in (-pi, pi]; left out where an end has none, or its rotation is marked. */
  readonly twist?: Radians;
}

/** A tube of a frame, by its place among the job's, and how it is laid on a piece that is the same solid. */
export interface Placing {
  readonly tube: number;
  /** Its station 0 lies on this station of the piece, and where `swapped` its end A is the piece's end B. */
  readonly spineAt: number;
  readonly swapped: boolean;
}

export interface Lengths {
  /** Work point to work point. */
  readonly between: Mm;
  /** Long point to long point, on the lines to cut. */
  readonly overall: Mm;
  /** To cut off the stock: the longer of the two, and the allowance. */
  readonly blank: Mm;
  /** Throat to throat. */
  readonly throats: Mm;
  /**
   * The shortest line that is left along the tube, cut to cut. Not positive where the copes cross. Of an end whose
   * rotation is marked, as it is turned at best.
   */
  readonly shortest: Mm;
}

/**
 * Every tube of the job in its order, each opposite hand after its twin. Throws `Refusal`, with all of them, where
 * the copes of a tube's two ends cross, or a bend that it lands on crosses it again.
 */
export function solveHands(
  job: Job,
  solve: (tube: Tube) => TubeSolution = solveTube,
): readonly TubeSolution[] {
  const asDrawn = job.tubes.map((tube) => solve(tube));
  const [first, ...others] = asDrawn.flatMap((solution, place) => [
    ...complaintsOfLengths(job, solution.readings, `tubes[${place}].between`),
    ...lengthMarkMisses(job, solution, place),
    ...copesCross(job, solution, place),
    ...bendsCross(job, solution, place),
  ]);
  if (first) throw new Refusal([first, ...others]);
  return asDrawn.flatMap((solution) =>
    solution.tube.pair ? [solution, solveOpposite(solution.tube)] : [solution],
  );
}

function lengthMarkMisses(job: Job, { ends: { B } }: TubeSolution, place: number): Complaint[] {
  if (B?.kind !== 'coped' || !B.fitUp?.between || B.fitUp.lengthSetback !== undefined) return [];
  return [complainAt(job, `tubes[${place}].between`, 'mark', job.words.job.ends.lengthMarkBeside)];
}

function copesCross(job: Job, { tube, readings, lengths }: TubeSolution, place: number): Complaint[] {
  if (!lengths || lengths.shortest > 0) return [];
  if (job.frame) {
    const objection = job.words.job.frame.cutsCross(-lengths.shortest, job.units);
    const misreading = { read: asWritten(tube.name), ...objection };
    return [complainAt(job, `tubes[${place}]`, 'too-short', misreading)];
  }
  const least = Math.ceil((lengths.between - lengths.shortest) * 10 + 1) / 10;
  const read = betweenRead(readings, job.words);
  const misreading = { read, ...job.words.job.ends.cutsCross(-lengths.shortest, least, job.units) };
  return [complainAt(job, `tubes[${place}].between`, 'too-short', misreading)];
}

function bendsCross(job: Job, { ends }: TubeSolution, place: number): Complaint[] {
  return (['A', 'B'] as const).flatMap((name) => {
    const end = ends[name];
    if (end?.kind !== 'coped' || !bendCrosses(end.end, end.joint)) return [];
    const misreading = job.words.job.ends.bendCrosses(name);
    return [complainAt(job, `tubes[${place}].ends.${name}`, 'bend-crosses', misreading)];
  });
}

export function solveTube(tube: Tube, hand: Hand = 'as-drawn'): TubeSolution {
  const A = tube.ends.A && solveEnd(tube, tube.ends.A);
  const B = tube.ends.B && solveEnd(tube, tube.ends.B);
  const section = tubeFactsOf(tube.section).outline();
  const readings = A && B ? readLengths(tube, A, B, section) : [];
  const between = readings[0]?.came;
  return {
    tube,
    hand,
    section,
    ends: { ...(A && { A }), ...(B && { B }) },
    readings,
    ...(A && B && between?.ok && { lengths: lengthsOf(A, B, section, between.value, tube.allowance.mm) }),
    ...(A && B && twistOf(A, B)),
  };
}

/** The opposite hand of a tube. */
export function solveOpposite(tube: Tube): TubeSolution {
  return solveTube(mirroredTube(tube), 'opposite');
}

function lengthsOf(A: EndSolution, B: EndSolution, section: Section, between: Mm, allowance: Mm): Lengths {
  const reach = (end: EndSolution): Mm => (end.kind === 'plain' ? 0 : end.longPoint.setback);
  const depth = (end: EndSolution): Mm => (end.kind === 'plain' ? 0 : end.throat.setback);
  const overall = between - reach(A) - reach(B);
  return {
    between,
    overall,
    blank: Math.max(between, overall) + allowance,
    throats: between - depth(A) - depth(B),
    shortest: between - deepestPair(A, B, section),
  };
}

const STATIONS = 720;

/**
 * The most that the two cuts take off one line along the tube, to within what half a degree can hide; where they can
 * still be turned against each other, what they take off at least.
 */
function deepestPair(A: EndSolution, B: EndSolution, section: Section): Mm {
  if (B.kind === 'coped' && B.fitUp?.clock) {
    if (A.kind === 'plain') return B.throat.setback;
    return Math.max(A.throat.setback + B.longPoint.setback, A.longPoint.setback + B.throat.setback);
  }
  const setback = (end: EndSolution, station: number): Mm =>
    end.kind === 'plain' ? 0 : end.cut(station).setback;
  let deepest = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < STATIONS; i++) {
    const station = (i * section.turn) / STATIONS;
    deepest = Math.max(deepest, setback(A, station) + setback(B, station));
  }
  return deepest;
}

function twistOf(A: EndSolution, B: EndSolution): { twist?: Radians } {
  if (A.kind === 'plain' || B.kind === 'plain' || A.heel === undefined || B.heel === undefined) return {};
  if (B.fitUp?.clock) return {};
  const turn = wrapStation(B.heel - A.heel, 2 * Math.PI);
  return { twist: turn > Math.PI + 1e-12 ? turn - 2 * Math.PI : turn };
}
