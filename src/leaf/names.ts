import type { EndName } from '../job/job.ts';
import type { Length, Mm } from '../measure/units.ts';
import { bothUnits, inchFraction, millimetres } from '../measure/write.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import { spelled } from './letters.ts';

/** Which end of which tube, in the words that are printed. */
export interface Names {
  readonly tube: string;
  readonly end: EndName;
  readonly other: EndName;
  readonly hand: 'as drawn' | 'opposite hand';
  /** Only where there is an opposite hand too is this one named. */
  readonly paired: boolean;
  readonly copies: number;
  /** What the leaf is for, where it is not to cut by. */
  readonly use?: string;
}

export function namesOf({ tube, hand }: TubeSolution, end: EndName): Names {
  return {
    tube: spelled(tube.name),
    end,
    other: end === 'A' ? 'B' : 'A',
    hand: hand === 'opposite' ? 'opposite hand' : 'as drawn',
    paired: tube.pair,
    copies: tube.copies,
  };
}

/** `bunk stay, end A, opposite hand`. */
export function titleOf({ tube, end, hand }: Names): string {
  return `${tube}, end ${end}${hand === 'opposite hand' ? ', opposite hand' : ''}`;
}

/** A computed length in the job's unit and the other: `512.3 mm (~20-5/32 in)`. */
export function inBoth(mm: Mm, units: 'mm' | 'in'): string {
  if (units === 'mm') return `${millimetres(mm)} mm (${inchFraction(mm)} in)`;
  return `${inchFraction(mm)} in (${millimetres(mm)} mm)`;
}

/** A length as the person wrote it, and in the other unit, in signs that the font has. */
export function wrote(length: Length): string {
  return spelled(bothUnits(length));
}
