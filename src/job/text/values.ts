import { readAngle } from '../../measure/angle.ts';
import type { Fault } from '../../measure/fault.ts';
import { readLength } from '../../measure/length.ts';
import { type Angle, degrees, type Length, type Mm } from '../../measure/units.ts';
import { complain, complainOf, type Desk, type Spot } from './desk.ts';
import { textOf } from './fields.ts';

// Each reader takes the spot of a key, undefined where the key is not there, and gives back the value; undefined
// stands for a key that is not there and for a value that has been complained about.

/** What a length must be to make sense where it stands. */
export type Sign = 'positive' | 'zero-or-more' | 'any';

export function lengthAt(desk: Desk, spot: Spot | undefined, sign: Sign): Length | undefined {
  const text = spot && textOf(desk, spot, 'a length such as 38.1mm or 1-1/2in');
  if (spot === undefined || text === undefined) return undefined;
  const reading = readLength(text, desk.bareUnit);
  if (!reading.ok) return misread(desk, spot, 'length', reading.fault);
  const { mm } = reading.value;
  if (sign === 'positive' && mm <= 0)
    return complain(desk, spot, 'not-positive', 'it has to be more than 0', POSITIVE);
  if (sign === 'zero-or-more' && mm < 0)
    return complain(desk, spot, 'negative', 'it can not be less than 0', '0 or more');
  return reading.value;
}

const POSITIVE = 'a length over 0, such as 38.1mm or 1-1/2in';

/** A length that may not be longer than some bound, which is told in words. */
export function lengthUpTo(
  desk: Desk,
  spot: Spot | undefined,
  sign: Sign,
  most: Mm,
  words: string,
): Length | undefined {
  const length = lengthAt(desk, spot, sign);
  if (spot === undefined || length === undefined || length.mm <= most) return length;
  return complain(desk, spot, 'too-large', `it is more than ${words}`, `a length up to ${words}`);
}

export function angleAt(desk: Desk, spot: Spot | undefined): Angle | undefined {
  const text = spot && textOf(desk, spot, 'an angle such as 60deg');
  if (spot === undefined || text === undefined) return undefined;
  const reading = readAngle(text);
  return reading.ok ? reading.value : misread(desk, spot, 'angle', reading.fault);
}

/** What an angle is that nothing was written for. */
export const NO_ANGLE: Angle = { rad: 0, wrote: '0', unit: 'deg' };

/** An angle between a tube's body and a header's axis: over 0 and under 180 degrees. */
export function jointAngleAt(desk: Desk, spot: Spot | undefined): Angle | undefined {
  const angle = angleAt(desk, spot);
  return spot && angle && inJointRange(desk, spot, angle);
}

/** Complains of an angle that no joint has; gives back any other. */
export function inJointRange(desk: Desk, spot: Spot, angle: Angle): Angle | undefined {
  const size = degrees(angle.rad);
  if (size > 1e-9 && size < 180 - 1e-9) return angle;
  const why = 'at 0 or 180 degrees the tube runs along the header, and beyond there is no joint';
  return complain(desk, spot, 'angle-range', why, 'an angle over 0 and under 180 degrees, such as 60deg');
}

export function choiceAt<Choice extends string>(
  desk: Desk,
  spot: Spot | undefined,
  choices: readonly Choice[],
): Choice | undefined {
  const wanted = choices.join(' or ');
  const text = spot && textOf(desk, spot, wanted);
  if (spot === undefined || text === undefined) return undefined;
  const choice = choices.find((each) => each === text.trim().toLowerCase());
  return choice ?? complain(desk, spot, 'choice', 'it is none of what can stand here', wanted);
}

export function yesOrNoAt(desk: Desk, spot: Spot | undefined): boolean | undefined {
  const text = spot && textOf(desk, spot, 'true or false');
  if (spot === undefined || text === undefined) return undefined;
  const word = text.trim().toLowerCase();
  if (word === 'true' || word === 'yes') return true;
  if (word === 'false' || word === 'no') return false;
  return complain(desk, spot, 'choice', 'it is neither true nor false', 'true or false');
}

const MOST_COPIES = 9999;

export function copiesAt(desk: Desk, spot: Spot | undefined): number | undefined {
  const text = spot && textOf(desk, spot, 'a whole number, 1 or more');
  if (spot === undefined || text === undefined) return undefined;
  const count = /^\d{1,6}$/.test(text.trim()) ? Number(text) : 0;
  if (count >= 1 && count <= MOST_COPIES) return count;
  return complain(
    desk,
    spot,
    'copies',
    `copies are counted from 1 to ${MOST_COPIES}`,
    'a whole number, 1 or more',
  );
}

const LONGEST_NAME = 80;

/** Words that are printed as they were written, on one line. */
export function wordsAt(desk: Desk, spot: Spot | undefined): string | undefined {
  const text = spot && textOf(desk, spot, 'a few words')?.trim();
  if (spot === undefined || text === undefined) return undefined;
  if (text.length > LONGEST_NAME) {
    return complain(desk, spot, 'words', `it is longer than ${LONGEST_NAME} letters`, 'fewer words');
  }
  if (/[\p{Cc}\u2028\u2029]/u.test(text))
    return complain(desk, spot, 'words', 'it does not stand on one line', 'one line of words');
  if (/\p{Cs}/u.test(text)) return complain(desk, spot, 'words', 'it holds half a letter', 'whole letters');
  return text;
}

/** Complains that a key is needed which is not there. */
export function missing(desk: Desk, within: Spot, key: string, why: string, instead: string): undefined {
  const read = `no ${desk.say.key(key)}`;
  return complainOf(desk, within.at, { code: 'missing', read, why, instead, key, lacking: true });
}

/** Complains of a value that its reader did not take. */
export function misread(desk: Desk, spot: Spot, code: string, fault: Fault): undefined {
  const { why, instead } = desk.words.faults.said(fault);
  return complain(desk, spot, code, why, instead);
}
