import { inBoth } from '../leaf/names.ts';
import { MM_PER_INCH, type Mm } from '../measure/units.ts';

/** What a tape is read to at the saw: half a millimetre, or a 32nd of an inch. */
const STEP = { mm: 0.5, in: MM_PER_INCH / 32 } as const;

/** A length this little over a mark is on it: what rounding leaves. */
const ON_THE_MARK = 1e-6;

/** A blank as it is cut: up to the next mark of the tape, never short of it. */
export function sawLength(mm: Mm, units: 'mm' | 'in'): Mm {
  return Math.ceil((mm - ON_THE_MARK) / STEP[units]) * STEP[units];
}

/** The same in words: `432 mm (~17 in)`. */
export function sawWords(mm: Mm, units: 'mm' | 'in'): string {
  return inBoth(sawLength(mm, units), units);
}
