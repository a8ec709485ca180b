import { readAngle } from '../measure/angle.ts';
import { readLength } from '../measure/length.ts';
import { degrees, MM_PER_INCH, type Mm, type Radians } from '../measure/units.ts';

/** A length as a job writes it, with its unit: such that it is read to the very number, as near as any text comes. */
export function exactLength(mm: Mm, units: 'mm' | 'in'): string {
  const guess = units === 'in' ? mm / MM_PER_INCH : mm;
  const write = (size: string): string => `${size} ${units}`;
  return exactly(guess, write, (text) => {
    const read = readLength(text, units);
    return read.ok && read.value.mm === mm;
  });
}

/** An angle as a job writes it: the same, in degrees or, where none comes to it, in radians. */
export function exactAngle(rad: Radians): string {
  const isRead = (text: string): boolean => {
    const read = readAngle(text);
    return read.ok && read.value.rad === rad;
  };
  const inDegrees = exactly(degrees(rad), (size) => size, isRead);
  return isRead(inDegrees) ? inDegrees : exactly(rad, (size) => `${size} rad`, isRead);
}

/** Neighbours of the likeliest number that are tried: each is one step of the last bit or so. */
const STEPS = Array.from({ length: 25 }, (_, i) => (i % 2 === 0 ? i / 2 : -(i + 1) / 2));

function exactly(guess: number, write: (size: string) => string, isRead: (text: string) => boolean): string {
  const near = STEPS.map((step) => guess * (1 + step * 2 ** -53));
  const texts = [
    ...[Number(guess.toFixed(2)), ...near].map((size) => plain(size)),
    // A text with more digits than a number has may be read to one that no shorter text is.
    ...near.flatMap((size) => DIGITS.map((digits) => size.toPrecision(digits))),
  ].filter((text) => !text.includes('e'));
  return texts.map(write).find(isRead) ?? write(plain(guess));
}

const DIGITS = [18, 19, 20, 21, 22];

/** With no exponent, which no file is written with. */
function plain(size: number): string {
  const text = `${size}`;
  return text.includes('e') ? size.toFixed(20) : text;
}
