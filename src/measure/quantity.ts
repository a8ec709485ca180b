import type { Fraction } from './fraction.ts';
import { type Reading, refused, taken } from './misreading.ts';
import { readNumber } from './number.ts';
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

/** Splits a text into its numbers and their units. `example` is what to write instead, where it can't be split. */
export function readQuantity(text: string, example: string): Reading<Quantity> {
  const read = text.trim();
  if (read === '') return refused(read, 'there is nothing written', example);
  if (read.length > LONGEST)
    return refused(`${read.slice(0, LONGEST)}...`, 'it is too long to be one value', example);
  const plain = plainSpelling(read);
  const why = notPlainlyWritten(plain);
  if (why !== undefined) return refused(read, why, example);
  const sign = /^[+-]? ?/.exec(plain)?.[0] ?? '';
  const terms: Term[] = [];
  for (const [number, unit] of numbersAndUnits(plain.slice(sign.length))) {
    const value = readNumber(terms.length > 0 ? number.replace(/^- ?/, '') : number);
    if (!value.ok) return refused(read, value.why, value.instead);
    terms.push({ number: value.value, unit });
  }
  const [first, ...rest] = terms;
  if (first === undefined) return refused(read, 'there is no number', example);
  return taken({ negative: sign.startsWith('-'), terms: [first, ...rest] });
}

function notPlainlyWritten(plain: string): string | undefined {
  if (/^[+-]?\.?(nan|inf|infinity)$/i.test(plain) || plain.includes('∞')) return 'that is not a number';
  if (/^[+-]?0x/i.test(plain)) return 'numbers are not read in hexadecimal';
  if (/[\d.]e[+-]?\d/i.test(plain)) return 'numbers are not read with an exponent';
  return undefined;
}

function numbersAndUnits(plain: string): [string, string][] {
  const pieces = plain.matchAll(/([^\p{L}"'°]*)(\p{L}+\.?|["'°])?/gu);
  return [...pieces]
    .filter(([whole]) => whole !== '')
    .map(([, number = '', unit = '']) => [number.trim(), unit.toLowerCase().replace(/\.$/, '')]);
}
