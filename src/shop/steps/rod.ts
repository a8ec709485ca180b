import { ROD } from '../../fit/warnings.ts';
import { inchFraction, millimetres } from '../../measure/write.ts';

/** The filler rod that a gap is tried with: `1.6 mm (1/16 in)`. */
export const ROD_IN_WORDS = `${millimetres(ROD)} mm (${inchFraction(ROD).replace('~', '')} in)`;
