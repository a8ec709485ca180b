/** What is wrong with something that a person wrote for a quantity or a size: which fault it is, and what it takes to word it. */
export type Fault<Kind extends FaultKind = FaultKind> = {
  [K in Kind]: { readonly kind: K } & Readonly<Faults[K]>;
}[Kind];

export type FaultKind = keyof Faults;

/** What was to be read. */
interface Wanted {
  of: 'length' | 'angle';
}

interface Faults {
  // Of a quantity, before its numbers are looked at.
  'nothing-written': Wanted;
  'too-long': Wanted;
  'no-quantity': Wanted;
  'not-finite': Wanted;
  hexadecimal: Wanted;
  exponent: Wanted;
  // Of a number.
  'no-number': object;
  'not-a-number': object;
  'divided-by-zero': object;
  /** `part` is a fraction of 1 or more beside a whole number. */
  'improper-fraction': { part: string };
  /** What a fraction of 1 or more can have meant. */
  'improper-alone': { readings: readonly string[] };
  'unfinished-fraction': object;
  /** A spelling that means one thing in one country and another elsewhere: both. */
  'decimals-or-thousands': { decimal: string; grouped: string };
  'several-points': object;
  sum: object;
  'spaced-number': { joined: string };
  'several-numbers': object;
  // Of a length.
  'over-a-kilometre': object;
  'several-lengths': object;
  'unit-of-length': { unit: string };
  'inches-without-unit': { read: string };
  'broken-feet': object;
  // Of an angle.
  'over-ten-turns': object;
  'several-angles': object;
  'unit-of-angle': { unit: string };
  'minutes-alone': object;
  'minutes-without-sign': { read: string };
  'decimals-not-last': object;
  'over-sixty': object;
  // Of a wall by its gauge.
  'which-gauge': { number: string };
  'gauge-not-known': { least: number; most: number; nearest: number };
  // Of a pipe by the name of its size.
  'no-size-name': object;
  'nominal-diameter': object;
  'which-series': object;
  'schedule-not-known': { known: readonly string[]; named: string };
  /** `near` are the names of the known sizes next below and above. */
  'nps-not-known': { near: readonly string[] };
  'en-not-known': { near: readonly string[] };
  /** A number in the name was misread. */
  'number-in-name': { within: Fault };
  'name-without-wall': object;
}
