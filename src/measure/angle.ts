import { type Fraction, fraction, plus, times, toNumber } from './fraction.ts';
import { readQuantity, type Term } from './quantity.ts';
import { type Reading, refused, taken } from './reading.ts';
import { type Angle, radians } from './units.ts';

/** Ten turns: more is a slip of the keys. */
const LARGEST_DEGREES = 3600;

const DEGREE_WORDS: ReadonlySet<string> = new Set(['', '°', 'deg', 'degs', 'degree', 'degrees']);
const RADIAN_WORDS: ReadonlySet<string> = new Set(['rad', 'rads', 'radian', 'radians']);

/**
 * Reads an angle as people write it; a number without a unit is degrees. Does not throw: what can't be read comes
 * back with its reason.
 */
export function readAngle(text: string): Reading<Angle> {
  const read = text.trim();
  const quantity = readQuantity(text, 'angle');
  if (!quantity.ok) return quantity;
  const { terms, negative } = quantity.value;
  const unit = RADIAN_WORDS.has(terms[0].unit) ? 'rad' : 'deg';
  const total = unit === 'rad' ? onlyTerm(read, terms) : addDegrees(read, terms);
  if (!total.ok) return total;
  const size = unit === 'rad' ? toNumber(total.value) : radians(toNumber(total.value));
  if (size > radians(LARGEST_DEGREES)) return refused(read, { kind: 'over-ten-turns' });
  return taken({ rad: negative && size !== 0 ? -size : size, wrote: read, unit });
}

function onlyTerm(read: string, terms: readonly [Term, ...Term[]]): Reading<Fraction> {
  if (terms.length > 1) return refused(read, { kind: 'several-angles' });
  return taken(terms[0].number);
}

/** Degrees, then perhaps minutes, then perhaps seconds. */
function addDegrees(read: string, terms: readonly [Term, ...Term[]]): Reading<Fraction> {
  const [degrees, minutes, seconds, more] = terms;
  if (!DEGREE_WORDS.has(degrees.unit)) {
    if (degrees.unit === "'" || degrees.unit === '"') {
      return refused(read, { kind: 'minutes-alone' });
    }
    return refused(read, { kind: 'unit-of-angle', unit: degrees.unit });
  }
  if (minutes === undefined) return taken(degrees.number);
  if (minutes.unit === '') {
    return refused(read, { kind: 'minutes-without-sign', read });
  }
  const rightSigns = minutes.unit === "'" && (seconds === undefined || seconds.unit === '"');
  if (!rightSigns || more !== undefined || degrees.unit === '')
    return refused(read, { kind: 'several-angles' });
  return addSixtieths(read, degrees.number, minutes.number, seconds?.number);
}

function addSixtieths(
  read: string,
  degrees: Fraction,
  minutes: Fraction,
  seconds?: Fraction,
): Reading<Fraction> {
  if (degrees.bottom !== 1n || (seconds !== undefined && minutes.bottom !== 1n)) {
    return refused(read, { kind: 'decimals-not-last' });
  }
  if (toNumber(minutes) >= 60 || (seconds !== undefined && toNumber(seconds) >= 60)) {
    return refused(read, { kind: 'over-sixty' });
  }
  const small = plus(times(minutes, fraction(1n, 60n)), times(seconds ?? fraction(0n), fraction(1n, 3600n)));
  return taken(plus(degrees, small));
}
