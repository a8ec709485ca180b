import { type Fraction, fraction, plus, times, toNumber } from './fraction.ts';
import { type Reading, refused, taken } from './misreading.ts';
import { readQuantity, type Term } from './quantity.ts';
import { type Angle, radians } from './units.ts';

const EXAMPLE = "an angle such as 60deg, 60.5°, 60°30' or 1.05rad";

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
  const quantity = readQuantity(text, EXAMPLE);
  if (!quantity.ok) return quantity;
  const { terms, negative } = quantity.value;
  const unit = RADIAN_WORDS.has(terms[0].unit) ? 'rad' : 'deg';
  const total = unit === 'rad' ? onlyTerm(read, terms) : addDegrees(read, terms);
  if (!total.ok) return total;
  const size = unit === 'rad' ? toNumber(total.value) : radians(toNumber(total.value));
  if (size > radians(LARGEST_DEGREES)) return refused(read, 'that is more than ten turns', EXAMPLE);
  return taken({ rad: negative && size !== 0 ? -size : size, wrote: read, unit });
}

function onlyTerm(read: string, terms: readonly [Term, ...Term[]]): Reading<Fraction> {
  if (terms.length > 1) return refused(read, 'there is more than one value', EXAMPLE);
  return taken(terms[0].number);
}

/** Degrees, then perhaps minutes, then perhaps seconds. */
function addDegrees(read: string, terms: readonly [Term, ...Term[]]): Reading<Fraction> {
  const [degrees, minutes, seconds, more] = terms;
  if (!DEGREE_WORDS.has(degrees.unit)) {
    if (degrees.unit === "'" || degrees.unit === '"') {
      return refused(read, 'there are minutes or seconds but no degrees', "degrees first, as in 0°30'");
    }
    return refused(read, `\`${degrees.unit}\` is not a unit of angle`, 'deg, ° or rad, as in 60deg');
  }
  if (minutes === undefined) return taken(degrees.number);
  if (minutes.unit === '') {
    return refused(read, 'the number after the degrees has no sign', `${read}' for minutes`);
  }
  const rightSigns = minutes.unit === "'" && (seconds === undefined || seconds.unit === '"');
  if (!rightSigns || more !== undefined || degrees.unit === '')
    return refused(read, 'there is more than one value', EXAMPLE);
  return addSixtieths(read, degrees.number, minutes.number, seconds?.number);
}

function addSixtieths(
  read: string,
  degrees: Fraction,
  minutes: Fraction,
  seconds?: Fraction,
): Reading<Fraction> {
  if (degrees.bottom !== 1n || (seconds !== undefined && minutes.bottom !== 1n)) {
    return refused(
      read,
      'only the last of degrees, minutes and seconds may have decimals',
      "an angle such as 60°30'",
    );
  }
  if (toNumber(minutes) >= 60 || (seconds !== undefined && toNumber(seconds) >= 60)) {
    return refused(
      read,
      'there are 60 minutes in a degree and 60 seconds in a minute',
      'minutes and seconds under 60',
    );
  }
  const small = plus(times(minutes, fraction(1n, 60n)), times(seconds ?? fraction(0n), fraction(1n, 3600n)));
  return taken(plus(degrees, small));
}
