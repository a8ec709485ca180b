import { plainSpelling } from './spelling.ts';
import { degrees, type Length, type LengthUnit, MM_PER_INCH, type Mm, type Radians } from './units.ts';

/** Closer than this to a mark of the tape, in inches, is on it: well under what can be marked, over any rounding. */
const ON_THE_MARK = 1e-6;

/** The finest marks on a common tape, and the finest anyone reads. */
export type Grain = 32 | 64;

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
  return `${Number(value.toFixed(2))}`;
}
