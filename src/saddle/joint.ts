import type { CopedEnd, Part, TubeSection as SectionAsk } from '../job/job.ts';
import { headerFactsOf } from '../job/kinds.ts';
import { tubeFactsOf } from '../job/sections.ts';
import type { Mm, Radians } from '../measure/units.ts';
import { exactCosine, roundHeader } from '../space/round.ts';
import type { Section } from '../space/section.ts';
import type { Solid } from '../space/solid.ts';

/** The geometry of one end: the tube's section and all it lands on, each header in its own frame. */
export interface Joint {
  readonly section: Section;
  readonly landings: readonly [Landing, ...Landing[]];
  /** The same with headers larger by the end's root gap, on which its lines to cut are taken; none where no gap is meant. */
  readonly rooted?: Joint;
  /** The same with boxes whose corners are filled square, where the end is cut to their flats. */
  readonly filled?: Joint;
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
  /** The header's work point, from the tube's, along the tube. */
  readonly shift: Mm;
  /** Whether it is the plane of a mitre, on which another tube meets this one alike. */
  readonly mitred: boolean;
}

/** What of a direction of the section's frame points to the landing's clock: its x there. */
export function towardsClock({ cosClock, sinClock }: Landing, x: number, y: number): number {
  return x * cosClock + y * sinClock;
}

/** What of it points a quarter turn past the clock: its y there. */
export function pastClock({ cosClock, sinClock }: Landing, x: number, y: number): number {
  return y * cosClock - x * sinClock;
}

export function jointOf(section: SectionAsk, end: CopedEnd): Joint {
  const [first, ...others] = end.parts;
  const outline = tubeFactsOf(section).outline();
  const joint = (gap: Mm, toFlat = false): Joint => ({
    section: outline,
    landings: [landingOf(first, gap, toFlat), ...others.map((part) => landingOf(part, gap, toFlat))],
  });
  const root = end.root?.mm ?? 0;
  return {
    ...joint(0),
    ...(root > 0 && { rooted: joint(root) }),
    ...(end.toFlat && { filled: joint(root, true) }),
  };
}

/** What a tube is cut to: the headers, larger by the root gap where one is meant, with corners filled where they are to be. */
export function toCut(joint: Joint): Joint {
  return joint.filled ?? toMeet(joint);
}

/** What a tube would touch all round if it were held there: the headers, larger by the root gap where one is meant. */
export function toMeet(joint: Joint): Joint {
  return joint.rooted ?? joint;
}

function landingOf(part: Part, root: Mm, toFlat: boolean): Landing {
  const { solid: asIs, filled, wall } = headerFactsOf(part.onto);
  const solid = (toFlat ? filled : undefined) ?? asIs;
  const { angle, clock, offset, shift } = part;
  const lies = placed(angle.rad, clock.rad, offset.mm, shift.mm);
  return { solid: solid(angle.rad, offset.mm, root), ...lies, mitred: !wall };
}

function placed(angle: Radians, clock: Radians, offset: Mm, shift: Mm): Omit<Landing, 'solid' | 'mitred'> {
  return {
    cosClock: Math.cos(clock),
    sinClock: Math.sin(clock),
    trimClimb: exactCosine(angle) / Math.sin(angle),
    offset,
    shift,
  };
}

/** A landing on a round header of this outside radius. Lengths in mm, angles in radians. */
export function roundLanding(radius: Mm, angle: Radians, clock: Radians, offset: Mm): Landing {
  return { solid: roundHeader(radius, angle, offset), ...placed(angle, clock, offset, 0), mitred: false };
}
