import { readAngle } from '../../measure/angle.ts';
import type { Fault } from '../../measure/fault.ts';
import { readLength } from '../../measure/length.ts';
import { type Angle, degrees, type Length, type Mm } from '../../measure/units.ts';
import type { Objection } from '../../words/said.ts';
import { complain, complainOf, type Spot } from './desk.ts';
import { textOf } from './fields.ts';
import { otherReadings, type SizeOf, unusual } from './usual.ts';

// Each reader takes the spot of a key, undefined where the key is not there, and gives back the value; undefined
// stands for a key that is not there and for a value that has been complained about.

/** What a length must be to make sense where it stands. */
export type Sign = 'positive' | 'zero-or-more' | 'any';

/** `of` says what it is the size of: a bare number that makes a size which nobody has is asked about. */
export function lengthAt(spot: Spot | undefined, sign: Sign, of?: SizeOf): Length | undefined {
  const text = spot && textOf(spot, spot.desk.words.job.values.length);
  if (spot === undefined || text === undefined) return undefined;
  const reading = readLength(text, spot.desk.bareUnit);
  if (!reading.ok) return misread(spot, 'length', reading.fault);
  const { mm } = reading.value;
  const { notPositive, negative } = spot.desk.words.job.values;
  if (sign === 'positive' && mm <= 0) return complain(spot, 'not-positive', notPositive);
  if (sign === 'zero-or-more' && mm < 0) return complain(spot, 'negative', negative);
  return of ? usualSize(spot, reading.value, of) : reading.value;
}

/** Asks about a bare number that makes a size which nobody has; gives back any other length. */
export function usualSize(spot: Spot, length: Length, of: SizeOf): Length | undefined {
  return unusual(length, of) ? askUnit(spot, length, of) : length;
}

export function askUnit(spot: Spot, length: Length, of: SizeOf): undefined {
  const objection = spot.desk.words.job.values.whichUnit(length, otherReadings(length, of), of);
  return complain(spot, 'which-unit', objection);
}

/** A length that may not be longer than some bound, whatever its unit; a usual bare one is asked about as above. */
export function lengthUpTo(spot: Spot | undefined, sign: Sign, most: Mm, of?: SizeOf): Length | undefined {
  const length = lengthAt(spot, sign);
  if (spot === undefined || length === undefined) return length;
  if (length.mm > most) {
    return complain(spot, 'too-large', spot.desk.words.job.values.over(most, spot.desk.bareUnit));
  }
  return of ? usualSize(spot, length, of) : length;
}

export function angleAt(spot: Spot | undefined): Angle | undefined {
  const text = spot && textOf(spot, spot.desk.words.job.values.angle);
  if (spot === undefined || text === undefined) return undefined;
  const percent = /^\s*([\d.,]+)\s*%\s*$/.exec(text)?.[1];
  if (percent !== undefined) return complain(spot, 'angle', spot.desk.words.job.values.percent(percent));
  const reading = readAngle(text);
  return reading.ok ? reading.value : misread(spot, 'angle', reading.fault);
}

/** What an angle is that nothing was written for. */
export const NO_ANGLE: Angle = { rad: 0, wrote: '0', unit: 'deg' };

/** An angle between a tube's body and a header's axis: over 0 and under 180 degrees. */
export function jointAngleAt(spot: Spot | undefined): Angle | undefined {
  const angle = angleAt(spot);
  if (!spot || !angle) return undefined;
  return isSlope(angle)
    ? complain(spot, 'which-unit', spot.desk.words.job.values.hardlyAnAngle(angle))
    : inJointRange(spot, angle);
}

/** A number without a unit that is no more than pi was mostly meant in radians, and a fraction under it as a slope. */
function isSlope({ rad, wrote }: Angle): boolean {
  return !/[\p{L}°]/u.test(wrote) && rad > 0 && degrees(rad) <= Math.PI;
}

/** Complains of an angle that no joint has; gives back any other. */
export function inJointRange(spot: Spot, angle: Angle): Angle | undefined {
  const size = degrees(angle.rad);
  if (size > 1e-9 && size < 180 - 1e-9) return angle;
  return complain(spot, 'angle-range', spot.desk.words.job.values.noJointAngle);
}

export function choiceAt<const Choice extends string>(
  spot: Spot | undefined,
  choices: readonly Choice[],
): Choice | undefined {
  if (spot === undefined) return undefined;
  const { oneOf, noChoice } = spot.desk.words.job.values;
  const text = textOf(spot, oneOf(choices));
  if (text === undefined) return undefined;
  const choice = choices.find((each) => each === text.trim().toLowerCase());
  return choice ?? complain(spot, 'choice', noChoice(choices));
}

export function yesOrNoAt(spot: Spot | undefined): boolean | undefined {
  const text = spot && textOf(spot, spot.desk.words.job.values.trueOrFalse);
  if (spot === undefined || text === undefined) return undefined;
  const word = text.trim().toLowerCase();
  if (word === 'true' || word === 'yes') return true;
  if (word === 'false' || word === 'no') return false;
  return complain(spot, 'choice', spot.desk.words.job.values.neitherTrueNorFalse);
}

const MOST_COPIES = 9999;

export function copiesAt(spot: Spot | undefined): number | undefined {
  const text = spot && textOf(spot, spot.desk.words.job.values.copies);
  if (spot === undefined || text === undefined) return undefined;
  const count = /^\d{1,6}$/.test(text.trim()) ? Number(text) : 0;
  if (count >= 1 && count <= MOST_COPIES) return count;
  return complain(spot, 'copies', spot.desk.words.job.values.copiesFrom1(MOST_COPIES));
}

const LONGEST_NAME = 80;

/** Words that are printed as they were written, on one line; no longer than a name may be unless more is said. */
export function wordsAt(spot: Spot | undefined, longest = LONGEST_NAME): string | undefined {
  const text = spot && textOf(spot, spot.desk.words.job.values.words)?.trim();
  return spot && text !== undefined ? oneLine(spot, text, longest) : undefined;
}

/** Words that a person wrote at a spot, if they can be printed on one line. */
export function oneLine(spot: Spot, text: string, longest: number): string | undefined {
  const { tooManyLetters, notOnOneLine, halfALetter } = spot.desk.words.job.values;
  if (text.length > longest) return complain(spot, 'words', tooManyLetters(longest));
  if (/[\p{Cc}\u2028\u2029]/u.test(text)) return complain(spot, 'words', notOnOneLine);
  if (/\p{Cs}/u.test(text)) return complain(spot, 'words', halfALetter);
  return text;
}

/** Complains that a key is needed which is not there. */
export function missing(within: Spot, key: string, objection: Objection): undefined {
  const read = within.desk.words.job.text.noKey(within.desk.say.key(key));
  return complainOf(within.desk, within.at, { code: 'missing', read, ...objection, key, missing: true });
}

/** Complains of a value that its reader did not take. */
export function misread(spot: Spot, code: string, fault: Fault): undefined {
  return complain(spot, code, spot.desk.words.faults.said(fault));
}
