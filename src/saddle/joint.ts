import type { CopedEnd, TubeSection as SectionAsk } from '../job/job.ts';
import { landingOf } from '../job/landing.ts';
import { tubeFactsOf } from '../job/sections.ts';
import type { Mm } from '../measure/units.ts';
import type { Landing } from '../space/landing.ts';
import type { Section } from '../space/section.ts';

/** The geometry of one end: the tube's section and all it lands on, each header in its own frame. */
export interface Joint {
  readonly section: Section;
  readonly landings: readonly [Landing, ...Landing[]];
  /** The same with headers larger by the end's root gap, on which its lines to cut are taken; none where no gap is meant. */
  readonly rooted?: Joint;
  /** The same with boxes whose corners are filled square, where the end is cut to their flats. */
  readonly filled?: Joint;
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
