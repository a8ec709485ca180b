import type { Part, TubeSection } from '../job/job.ts';
import { headerFactsOf } from '../job/kinds.ts';
import { tubeFactsOf } from '../job/sections.ts';
import type { Mm } from '../measure/units.ts';
import type { Cope } from '../saddle/cope.ts';

/** Whether part of an end passes beside its header, and how far where that is one number. */
export function missedBy(section: TubeSection, cope: Cope): { readonly past: Mm | undefined } | undefined {
  const [part, ...others] = cope.end.parts;
  const past = others.length === 0 ? pastTheSide(section, part) : undefined;
  return (past === undefined ? contactShare(cope) < 1 : past > 1e-9) ? { past } : undefined;
}

/** How far a tube that reaches as far to every side does so past a straight header; else it is no matter of one number. */
function pastTheSide(section: TubeSection, { onto, offset }: Part): Mm | undefined {
  const { radius } = tubeFactsOf(section);
  if (radius === undefined || onto.kind === 'bend') return undefined;
  return Math.abs(offset.mm) + radius - headerFactsOf(onto).across;
}

const LOOKS = 720;

/** How much of the tube's way round touches what it lands on, from 0 to 1. */
export function contactShare({ joint, touching }: Cope): number {
  const { turn } = joint.section;
  const touched = Array.from({ length: LOOKS }, (_, i) => touching((i * turn) / LOOKS).contact);
  return touched.filter((each) => each).length / LOOKS;
}
