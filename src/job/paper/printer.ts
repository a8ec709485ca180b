import type { Fault } from '../../measure/fault.ts';
import { readLength } from '../../measure/length.ts';
import { type Reading, refused, taken } from '../../measure/reading.ts';
import { type Length, MM_PER_INCH, type Mm } from '../../measure/units.ts';
import { isMetric, withUnit } from '../../measure/write.ts';
import type { Wording } from '../../words/language.ts';
import { likelyCause } from './printer-cause.ts';

/** A printer by what it made of two bars. Across and up are told of upright paper, as it lies in the printer. */
export interface Printer {
  readonly name: string;
  readonly across: MeasuredBar;
  readonly up: MeasuredBar;
}

/** A printed bar: what it measures, and what it says. */
export interface MeasuredBar {
  readonly read: Length;
  readonly says: Length;
  /** How long a millimetre comes out: 0.993 where 99.3 mm are read on the bar of 100. */
  readonly factor: number;
}

export type PrinterAxis = 'across' | 'up';

/**
 * More than this in an axis is a setting and no printer; so is more than `MOST_ALIKE` in both, in
 * the same direction. Our choice, no source: printers and paper together are off by less, and settings (97 %, 94 %) by more.
 */
const MOST_OFF = 0.015;
const MOST_ALIKE = 0.01;
/** Half a millimetre misread on a shorter bar is more than most printers are off. */
const SHORTEST_BAR: Mm = 100;
/** Keeps what is off by just the limit on its good side. */
const ROUNDING = 1e-9;

/**
 * Reads what was measured on the bar of one axis: `99.3mm` is of the bar of 100 mm, `3.97in` of the one of 4 in, and
 * `199.2mm/200mm` names the bar. A bare number is in mm. Refuses what is more than 1.5 % off, with its likely cause.
 * Does not throw.
 */
export function readMeasured(axis: PrinterAxis, text: string): Reading<MeasuredBar, Wording> {
  const [first, bar] = barNamed(text.trim());
  const read = readLength(first, 'mm');
  if (!read.ok) return misread(text, read.fault);
  const says = bar === undefined ? taken(shortBar(read.value)) : readLength(bar, 'mm');
  if (!says.ok) return misread(text, says.fault);
  if (says.value.mm < SHORTEST_BAR) return refused(text.trim(), ({ paper }) => paper.barTooShort());
  const factor = read.value.mm / says.value.mm;
  if (Math.abs(factor - 1) <= MOST_OFF + ROUNDING) {
    return taken({ read: read.value, says: says.value, factor });
  }
  const cause = likelyCause(factor, read.value);
  return refused(text.trim(), (words) => words.paper.offInAxis(axis, factor, cause(words)));
}

/** What was read, and the bar where it is named: behind the last slash after a unit, as others are of fractions. */
function barNamed(text: string): [read: string, bar?: string] {
  const ends = Array.from(
    text.matchAll(/[\p{L}"'′″”]\s*[/⁄∕]/gu),
    ({ index, 0: { length } }) => index + length,
  );
  const end = ends.findLast((each) => each < text.length);
  return end === undefined ? [text] : [text.slice(0, end - 1).trimEnd(), text.slice(end).trimStart()];
}

function misread(text: string, fault: Fault): Reading<never, Wording> {
  return refused(text.trim(), ({ faults, paper }) => paper.barMisread(faults.said(fault).why));
}

function shortBar({ unit }: Length): Length {
  if (isMetric(unit)) return { mm: 100, wrote: '100mm', unit: 'mm' };
  return { mm: 4 * MM_PER_INCH, wrote: '4in', unit: 'in' };
}

/**
 * A printer from its two axes. Refuses one that is off alike in both by more than 1 %: paper and rollers differ in their
 * two directions, a setting does not. Does not throw.
 */
export function readPrinter(name: string, across: MeasuredBar, up: MeasuredBar): Reading<Printer, Wording> {
  const [first, second] = [across.factor - 1, up.factor - 1];
  const alike = first * second > 0 && Math.min(Math.abs(first), Math.abs(second)) > MOST_ALIKE + ROUNDING;
  if (!alike) return taken({ name, across, up });
  return refused(`${asMeasured(across)} across, ${asMeasured(up)} up`, ({ paper }) =>
    paper.offAlike(across.factor, up.factor, paper.causes.setting()),
  );
}

/** What was measured, in the person's words and such as `readMeasured` reads: `99.3mm/100mm`. */
export function asMeasured({ read, says }: MeasuredBar): string {
  return `${withUnit(read)}/${withUnit(says)}`;
}
