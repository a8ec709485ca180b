import type { Said } from '../../../measure/said.ts';
import type { Length, Mm } from '../../../measure/units.ts';
import { withUnit } from '../../../measure/write.ts';
import { asWritten, joined, type Objection, say } from '../../said.ts';
import { quantities } from '../quantities.ts';

type Measured = { readonly read: Length; readonly says: Length };

/** Papers, margins and printers as they are asked for, and what is wrong with them. */
export const paper = {
  /** All that a person can write for a paper. */
  known,
  wanted: (names: readonly string[]): Said => say`a paper: ${known(names)}`,
  /** `close` is the name that was probably meant. */
  notKnown: (close: string | undefined, names: readonly string[]): Objection => ({
    why: say`no paper of that name is known`,
    instead: close === undefined ? known(names) : say`${asWritten(close)}? Known are ${known(names)}`,
  }),
  roll: {
    misread: (why: Said): Objection => ({ why, instead: ROLL_WIDTH }),
    tooNarrow: (): Objection => ({ why: say`a roll is wider than 0`, instead: ROLL_WIDTH }),
    tooWide: (most: Mm): Objection => ({
      why: say`a PDF page is at most ${most} mm wide`,
      instead: ROLL_WIDTH,
    }),
  },
  pageTooLong: (most: Mm): Objection => ({
    why: say`a PDF page is at most ${most} mm long`,
    instead: say`a smaller paper`,
  }),
  noSides: (): Objection => ({
    why: say`a sheet has two sides longer than 0`,
    instead: say`a size such as 300x400mm`,
  }),
  /** Of a margin, or of the paper's thickness. */
  negative: (): Objection => ({
    why: say`it can't be less than 0`,
    instead: say`0 or more, such as 10mm`,
  }),
  over: (most: Mm): Objection => ({
    why: say`it is more than ${most} mm`,
    instead: say`a length up to ${most} mm`,
  }),
  tooSmall: (wide: Mm, high: Mm, name: string, least: Mm, units: 'mm' | 'in'): Objection => ({
    why: say`the margins leave ${quantities.limit(wide, units)} x ${quantities.limit(high, units)} of ${asWritten(name)} to print on, and ${quantities.one(least, units)} each way are needed`,
    instead: say`a larger paper or smaller margins`,
  }),

  barMisread: (why: Said): Objection => ({
    why,
    instead: say`what a rule read on a bar: 99.3mm on the bar of 100 mm, 3.97in on the bar of 4 in, 199.2mm/200mm on another`,
  }),
  barTooShort: (): Objection => ({
    why: say`half a millimetre misread on so short a bar is more than a printer is off`,
    instead: say`a bar of 100 mm, of 4 in or longer`,
  }),
  noReading: (read: Mm): Objection => ({
    why: say`${asWritten(read.toFixed(2))} mm is no reading of a bar, and a factor or a percentage is not taken`,
    instead: say`what the rule read, with its unit, as in 99.3mm or 3.97in`,
  }),
  offInAxis: (axis: 'across' | 'up', factor: number, cause: Objection): Objection => ({
    why: say`${asWritten(axis)}, that is ${percent(factor)} of what the bar says: ${cause.why}`,
    instead: cause.instead,
  }),
  offAlike: (across: number, up: number, cause: Objection): Objection => ({
    why: say`the sheet came out at ${percent(across)} across and ${percent(up)} up, alike in both: ${cause.why}`,
    instead: cause.instead,
  }),
  /** `99.3mm for 100mm`. */
  measured: ({ read, says }: Measured): Said =>
    say`${asWritten(withUnit(read))} for ${asWritten(withUnit(says))}`,

  /** Why a sheet came out at another size than it was drawn at, and what to do about it. */
  causes: {
    setting: (): Objection => ({
      why: say`a scale is set in the viewer or the printer, or the rule was misread`,
      instead: FULL_SIZE,
    }),
    'a4-on-letter': (): Objection => ({
      why: say`an A4 page was shrunk onto letter paper`,
      instead: say`sheets made with \`--paper letter\`, printed at 100 %`,
    }),
    'letter-on-a4': (): Objection => ({
      why: say`a letter page was shrunk onto A4 paper`,
      instead: say`sheets made with \`--paper A4\`, printed at 100 %`,
    }),
    'points-for-pixels': (): Objection => ({
      why: say`points (72 to the inch) were taken for pixels (96 to the inch)`,
      instead: FROM_A_VIEWER,
    }),
    'pixels-for-points': (): Objection => ({
      why: say`pixels (96 to the inch) were taken for points (72 to the inch)`,
      instead: FROM_A_VIEWER,
    }),
    'bar-of-4-in': (): Objection => ({
      why: say`this looks like the bar of 4 in, which is 101.6 mm`,
      instead: say`its reading with the bar named, as in 101.6mm/4in`,
    }),
    'bar-of-100-mm': (): Objection => ({
      why: say`this looks like the bar of 100 mm, which is 3.94 in`,
      instead: say`its reading in millimetres, as in 99.3mm`,
    }),
    'fit-to-page': (): Objection => ({
      why: say`"fit to page" or "shrink to fit" was on`,
      instead: FULL_SIZE,
    }),
  },
};

const ROLL_WIDTH = say`the width of the roll, as in roll 610mm or roll 24in`;
const FULL_SIZE = say`the sheet printed again at 100 % (actual size), and then measured`;
const FROM_A_VIEWER = say`the PDF printed from a PDF viewer, at 100 %`;

function known(names: readonly string[]): Said {
  return say`${joined(names.map(asWritten), ', ')}, its size as in 300x400mm, or a roll as in roll 610mm`;
}

function percent(factor: number): Said {
  return say`${asWritten((factor * 100).toFixed(1))} %`;
}
