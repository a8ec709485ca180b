import type { CopedEnd, End, Part, Preparation, Tube } from '../job/job.ts';
import type { Mm, Radians } from '../measure/units.ts';
import { wrapStation } from '../space/section.ts';
import { breaksOf } from './breaks.ts';
import { type Curve, traceCurve } from './curve.ts';
import { type Extremes, extremesOf } from './extremes.ts';
import { type FitUpMarks, fitUpOf } from './fit-up.ts';
import { type Joint, jointOf, toCut } from './joint.ts';
import type { Line } from './line.ts';
import { landLine, squareLine, wallLine } from './lines.ts';

/** One end of a tube, solved. */
export type EndSolution = Plain | Cope;

/** Cut off square, at the work point. */
export interface Plain {
  readonly kind: 'plain';
}

export interface Cope extends Extremes {
  readonly kind: 'coped';
  readonly end: CopedEnd;
  readonly joint: Joint;
  /** Where the tube's outer surface, prolonged, touches the header itself, whatever gap is meant. */
  readonly touching: Line;
  /** Where it touches the header that is larger by the root gap, as the lines that follow are taken. */
  readonly outside: Line;
  /** With a wall only: how thick it is. */
  readonly thickness?: Mm;
  /** Where its inner surface does; with a wall only. */
  readonly inside?: Line;
  /** Deep enough that a face cut square to the tube fouls nowhere; with a wall only. */
  readonly square?: Line;
  /** The line to cut to with this edge preparation and root gap. `longPoint` and `throat` are on it. */
  readonly cut: Line;
  /** The other edge of the wall, drawn dashed; with a wall only. */
  readonly other?: Line;
  /** The direction of the heel from the tube's axis, as an angle from station 0; a union has none. */
  readonly heel?: Radians;
  /** Of an end that is marked at the frame: what to lay on the marks. */
  readonly fitUp?: FitUpMarks;
}

/** Solves one end. Deterministic; throws nothing for an end that `job/` accepted. */
export function solveEnd(tube: Tube, end: End): EndSolution {
  if (end.kind === 'plain') return { kind: 'plain' };
  const joint = jointOf(tube.section, end);
  const lined = toCut(joint);
  const touching = wallLine(joint, 0);
  const outside = wallLine(lined, 0);
  const walled = tube.wall && {
    inside: wallLine(lined, tube.wall.mm),
    square: squareLine(lined, tube.wall.mm),
    thickness: tube.wall.mm,
  };
  const edges = edgesOf(joint, end.preparation, outside, walled);
  const { turn } = joint.section;
  const breaks = breaksOnCope({ end, joint, ...walled }, edges.cut);
  const extremes = extremesOf(edges.cut, turn, clockStation(joint, end), breaks, ringOf(end.preparation));
  const heel = heelOf(end.parts);
  const fitUp = fitUpOf(end, { joint, touching, ...heel });
  return {
    kind: 'coped',
    end,
    joint,
    touching,
    outside,
    ...walled,
    ...edges,
    ...extremes,
    ...heel,
    ...(fitUp && { fitUp }),
  };
}

/** A line with a land has hills too narrow for the usual ring. */
function ringOf(preparation: Preparation): number | undefined {
  return preparation.edge === 'bevel' && preparation.land ? 1440 : undefined;
}

interface Edges {
  readonly cut: Line;
  readonly other?: Line;
}

interface Walled {
  readonly inside: Line;
  readonly square: Line;
}

function edgesOf(joint: Joint, preparation: Preparation, outside: Line, walled: Walled | undefined): Edges {
  if (!walled) return { cut: outside };
  if (preparation.edge === 'bevel') {
    const cut = preparation.land ? landLine(joint, preparation.land.mm) : outside;
    return { cut, other: walled.inside };
  }
  return { cut: preparation.from === 'inside' ? walled.inside : walled.square, other: outside };
}

/** The station of the first header's clock: where a line is likely even. */
export function clockStation(joint: Joint, end: CopedEnd): number {
  return joint.section.towards(end.parts[0].clock.rad);
}

function heelOf(parts: readonly [Part, ...Part[]]): { heel?: Radians } {
  if (parts.length > 1) return {};
  const { angle, clock } = parts[0];
  const heel = angle.rad <= Math.PI / 2 ? clock.rad : clock.rad + Math.PI;
  return { heel: wrapStation(heel, 2 * Math.PI) };
}

/** Where a line may have a kink or a step: a round tube on one round header has none that shows no sign of itself. */
function breaksOnCope(
  { end, joint, thickness }: Pick<Cope, 'end' | 'joint' | 'thickness'>,
  line: Line,
): readonly number[] {
  const [first, second] = end.parts;
  if (!second && !first.stops && first.onto.kind === 'round' && joint.section.corners.length === 0) return [];
  return breaksOf(toCut(joint), line, thickness);
}

/** A line of the cope as Bézier pieces once round from this station, within 0.002 mm on a flat of `scale` mm a radian. */
export function curveOf(cope: Cope, line: Line, from: number, scale: Mm): Curve {
  const { turn } = cope.joint.section;
  const { section } = cope.joint;
  const clock = cope.end.parts[0].clock.rad;
  const breaks = breaksOnCope(cope, line);
  const quarters = [0, 1, 2, 3].map((quarter) => section.towards(clock + (quarter * Math.PI) / 2));
  return traceCurve(line, { from, turn, nodes: [...quarters, ...breaks], scale });
}
