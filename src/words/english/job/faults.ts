import type { Fault, FaultKind } from '../../../measure/fault.ts';
import type { Said } from '../../../measure/said.ts';
import { asWritten, joined, type Objection, say } from '../../said.ts';

/** What is wrong with a length, an angle, a number or the name of a size, and what to write instead. */
export const faults = {
  said,
};

function said<Kind extends FaultKind>(fault: Fault<Kind>): Objection {
  return BY_KIND[fault.kind](fault);
}

const A_LENGTH = say`a length such as 38.1mm, 1-1/2in or 2ft 3-1/4in`;
const AN_ANGLE = say`an angle such as 60deg, 60.5°, 60°30' or 1.05rad`;
const A_NUMBER = say`a number such as 38.1 or 1-1/2`;
const A_FRACTION = say`a fraction such as 1/2`;
const A_SIZE = say`\`NPS 1-1/2 sch 40\` (ASME B36.10M) or \`EN 48.3 x 2.6\` (EN 10220)`;

function example(of: 'length' | 'angle'): Said {
  return of === 'length' ? A_LENGTH : AN_ANGLE;
}

const BY_KIND: { readonly [Kind in FaultKind]: (fault: Fault<Kind>) => Objection } = {
  'nothing-written': ({ of }) => ({ why: say`there is nothing written`, instead: example(of) }),
  'too-long': ({ of }) => ({ why: say`it is too long to be one value`, instead: example(of) }),
  'no-quantity': ({ of }) => ({ why: say`there is no number`, instead: example(of) }),
  'not-finite': ({ of }) => ({ why: say`that is not a number`, instead: example(of) }),
  hexadecimal: ({ of }) => ({ why: say`numbers are not read in hexadecimal`, instead: example(of) }),
  exponent: ({ of }) => ({ why: say`numbers are not read with an exponent`, instead: example(of) }),

  'no-number': () => ({ why: say`there is no number`, instead: A_NUMBER }),
  'not-a-number': () => ({ why: say`that is not a number`, instead: A_NUMBER }),
  'divided-by-zero': () => ({ why: say`nothing can be divided by 0`, instead: A_FRACTION }),
  'improper-fraction': ({ part }) => ({
    why: say`${asWritten(part)} beside a whole number is not less than 1`,
    instead: say`a number such as 1-1/2`,
  }),
  'improper-alone': ({ readings }) => ({
    why: say`a fraction of 1 or more can have lost the sign after its whole number`,
    instead: say`${eitherOf(readings.map(asWritten))}, ${readings.length > 1 ? say`whichever` : say`if that`} is meant`,
  }),
  'unfinished-fraction': () => ({ why: say`the fraction is not finished`, instead: A_FRACTION }),
  'decimals-or-thousands': ({ decimal, grouped }) => ({
    why: say`the comma or point may begin the decimals or set off thousands`,
    instead: say`${asWritten(decimal)} or ${asWritten(grouped)}, whichever is meant`,
  }),
  'several-points': () => ({ why: say`there is more than one decimal point`, instead: A_NUMBER }),
  sum: () => ({
    why: say`it looks like a sum`,
    instead: say`one number; one and a half is 1-1/2 with no spaces round the hyphen`,
  }),
  'spaced-number': ({ joined }) => ({
    why: say`there is a space within the number`,
    instead: say`${asWritten(joined)}, if that is meant`,
  }),
  'several-numbers': () => ({ why: say`there are several numbers`, instead: say`one number` }),

  'over-a-kilometre': () => ({ why: say`that is more than a kilometre`, instead: A_LENGTH }),
  'several-lengths': () => ({
    why: say`there is more than one value, and only feet and inches are read together`,
    instead: A_LENGTH,
  }),
  'unit-of-length': ({ unit }) => ({
    why: say`\`${asWritten(unit)}\` is not a unit of length`,
    instead: say`mm, cm, m, in or ft, as in 38.1mm or 1-1/2in`,
  }),
  'inches-without-unit': ({ read }) => ({
    why: say`the number after the feet has no unit`,
    instead: say`${asWritten(read)}in, or ${asWritten(read)}"`,
  }),
  'broken-feet': () => ({
    why: say`feet before inches are a whole number`,
    instead: say`a length such as 2ft 3-1/4in`,
  }),

  'over-ten-turns': () => ({ why: say`that is more than ten turns`, instead: AN_ANGLE }),
  'several-angles': () => ({ why: say`there is more than one value`, instead: AN_ANGLE }),
  'unit-of-angle': ({ unit }) => ({
    why: say`\`${asWritten(unit)}\` is not a unit of angle`,
    instead: say`deg, ° or rad, as in 60deg`,
  }),
  'minutes-alone': () => ({
    why: say`there are minutes or seconds but no degrees`,
    instead: say`degrees first, as in 0°30'`,
  }),
  'minutes-without-sign': ({ read }) => ({
    why: say`the number after the degrees has no sign`,
    instead: say`${asWritten(read)}' for minutes`,
  }),
  'decimals-not-last': () => ({
    why: say`only the last of degrees, minutes and seconds may have decimals`,
    instead: say`an angle such as 60°30'`,
  }),
  'over-sixty': () => ({
    why: say`there are 60 minutes in a degree and 60 seconds in a minute`,
    instead: say`minutes and seconds under 60`,
  }),

  'which-gauge': ({ number }) => ({
    why: say`which gauge is meant is not known: Birmingham (tube), standard wire and sheet gauges differ`,
    instead: say`${asWritten(number)} BWG, if it is a tube's, or the decimal`,
  }),
  'gauge-not-known': ({ least, most, nearest }) => ({
    why: say`the table here has ${least} to ${most} BWG, whole numbers`,
    instead: say`${nearest} BWG, or the decimal`,
  }),

  'no-size-name': () => ({ why: say`it is no name of a size`, instead: A_SIZE }),
  'nominal-diameter': () => ({
    why: say`DN is the same number in series whose outside diameters differ`,
    instead: A_SIZE,
  }),
  'which-series': () => ({ why: say`it is not given whose sizes these are`, instead: A_SIZE }),
  'schedule-not-known': ({ known, named }) => ({
    why: say`the table here has no such schedule`,
    instead: say`${eitherOf(known)}, or \`${asWritten(named)}\` and the wall by itself`,
  }),
  'nps-not-known': ({ near }) => ({
    why: say`the table here (ASME B36.10M) has no such size`,
    instead: eitherOf(near),
  }),
  'en-not-known': ({ near }) => ({
    why: say`series 1 of EN 10220 has no such outside diameter`,
    instead: eitherOf(near),
  }),
  'number-in-name': ({ within }) => ({ why: said(within).why, instead: A_SIZE }),
  'name-without-wall': () => ({ why: say`its wall has to be more than 0`, instead: A_SIZE }),
};

function eitherOf(names: readonly string[]): Said {
  return joined(names.map(asWritten), ' or ');
}
