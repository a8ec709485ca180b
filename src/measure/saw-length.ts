import { MM_PER_INCH, type Mm } from './units.ts';

/** What a tape is read to at the saw: half a millimetre, or a 32nd of an inch. */
const STEP = { mm: 0.5, in: MM_PER_INCH / 32 } as const;

/** A length this little over a mark is on it: what rounding leaves. */
const ON_THE_MARK = 1e-6;

/** A blank of so many mm as it is cut, mm, wherever it is told in words: up to the next mark of the tape, never short of it. */
export function sawLength(mm: Mm, units: 'mm' | 'in'): Mm {
  return Math.ceil((mm - ON_THE_MARK) / STEP[units]) * STEP[units];
}

/** A length of so many mm to the nearest mark of the tape, mm. */
export function tapeLength(mm: Mm, units: 'mm' | 'in'): Mm {
  return Math.round(mm / STEP[units]) * STEP[units];
}
