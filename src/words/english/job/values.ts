import type { Said } from '../../../measure/said.ts';
import type { Angle, Length, Mm } from '../../../measure/units.ts';
import { withUnit } from '../../../measure/write.ts';
import { asWritten, joined, type Objection, say } from '../../said.ts';
import { quantities } from '../quantities.ts';

const TRUE_OR_FALSE = say`true or false`;
const ONE_OR_MORE = say`a whole number, 1 or more`;

/** Single values: what is wanted where they stand, and what is wrong with them. */
export const values = {
  length: say`a length such as 38.1mm or 1-1/2in`,
  angle: say`an angle such as 60deg`,
  words: say`a few words`,
  note: say`a line of words, or a list of such lines`,
  trueOrFalse: TRUE_OR_FALSE,
  copies: ONE_OR_MORE,
  /** One of several words. */
  oneOf,

  notPositive: {
    why: say`it has to be more than 0`,
    instead: say`a length over 0, such as 38.1mm or 1-1/2in`,
  },
  negative: { why: say`it can't be less than 0`, instead: say`0 or more` },
  over: (most: Mm, units: 'mm' | 'in'): Objection => ({
    why: say`it is more than ${quantities.limit(most, units)}`,
    instead: say`a length up to ${quantities.limit(most, units)}`,
  }),
  /** A number without a unit, in the file's, and what else it can have meant. */
  whichUnit: (here: Length, others: readonly Length[], of: keyof typeof NOBODY_HAS): Objection => ({
    why: say`without a unit that is ${inBoth(here)}, and ${NOBODY_HAS[of]}`,
    instead: whichReading(here, others),
  }),
  whichReading,
  /** A slope in hundredths. */
  percent: (number: string): Objection => ({
    why: say`a slope in % is no angle`,
    instead: say`\`{ rise: ${asWritten(number)}, run: 100 }\`, or the angle such as 60deg`,
  }),
  /** A number without a unit that is hardly one of degrees, and what else it can have meant. */
  hardlyAnAngle: ({ rad, wrote }: Angle): Objection => {
    const [, rise, run] = /^(\d+) ?\/ ?(\d+)$/.exec(wrote) ?? [];
    const slope = rise && run ? [say`\`{ rise: ${asWritten(rise)}, run: ${asWritten(run)} }\``] : [];
    const radians = say`${asWritten(wrote)}rad (${quantities.angle((rad * 180) / Math.PI)})`;
    return {
      why: say`without a unit that is ${quantities.angle(rad)}, and hardly a tube is joined so`,
      instead: say`${joined([...slope, radians], ', ')} or ${asWritten(wrote)}deg: write the unit, whichever you mean`,
    };
  },
  /** Lengths of one measurement, one of them without its unit where another has one. */
  besideAUnit: (bare: Length, other: Length): Objection => ({
    why: say`it has no unit, and ${quantities.own(other)} beside it has one`,
    instead: say`${asWritten(bare.wrote)}${asWritten(other.unit)} or ${asWritten(bare.wrote)}${asWritten(bare.unit)}: write the unit, whichever you mean`,
  }),
  manyTurns: {
    why: say`that is more than two turns round the tube`,
    instead: say`an angle up to 360deg to either side`,
  },
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

const NOBODY_HAS = {
  tube: say`hardly a tube is that size`,
  header: say`hardly a header is that size`,
  wall: say`hardly a tube has such a wall`,
  between: say`hardly a tube is that long`,
  stock: say`hardly a stock length is that long`,
  kerf: say`hardly a saw takes that much`,
  allowance: say`hardly a blank is left that much longer`,
  root: say`hardly a gap is left so for a weld`,
  offset: say`hardly an offset is read so`,
  margin: say`hardly a printer reaches so near the edge`,
  paper: say`hardly a paper is that thick`,
  tape: say`hardly a tape is that thick`,
};

function whichReading(here: Length, others: readonly Length[]): Said {
  const all = [...others, here].map(withItsUnit);
  const [last, rest] = [all.at(-1) ?? say``, all.slice(0, -1)];
  if (rest.length === 0) return say`${last}, if you mean it: write the unit`;
  return say`${joined(rest, ', ')} or ${last}: write the unit, whichever you mean`;
}

/** As it is to be written, and what it is then in mm: `38.1in (967.74 mm)`. */
function withItsUnit(length: Length): Said {
  const size = length.unit === 'mm' && !length.byName ? say`` : say` (${quantities.mm(length.mm)})`;
  return say`${asWritten(length.byName ? length.wrote : withUnit(length))}${size}`;
}

function inBoth(length: Length): Said {
  return length.unit === 'mm'
    ? quantities.mm(length.mm)
    : say`${quantities.own(length)} (${quantities.mm(length.mm)})`;
}
