import type { Joint } from '../../src/saddle/joint.ts';
import type { Line } from '../../src/saddle/line.ts';
import { squareLine, wallLine } from '../../src/saddle/lines.ts';
import { lying } from '../../src/space/landing.ts';
import { roundHeader } from '../../src/space/round.ts';
import { roundSection } from '../../src/space/sections/round.ts';
import type { RandomJoint } from './random-joints.ts';

/** The program's own joint for one of the random ones, or for one of a table. */
export function jointUnderTest({ tube, header, angle, clock, offset }: RandomJoint): Joint {
  const solid = roundHeader(header, angle, offset);
  return {
    section: roundSection(tube),
    landings: [{ solid, ...lying(angle, clock, offset, 0), mitred: false, stops: false }],
  };
}

/** The program's three lines of one end. */
export function linesUnderTest(ask: RandomJoint): { outside: Line; inside: Line; square: Line } {
  const joint = jointUnderTest(ask);
  return {
    outside: wallLine(joint, 0),
    inside: wallLine(joint, ask.wall),
    square: squareLine(joint, ask.wall),
  };
}

/** A joint of a table: radii and offset in mm, angle and clock in degrees. */
export function tableJoint(
  header: number,
  tube: number,
  angle: number,
  offset = 0,
  clock = 0,
  wall = 0,
): RandomJoint {
  const radian = Math.PI / 180;
  return { header, tube, wall, angle: angle * radian, clock: clock * radian, offset };
}
