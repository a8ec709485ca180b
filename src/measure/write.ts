import { plainSpelling } from './spelling.ts';
import {
  type Angle,
  degrees,
  type Length,
  type LengthUnit,
  MM_PER_INCH,
  type Mm,
  type Radians,
} from './units.ts';

/** Closer than this to a mark of the tape, in inches, is on it: well under what can be marked, over any rounding. */
const ON_THE_MARK = 1e-6;

/** The finest marks on a common tape, and the finest anyone reads. */
export type Grain = 32 | 64;

/** A length in millimetres or inches with its unit: `31.75 mm`, `1-1/2 in (1.500)`, `~2-3/8 in (2.362)`. */
export function writeLength(mm: Mm, unit: 'mm' | 'in', grain: Grain = 32): string {
  return unit === 'mm' ? `${millimetres(mm)} mm` : `${inchFraction(mm, grain)} in (${decimalInches(mm)})`;
}

/**
 * A length in the words of the person, and in the other unit: `1-1/4in (31.75 mm)`, `38.1 mm (1-1/2 in, 1.500)`; a
 * named size in both: `16 BWG (1.65 mm, ~1/16 in, 0.065)`.
 */
export function bothUnits(length: Length): string {
  if (length.byName) {
    const { wrote, mm } = length;
    return `${wrote} (${millimetres(mm)} mm, ${inchFraction(mm)} in, ${decimalInches(mm)})`;
  }
  if (isMetric(length.unit)) {
    return `${lengthAsWritten(length)} (${inchFraction(length.mm)} in, ${decimalInches(length.mm)})`;
  }
  return `${lengthAsWritten(length)} (${millimetres(length.mm)} mm)`;
}

/** The person's own words, with the unit that was meant where they left it out: `60` becomes `60 mm`. */
export function lengthAsWritten(length: Length): string {
  return /[\p{L}"']/u.test(plainSpelling(length.wrote)) ? length.wrote : `${length.wrote} ${length.unit}`;
}

/** The person's own words with the unit right behind them where they left it out, to be read again: `99.3mm`. */
export function withUnit({ wrote, unit }: Length): string {
  return /[\p{L}"'′″”]$/u.test(wrote) ? wrote : `${wrote}${unit}`;
}

export function isMetric(unit: LengthUnit): boolean {
  return unit === 'mm' || unit === 'cm' || unit === 'm';
}

/** Millimetres to at most two decimals, without the unit: `38.1`. */
export function millimetres(mm: Mm): string {
  return shortDecimal(mm);
}

/** Decimal inches to three places, without the unit: `1.500`. */
export function decimalInches(mm: Mm): string {
  return (mm / MM_PER_INCH).toFixed(3).replace(/^-(0\.000)$/, '$1');
}

/**
 * Inches as on a tape, without the unit: `1-1/2`. The nearest 1/32 (or `grain`), a 64th where the length lies on
 * one, reduced; with `~` before it where the length lies between marks.
 */
export function inchFraction(mm: Mm, grain: Grain = 32): string {
  const inches = Math.abs(mm) / MM_PER_INCH;
  const marks = offMark(inches, grain) > ON_THE_MARK && offMark(inches, 64) <= ON_THE_MARK ? 64 : grain;
  const count = Math.round(inches * marks);
  const sign = mm < 0 && count > 0 ? '-' : '';
  return `${offMark(inches, marks) > ON_THE_MARK ? '~' : ''}${sign}${mixed(count, marks)}`;
}

/** Degrees to at most two decimals: `60°`, `60.25°`. */
export function writeAngle(rad: Radians): string {
  return `${shortDecimal(degrees(rad))}°`;
}

/**
 * The person's own words for an angle, with a degree sign where they left the unit out; one that was measured in
 * another way with what it came to before them: `30.26° (rise 7in, run 12in)`.
 */
export function angleAsWritten(angle: Angle): string {
  if (angle.byName) return `${writeAngle(angle.rad)} (${angle.wrote})`;
  return /[\p{L}°]/u.test(plainSpelling(angle.wrote)) ? angle.wrote : `${angle.wrote}°`;
}

function offMark(inches: number, marks: number): number {
  return Math.abs(inches - Math.round(inches * marks) / marks);
}

function mixed(count: number, marks: number): string {
  const whole = Math.floor(count / marks);
  let [top, bottom] = [count % marks, marks];
  if (top === 0) return `${whole}`;
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return whole === 0 ? `${top}/${bottom}` : `${whole}-${top}/${bottom}`;
}

function shortDecimal(value: number): string {
  const short = value.toFixed(2).replace(/\.?0+$/, '');
  return short === '-0' ? '0' : short;
}
