import type { Said } from '../../../measure/said.ts';
import type { Mm } from '../../../measure/units.ts';
import { asWritten, joined, type Objection, say } from '../../said.ts';

const TRUE_OR_FALSE = say`true or false`;
const ONE_OR_MORE = say`a whole number, 1 or more`;

/** Single values: what is wanted where they stand, and what is wrong with them. */
export const values = {
  length: say`a length such as 38.1mm or 1-1/2in`,
  angle: say`an angle such as 60deg`,
  words: say`a few words`,
  trueOrFalse: TRUE_OR_FALSE,
  copies: ONE_OR_MORE,
  /** One of several words. */
  oneOf,

  notPositive: {
    why: say`it has to be more than 0`,
    instead: say`a length over 0, such as 38.1mm or 1-1/2in`,
  },
  negative: { why: say`it can't be less than 0`, instead: say`0 or more` },
  over: (most: Mm): Objection => ({
    why: say`it is more than ${most} mm`,
    instead: say`a length up to ${most} mm`,
  }),
  noJointAngle: {
    why: say`at 0 or 180 degrees the tube runs along the header, and beyond there is no joint`,
    instead: say`an angle over 0 and under 180 degrees, such as 60deg`,
  },
  noChoice: (choices: readonly string[]): Objection => ({
    why: say`it is not one of the choices`,
    instead: oneOf(choices),
  }),
  neitherTrueNorFalse: { why: say`it is neither true nor false`, instead: TRUE_OR_FALSE },
  copiesFrom1: (most: number): Objection => ({
    why: say`copies are counted from 1 to ${most}`,
    instead: ONE_OR_MORE,
  }),
  tooManyLetters: (most: number): Objection => ({
    why: say`it is longer than ${most} letters`,
    instead: say`fewer words`,
  }),
  notOnOneLine: { why: say`it does not stand on one line`, instead: say`one line of words` },
  halfALetter: { why: say`it holds half a letter`, instead: say`whole letters` },
};

function oneOf(choices: readonly string[]): Said {
  return joined(choices.map(asWritten), ' or ');
}
