import { type Length, MM_PER_INCH } from '../../measure/units.ts';
import { isMetric } from '../../measure/write.ts';
import type { Language, Wording } from '../../words/language.ts';

interface KnownScale {
  readonly cause: keyof Language['paper']['causes'];
  readonly from: number;
  readonly to: number;
  /** Only where the rule was read in these. */
  readonly only?: 'metric' | 'inches';
}

/** Scales that settings give, each with the readings that half a millimetre either way makes of it. */
const KNOWN: readonly KnownScale[] = [
  // A4 is 297 mm high and letter 279.4: 94.1 %.
  { cause: 'a4-on-letter', ...around(279.4 / 297) },
  // Letter is 215.9 mm wide and A4 210: 97.3 %.
  { cause: 'letter-on-a4', ...around(210 / 215.9) },
  { cause: 'points-for-pixels', ...around(96 / 72) },
  { cause: 'pixels-for-points', ...around(72 / 96) },
  { cause: 'bar-of-4-in', ...around((4 * MM_PER_INCH) / 100), only: 'metric' },
  { cause: 'bar-of-100-mm', ...around(100 / (4 * MM_PER_INCH)), only: 'inches' },
  // About 96 %: the page shrunk into what the printer can reach.
  { cause: 'fit-to-page', from: 0.945, to: 0.985 },
];

/** The likely cause of a factor that no printer has by itself, and what to do about it. */
export function likelyCause(factor: number, read: Length): Wording {
  if (factor < 0.1 || factor > 10) return ({ paper }) => paper.noReading(read.mm);
  const reads = isMetric(read.unit) ? 'metric' : 'inches';
  const known = KNOWN.find(
    ({ from, to, only }) => factor >= from && factor <= to && (only === undefined || only === reads),
  );
  return ({ paper }) => paper.causes[known?.cause ?? 'setting']();
}

function around(scale: number): { from: number; to: number } {
  return { from: scale - 0.005, to: scale + 0.005 };
}
