import type { SheetAsk } from '../../job/job.ts';
import { LEAST_PRINTABLE } from '../../job/paper.ts';
import type { Printer } from '../../job/printer.ts';
import type { Box, Mark } from '../../leaf/drawing.ts';
import { MM_PER_INCH, type Mm } from '../../measure/units.ts';
import { ABOVE_BAR, type BarLengths, BELOW_BAR, pairOfBars } from '../bars.ts';
import { across, upright } from '../boxes.ts';
import { furnish } from '../furniture.ts';
import type { LaidSheets } from '../lay-sheets.ts';
import { broken, heightOf, LARGE, type Line, PLAIN, setLines, words } from '../paragraph.ts';
import type { Placement } from '../sheets.ts';
import { line } from '../strokes.ts';
import { oneSheet, pagesForAid } from './one-sheet.ts';

/** From the bar in inches to the one in mm over it. */
const PITCH: Mm = 6;
/** A strip with the long bars and white beside them. */
const STRIP: Mm = BELOW_BAR + PITCH + ABOVE_BAR + 6;
/** Keeps half a line's width inside the margins. */
const HAIR: Mm = 0.3;
const WIDEST_COLUMN: Mm = 130;
/** What a person writes on: a line's length and the height it needs. */
const BLANK: Mm = 26;
const ROW: Mm = 9;

/**
 * The scale sheet: beside the bars of every sheet the longest that the paper takes, each way, and how to save what they
 * measure. Always upright, as printers are saved. On paper with no room for longer bars there are none.
 */
export function rulerSheet(ask: SheetAsk, printer?: Printer): LaidSheets {
  const [page] = pagesForAid(ask, printer);
  const { printable } = page;
  const wide = across(printable) - STRIP >= LEAST_PRINTABLE;
  const high = upright(printable) - STRIP >= LEAST_PRINTABLE;
  // The bars to read up stand at the right; the ones to read across, the longer of which cross their strip, at the head.
  const inner: Box = {
    ...printable,
    right: printable.right - (wide ? STRIP : 0),
    top: printable.top - (high ? STRIP : 0),
  };
  const named = { job: 'Scale sheet of a printer', paper: ask.paper.name, ...(printer && { printer }) };
  const furniture = furnish({ ...page, printable: inner }, named);
  const along = high ? longest(across(printable)) : undefined;
  const aloft = wide ? longest(upright(printable) - (high ? STRIP : 0)) : undefined;
  const bars: Placement[] = [];
  if (along) {
    const at = { x: printable.left + HAIR, y: printable.top - PITCH - ABOVE_BAR };
    bars.push({ drawing: pairOfBars('long bars across', 'across', along, PITCH), at, turn: 0 });
  }
  if (aloft) {
    const at = { x: printable.right - BELOW_BAR, y: printable.bottom + HAIR };
    bars.push({ drawing: pairOfBars('long bars up', 'up', aloft, PITCH), at, turn: 1 });
  }
  return oneSheet(page, furniture, instructions(furniture.content, along, aloft, printer), bars);
}

/** The longest bars in whole centimetres and whole inches. */
function longest(room: Mm): BarLengths {
  const free = room - 2 * HAIR;
  return { mm: Math.floor(free / 10) * 10, inches: Math.floor(free / MM_PER_INCH) };
}

function instructions(
  content: Box,
  along: BarLengths = { mm: 100, inches: 4 },
  aloft: BarLengths = { mm: 100, inches: 4 },
  printer?: Printer,
): Mark[] {
  const width = Math.min(WIDEST_COLUMN, across(content) - 12);
  const left = content.left + 8;
  const set = (text: string, size: Mm = PLAIN): Line[] =>
    broken(text, size, width).map((each) => ({ text: each, size }));
  const gap: Line = { text: '', size: PLAIN };
  const first: Line[] = [
    ...set('Scale sheet', LARGE),
    gap,
    ...set('1. Print this sheet at 100 % (actual size) and let it lie for some minutes.'),
    ...set(
      '2. Measure a bar each way with a steel rule, the longest you can: from the middle of one end tick to the middle of the other. Write down:',
    ),
  ];
  const second: Line[] = [
    ...set(
      printer
        ? '3. Bars that read true need nothing more. Else save the printer without --printer first:'
        : '3. Save what you read, and what the bar says. Half a millimetre short across and true up would be:',
    ),
    ...set(
      `copeleaf printer add "my printer" --across ${along.mm - 0.5}mm/${along.mm}mm --up ${aloft.mm}mm/${aloft.mm}mm`,
    ),
    gap,
    ...set('4. Print for it, at the same settings and on the same paper:'),
    ...set('copeleaf print JOB --printer "my printer"'),
    gap,
    ...set(
      'More than 1.5 % off, or both ways alike by more than 1 %, is a wrong setting of the viewer or the printer: print again.',
    ),
  ];
  const top = content.top - 6;
  const rowsTop = top - heightOf(first);
  const rows = [
    ['across', along],
    ['up', aloft],
  ] as const;
  const blanks = rows.flatMap(([name, { mm, inches }], index) =>
    blank(`${name}:  bar of ${mm} mm or ${inches} in`, left, rowsTop - ROW * (index + 1), width),
  );
  return [
    ...setLines(first, { x: left, y: top }),
    ...blanks,
    ...setLines(second, { x: left, y: rowsTop - ROW * rows.length - 5 }),
  ];
}

function blank(name: string, left: Mm, foot: Mm, width: Mm): Mark[] {
  const from = left + Math.min(62, width - BLANK);
  return [
    words(name, PLAIN, { x: left + 4, y: foot }),
    line('frame', { x: from, y: foot - 0.6 }, { x: from + BLANK, y: foot - 0.6 }),
  ];
}
