import type { Fraction } from './fraction.ts';
import { readNumber } from './number.ts';
import { type Reading, refused, taken } from './reading.ts';
import { plainSpelling } from './spelling.ts';

/** Numbers with their units, in the order they were written: `2ft 3-1/4in` has two terms. */
export interface Quantity {
  readonly negative: boolean;
  readonly terms: readonly [Term, ...Term[]];
}

export interface Term {
  readonly number: Fraction;
  /** In small letters and without a full stop; empty where none was written. */
  readonly unit: string;
}

/** More signs than anyone writes for one length or angle. */
const LONGEST = 60;

/** Splits a text into its numbers and their units. `of` is what they are to come to. */
export function readQuantity(text: string, of: 'length' | 'angle'): Reading<Quantity> {
  const read = text.trim();
  if (read === '') return refused(read, { kind: 'nothing-written', of });
  if (read.length > LONGEST) return refused(`${read.slice(0, LONGEST)}...`, { kind: 'too-long', of });
  const plain = plainSpelling(read);
  const kind = notPlainlyWritten(plain);
  if (kind !== undefined) return refused(read, { kind, of });
  const sign = /^[+-]? ?/.exec(plain)?.[0] ?? '';
  const terms: Term[] = [];
  for (const [number, unit] of numbersAndUnits(plain.slice(sign.length))) {
    const value = readNumber(terms.length > 0 ? number.replace(/^- ?/, '') : number);
    if (!value.ok) return refused(read, value.fault);
    terms.push({ number: value.value, unit });
  }
  const [first, ...rest] = terms;
  if (first === undefined) return refused(read, { kind: 'no-quantity', of });
  return taken({ negative: sign.startsWith('-'), terms: [first, ...rest] });
}

function notPlainlyWritten(plain: string): 'not-finite' | 'hexadecimal' | 'exponent' | undefined {
  if (/^[+-]?\.?(nan|inf|infinity)$/i.test(plain) || plain.includes('∞')) return 'not-finite';
  if (/^[+-]?0x/i.test(plain)) return 'hexadecimal';
  if (/[\d.]e[+-]?\d/i.test(plain)) return 'exponent';
  return undefined;
}

function numbersAndUnits(plain: string): [string, string][] {
  const pieces = plain.matchAll(/([^\p{L}"'°]*)(\p{L}+\.?|["'°])?/gu);
  return [...pieces]
    .filter(([whole]) => whole !== '')
    .map(([, number = '', unit = '']) => [number.trim(), unit.toLowerCase().replace(/\.$/, '')]);
}
