import { type Length, MM_PER_INCH } from '../../measure/units.ts';
import { isMetric } from '../../measure/write.ts';

/** Why a sheet came out at another size than it was drawn at, and what to do about it. */
export interface Cause {
  readonly cause: string;
  readonly instead: string;
}

interface KnownScale extends Cause {
  readonly from: number;
  readonly to: number;
  /** Only where the rule was read in these. */
  readonly only?: 'metric' | 'inches';
}

const AT_FULL_SIZE = 'the sheet printed again at 100 % (actual size), and then measured';

/** What is likely where no more is known. */
export const SOME_SETTING: Cause = {
  cause: 'a scale is set in the viewer or the printer, or the rule was misread',
  instead: AT_FULL_SIZE,
};

/** Scales that settings give, each with the readings that half a millimetre either way makes of it. */
const KNOWN: readonly KnownScale[] = [
  {
    // A4 is 297 mm high and letter 279.4: 94.1 %.
    ...around(279.4 / 297),
    cause: 'an A4 page was shrunk onto letter paper',
    instead: 'sheets made with `--paper letter`, printed at 100 %',
  },
  {
    // Letter is 215.9 mm wide and A4 210: 97.3 %.
    ...around(210 / 215.9),
    cause: 'a letter page was shrunk onto A4 paper',
    instead: 'sheets made with `--paper A4`, printed at 100 %',
  },
  {
    ...around(96 / 72),
    cause: 'points (72 to the inch) were taken for pixels (96 to the inch)',
    instead: 'the PDF printed from a PDF viewer, at 100 %',
  },
  {
    ...around(72 / 96),
    cause: 'pixels (96 to the inch) were taken for points (72 to the inch)',
    instead: 'the PDF printed from a PDF viewer, at 100 %',
  },
  {
    ...around((4 * MM_PER_INCH) / 100),
    only: 'metric',
    cause: 'this looks like the bar of 4 in, which is 101.6 mm',
    instead: 'its reading with the bar named, as in 101.6mm/4in',
  },
  {
    ...around(100 / (4 * MM_PER_INCH)),
    only: 'inches',
    cause: 'this looks like the bar of 100 mm, which is 3.94 in',
    instead: 'its reading in millimetres, as in 99.3mm',
  },
  // About 96 %: the page shrunk into what the printer can reach.
  { from: 0.945, to: 0.985, cause: '"fit to page" or "shrink to fit" was on', instead: AT_FULL_SIZE },
];

/** The likely cause of a factor that no printer has by itself. */
export function likelyCause(factor: number, read: Length): Cause {
  if (factor < 0.1 || factor > 10) {
    return {
      cause: `${read.mm.toFixed(2)} mm is no reading of a bar, and a factor or a percentage is not taken`,
      instead: 'what the rule read, with its unit, as in 99.3mm or 3.97in',
    };
  }
  const reads = isMetric(read.unit) ? 'metric' : 'inches';
  const known = KNOWN.find(
    ({ from, to, only }) => factor >= from && factor <= to && (only === undefined || only === reads),
  );
  return known ?? SOME_SETTING;
}

function around(scale: number): { from: number; to: number } {
  return { from: scale - 0.005, to: scale + 0.005 };
}
