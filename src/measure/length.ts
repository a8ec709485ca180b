import { type Fraction, fraction, plus, times, toNumber } from './fraction.ts';
import { readQuantity, type Term } from './quantity.ts';
import { type Reading, refused, taken } from './reading.ts';
import type { Length, LengthUnit, Mm } from './units.ts';

/** One kilometre: no tube is longer, and a slip of the keys often is. */
export const LONGEST_MM: Mm = 1e6;

const IN_MM: Readonly<Record<LengthUnit, Fraction>> = {
  mm: fraction(1n),
  cm: fraction(10n),
  m: fraction(1000n),
  // 25.4 and 304.8 exactly.
  in: fraction(127n, 5n),
  ft: fraction(1524n, 5n),
};

export function inMm(unit: LengthUnit): Mm {
  return toNumber(IN_MM[unit]);
}

const UNITS: ReadonlyMap<string, LengthUnit> = new Map([
  ...spelled('mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'),
  ...spelled('cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'),
  ...spelled('m', 'metre', 'metres', 'meter', 'meters'),
  ...spelled('in', 'inch', 'inches', 'ins', '"'),
  ...spelled('ft', 'foot', 'feet', "'"),
]);

function spelled(unit: LengthUnit, ...others: string[]): [string, LengthUnit][] {
  return [unit, ...others].map((word) => [word, unit]);
}

/**
 * Reads a length as people write it; a number without a unit is taken in `bareUnit`. Values are exact before the
 * last rounding: `1-1/2in` is 38.1 mm. Does not throw: what can't be read comes back with its reason.
 */
export function readLength(text: string, bareUnit: 'mm' | 'in'): Reading<Length> {
  const read = text.trim();
  const quantity = readQuantity(text, 'length');
  if (!quantity.ok) return quantity;
  const { terms, negative } = quantity.value;
  const sum = addTerms(read, terms, bareUnit);
  if (!sum.ok) return sum;
  const size = toNumber(sum.value.total);
  if (size > LONGEST_MM) return refused(read, { kind: 'over-a-kilometre' });
  const bare = terms[0].unit === '' ? ({ bare: true } as const) : {};
  return taken({ mm: negative && size !== 0 ? -size : size, wrote: read, unit: sum.value.unit, ...bare });
}

function addTerms(
  read: string,
  terms: readonly [Term, ...Term[]],
  bareUnit: 'mm' | 'in',
): Reading<{ total: Fraction; unit: LengthUnit }> {
  const [first, second, third] = terms;
  const unit = first.unit === '' ? bareUnit : UNITS.get(first.unit);
  if (unit === undefined) return refused(read, { kind: 'unit-of-length', unit: first.unit });
  const total = times(first.number, IN_MM[unit]);
  if (second === undefined) return taken({ total, unit });

  const inches = UNITS.get(second.unit);
  if (inches === undefined && second.unit !== '') {
    return refused(read, { kind: 'unit-of-length', unit: second.unit });
  }
  if (unit !== 'ft' || third !== undefined || (inches !== 'in' && second.unit !== '')) {
    return refused(read, { kind: 'several-lengths' });
  }
  if (inches === undefined) return refused(read, { kind: 'inches-without-unit', read });
  if (first.number.bottom !== 1n) return refused(read, { kind: 'broken-feet' });
  return taken({ total: plus(total, times(second.number, IN_MM.in)), unit });
}
