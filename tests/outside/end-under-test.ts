import type { CopedEnd, Header, Part, Tube, TubeSection } from '../../src/job/job.ts';
import type { Angle, Length } from '../../src/measure/units.ts';
import { type Cope, solveEnd } from '../../src/saddle/cope.ts';
import { type Joint, jointOf } from '../../src/saddle/joint.ts';
import type { Line } from '../../src/saddle/line.ts';
import { squareLine, wallLine } from '../../src/saddle/lines.ts';
import type { AskedEnd, AskedHeader, AskedPart, AskedTube } from './asked-end.ts';

export interface EndUnderTest {
  readonly joint: Joint;
  readonly outside: Line;
  readonly inside: Line;
  readonly square: Line;
}

/** The program's own lines for an end. */
export function endUnderTest(ask: AskedEnd): EndUnderTest {
  const joint = jointOf(sectionOf(ask.tube), copedEndOf(ask));
  return {
    joint,
    outside: wallLine(joint, 0),
    inside: wallLine(joint, ask.wall),
    square: squareLine(joint, ask.wall),
  };
}

/** The same end solved as the program does it for a tube. */
export function copeUnderTest(
  ask: AskedEnd,
  ways: Partial<Pick<CopedEnd, 'preparation' | 'root'>> = {},
): Cope {
  const end: CopedEnd = { ...copedEndOf(ask), ...ways };
  const tube: Tube = {
    name: 'drawn at random',
    section: sectionOf(ask.tube),
    wall: length(ask.wall),
    allowance: length(10),
    pair: false,
    copies: 1,
    ends: { A: end },
  };
  const cope = solveEnd(tube, end);
  if (cope.kind !== 'coped') throw new Error('the end was asked to be coped');
  return cope;
}

function copedEndOf({ parts: [first, ...others] }: AskedEnd): CopedEnd {
  return { kind: 'coped', parts: [partOf(first), ...others.map(partOf)], preparation: { edge: 'bevel' } };
}

function partOf({ header, angle: theta, clock, offset, shift }: AskedPart): Part {
  return {
    onto: headerOf(header),
    angle: angle(theta),
    clock: angle(clock),
    offset: length(offset),
    shift: length(shift),
  };
}

function headerOf(header: AskedHeader): Header {
  switch (header.kind) {
    case 'round':
      return { kind: 'round', od: length(2 * header.radius) };
    case 'plate':
      return { kind: 'plate' };
    case 'mitre':
      return { kind: 'mitre', turn: angle(header.turn) };
    case 'box': {
      const { wide, deep, corner, roll } = header;
      const [w, d, c] = [length(wide), length(deep), length(corner)];
      return { kind: 'box', wide: w, deep: d, corner: c, roll: angle(roll) };
    }
    case 'bend': {
      const od = length(2 * header.radius);
      return { kind: 'bend', od, radius: length(header.bendRadius), centre: angle(header.centre) };
    }
  }
}

function sectionOf(tube: AskedTube): TubeSection {
  if (tube.kind === 'round') return { kind: 'round', od: length(2 * tube.radius) };
  const { wide, deep, corner } = tube;
  return { kind: 'rectangular', wide: length(wide), deep: length(deep), corner: length(corner) };
}

export function length(mm: number): Length {
  return { mm, wrote: `${mm} mm`, unit: 'mm' };
}

function angle(rad: number): Angle {
  return { rad, wrote: `${rad} rad`, unit: 'rad' };
}
