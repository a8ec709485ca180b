import type { Tube } from '../job/job.ts';
import type { Mm, Radians } from '../measure/units.ts';
import type { Cope } from '../saddle/cope.ts';
import { contactShare, missedBy } from './contact.ts';
import { type Dihedrals, dihedralsOf } from './dihedrals.ts';
import { type Gap, gapOf } from './gap.ts';
import { offsetOpens, type Sensitivity, sensitivityOf } from './sensitivity.ts';
import { standOffOf } from './stand-off.ts';

/**
 * What follows from one coped end as asked: how it fits, and what would spoil it. Angles in radians, lengths in mm. What a slip opens
 * takes most of the work, and is found when it is first asked for: no warning needs it.
 */
export interface EndReport {
  readonly cope: Cope;
  /** How much of the tube's way round touches, from 0 to 1. */
  readonly contact: number;
  /** Where part of it passes beside the header: how far, where that is one number. */
  readonly missed?: { readonly past: Mm | undefined };
  readonly gap: Gap;
  readonly sensitivity: Sensitivity;
  /** The same for an error of offset of so many mm. */
  offsetOpens(step: Mm): Mm;
  readonly standOff?: Mm;
  readonly dihedrals?: Dihedrals;
}

export function reportEnd(tube: Tube, cope: Cope): EndReport {
  const wall = tube.wall?.mm ?? 0;
  const missed = missedBy(tube.section, cope);
  const gap = gapOf(cope, wall);
  const standOff = standOffOf(cope);
  const dihedrals = dihedralsOf(cope);
  let sensitivity: Sensitivity | undefined;
  return {
    cope,
    get contact() {
      return contactShare(cope);
    },
    ...(missed && { missed }),
    gap,
    get sensitivity() {
      sensitivity ??= sensitivityOf(cope, tube.section, wall, gap.mm);
      return sensitivity;
    },
    offsetOpens: (step) => offsetOpens(cope, tube.section, wall, gap.mm, step),
    ...(standOff !== undefined && { standOff }),
    ...(dihedrals && { dihedrals }),
  };
}

/** The acute angle between two axes that cross at this angle. */
export function acuteOf(angle: Radians): Radians {
  return Math.min(angle, Math.PI - angle);
}
