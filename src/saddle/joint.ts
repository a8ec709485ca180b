import type { CopedEnd, Part, Section as SectionAsk } from '../job/job.ts';
import type { Mm, Radians } from '../measure/units.ts';
import { exactCosine, roundHeader } from '../space/round.ts';
import { roundSection, type Section } from '../space/section.ts';
import type { Solid } from '../space/solid.ts';

/** The geometry of one end: the tube's section and all it lands on, each header in its own frame. */
export interface Joint {
  readonly section: Section;
  readonly landings: readonly [Landing, ...Landing[]];
}

/** One header as the end meets it: turned to its clock. Both ends of a tube use the same formulae. */
export interface Landing {
  readonly solid: Solid;
  readonly cosClock: number;
  readonly sinClock: number;
  /** The plane to which a missed line is trimmed climbs this much per mm of x: cot(angle). */
  readonly trimClimb: number;
  /** The header's axis, from the tube's axis, along y. */
  readonly offset: Mm;
}

export function jointOf(section: SectionAsk, end: CopedEnd): Joint {
  const [first, ...others] = end.parts;
  return { section: sectionOf(section), landings: [landingOf(first), ...others.map(landingOf)] };
}

export function sectionOf(section: SectionAsk): Section {
  return roundSection(section.od.mm / 2);
}

function landingOf(part: Part): Landing {
  return roundLanding(part.onto.od.mm / 2, part.angle.rad, part.clock.rad, part.offset.mm);
}

/** A landing on a round header of this outside radius. Lengths in mm, angles in radians. */
export function roundLanding(radius: Mm, angle: Radians, clock: Radians, offset: Mm): Landing {
  return {
    solid: roundHeader(radius, angle, offset),
    cosClock: Math.cos(clock),
    sinClock: Math.sin(clock),
    trimClimb: exactCosine(angle) / Math.sin(angle),
    offset,
  };
}
