import { spelled } from '../draw/letters.ts';
import type { EndName } from '../job/job.ts';
import { sawLength } from '../measure/saw-length.ts';
import type { Length, Mm } from '../measure/units.ts';
import { bothUnits, inchFraction, millimetres } from '../measure/write.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import { mitredEnds, wholeBend } from './bend-pieces.ts';

/** Which end of which tube, in the words that are printed. */
export interface Names {
  readonly tube: string;
  readonly end: EndName;
  readonly other: EndName;
  readonly hand: 'as drawn' | 'opposite hand';
  /** Only where there is an opposite hand too is this one named. */
  readonly paired: boolean;
  /** How often its leaf is cut by. */
  readonly copies: number;
  /** What the leaf is for, where it is not to cut by. */
  readonly use?: string;
}

export function namesOf({ tube, hand }: TubeSolution, end: EndName): Names {
  const bend = wholeBend(tube);
  return {
    tube: spelled(tube.name),
    end,
    other: end === 'A' ? 'B' : 'A',
    hand: hand === 'opposite' ? 'opposite hand' : 'as drawn',
    paired: tube.pair,
    copies: tube.copies * (bend ? mitredEnds(bend) : 1),
  };
}

/** `bunk stay, end A, opposite hand`. */
export function titleOf({ tube, end, hand }: Names): string {
  return `${tube}, end ${end}${hand === 'opposite hand' ? ', opposite hand' : ''}`;
}

/** Which tube and hand a leaf belongs to. */
export function ownerOf({ tube, hand }: Names): string {
  return `${tube}, ${hand}`;
}

/** A computed length in the job's unit and the other: `512.3 mm (~20-5/32 in)`. */
export function inBoth(mm: Mm, units: 'mm' | 'in'): string {
  if (units === 'mm') return `${millimetres(mm)} mm (${inchFraction(mm)} in)`;
  return `${inchFraction(mm)} in (${millimetres(mm)} mm)`;
}

/** A blank as it is sawn, in both units: `432 mm (~17 in)`. */
export function sawWords(mm: Mm, units: 'mm' | 'in'): string {
  return inBoth(sawLength(mm, units), units);
}

/** A length as the person wrote it, and in the other unit, in signs that the font has. */
export function wrote(length: Length): string {
  return spelled(bothUnits(length));
}

/** Angles with one sign for a degree, however they were written: `62deg` becomes `62°`. */
export function degreeSigns(text: string): string {
  return text.replace(/(\d)\s*deg(?:rees?|s)?\b/g, '$1°');
}
