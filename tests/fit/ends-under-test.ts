import { type EndReport, reportEnd } from '../../src/fit/end-report.ts';
import { reportTube, type TubeReport } from '../../src/fit/report.ts';
import type { CopedEnd, EndName, Ends, Part, Preparation, Tube } from '../../src/job/job.ts';
import type { Angle, Length } from '../../src/measure/units.ts';
import { type Cope, solveEnd } from '../../src/saddle/cope.ts';
import { solveTube } from '../../src/saddle/solve.ts';
import { ENGLISH } from '../../src/words/english.ts';
import type { RandomJoint } from '../outside/random-joints.ts';

/** A joint by diameters, as a person measures them: mm and degrees. */
export interface Ask {
  readonly od: number;
  readonly wall: number;
  readonly onto: number;
  readonly angle: number;
  readonly clock?: number;
  readonly offset?: number;
}

export const BEVEL: Preparation = { edge: 'bevel' };
export const SQUARE: Preparation = { edge: 'square', from: 'outside' };
export const FROM_INSIDE: Preparation = { edge: 'square', from: 'inside' };

export function withLand(mm: number): Preparation {
  return { edge: 'bevel', land: length(mm) };
}

/** The same joint with diameters and degrees. */
export function askOf(joint: RandomJoint): Ask {
  const degrees = 180 / Math.PI;
  return {
    od: 2 * joint.tube,
    wall: joint.wall,
    onto: 2 * joint.header,
    angle: joint.angle * degrees,
    clock: joint.clock * degrees,
    offset: joint.offset,
  };
}

export function copedEnd(ask: Ask, preparation: Preparation, root = 0): CopedEnd {
  return {
    kind: 'coped',
    parts: [partOf(ask)],
    preparation,
    ...(root > 0 && { root: length(root) }),
  };
}

/** A tube with one end, at A unless told. */
export function tubeWith(ask: Ask, preparation: Preparation, end: EndName = 'A', root = 0): Tube {
  const coped = copedEnd(ask, preparation, root);
  return tubeWithEnds(ask, end === 'A' ? { A: coped } : { B: coped });
}

export function tubeWithEnds({ od, wall }: Pick<Ask, 'od' | 'wall'>, ends: Ends, between?: number): Tube {
  return {
    name: 'bunk stay',
    section: { kind: 'round', od: length(od) },
    ...(wall > 0 && { wall: length(wall) }),
    ...(between !== undefined && { between: length(between) }),
    allowance: length(10),
    pair: false,
    copies: 1,
    ends,
  };
}

/** The program's own solution of one end, and its report. */
export function endUnderTest(
  ask: Ask,
  preparation: Preparation,
  root = 0,
): { cope: Cope; report: EndReport } {
  const tube = tubeWith(ask, preparation, 'A', root);
  const cope = solveEnd(tube, copedEnd(ask, preparation, root));
  if (cope.kind === 'plain') throw new Error('a coped end was asked for');
  return { cope, report: reportEnd(tube, cope) };
}

export function reportOn(tube: Tube): TubeReport {
  return reportTube(solveTube(tube), ENGLISH);
}

/** The codes of the warnings about one end of this preparation. */
export function codesFor(ask: Ask, preparation: Preparation = BEVEL, end: EndName = 'A'): string[] {
  return codesOf(reportOn(tubeWith(ask, preparation, end)));
}

export function codesOf({ warnings }: TubeReport): string[] {
  return warnings.map(({ code }) => code);
}

function partOf({ onto, angle, clock = 0, offset = 0 }: Ask): Part {
  return {
    onto: { kind: 'round', od: length(onto) },
    angle: turn(angle),
    clock: turn(clock),
    offset: length(offset),
    shift: length(0),
  };
}

function length(mm: number): Length {
  return { mm, wrote: `${mm}`, unit: 'mm' };
}

function turn(degrees: number): Angle {
  return { rad: (degrees * Math.PI) / 180, wrote: `${degrees}`, unit: 'deg' };
}
