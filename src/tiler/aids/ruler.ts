import { across, upright } from '../../draw/boxes.ts';
import type { Box, Mark, Point } from '../../draw/drawing.ts';
import { heightOf, LARGE, type Line, linesOf, PLAIN, setLines, words } from '../../draw/lettering.ts';
import { line } from '../../draw/strokes.ts';
import type { SheetAsk } from '../../job/job.ts';
import { LEAST_PRINTABLE } from '../../job/paper/paper.ts';
import type { Printer } from '../../job/paper/printer.ts';
import { MM_PER_INCH, type Mm } from '../../measure/units.ts';
import { ABOVE_BAR, type BarLengths, BELOW_BAR, type Direction, pairOfBars, SHORT } from '../bars.ts';
import { furnish } from '../furniture.ts';
import type { LaidSheets } from '../lay-sheets.ts';
import { LINE_ROOM } from '../page.ts';
import type { Placement } from '../sheets.ts';
import { oneSheet, pagesForAid } from './one-sheet.ts';

/** From the bar in inches to the one in mm over it. */
const PITCH: Mm = 6;
/** A strip with the long bars and white beside them. */
const STRIP: Mm = BELOW_BAR + PITCH + ABOVE_BAR + 6;
const WIDEST_COLUMN: Mm = 130;
/** What a person writes on: a line's length and the height it needs. */
const BLANK: Mm = 26;
const BLANK_FROM: Mm = 52;
const ROW: Mm = 9;
const BETWEEN: Mm = 5;
const INDENT: Mm = 6;

/** How much of a roll it takes. */
const OFF_ROLL: Mm = 600;

/**
 * The scale sheet: beside the bars of every sheet the longest that the paper takes, each way, and how to save what they
 * measure. Always upright, as printers are saved. On paper with no room for longer bars there are none.
 */
export function rulerSheet(ask: SheetAsk, printer?: Printer): LaidSheets {
  const [page] = pagesForAid(ask, printer, OFF_ROLL);
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
    const at = { x: printable.left + LINE_ROOM, y: printable.top - PITCH - ABOVE_BAR };
    bars.push({ drawing: pairOfBars('long bars across', 'across', along, PITCH), at, turn: 0 });
  }
  if (aloft) {
    const at = { x: printable.right - BELOW_BAR, y: printable.bottom + LINE_ROOM };
    bars.push({ drawing: pairOfBars('long bars up', 'up', aloft, PITCH), at, turn: 1 });
  }
  return oneSheet(
    page,
    furniture,
    instructions(furniture.content, along ?? SHORT, aloft ?? SHORT, printer !== undefined),
    bars,
  );
}

/** The longest bars in whole centimetres and whole inches. */
function longest(room: Mm): BarLengths {
  const free = room - 2 * LINE_ROOM;
  return { mm: Math.floor(free / 10) * 10, inches: Math.floor(free / MM_PER_INCH) };
}

/** The words and the lines to write on; on paper with little room, what to type and no more. */
function instructions(content: Box, along: BarLengths, aloft: BarLengths, drawn: boolean): Mark[] {
  const width = Math.min(WIDEST_COLUMN, across(content) - 2 * INDENT);
  const set = (text: string, size: Mm = PLAIN): Line[] => linesOf(text, size, width);
  const [first, second] = [measuring(set), saving(set, along, aloft, drawn)];
  const left = content.left + INDENT;
  const needed = heightOf([...first, ...second]) + 2 * ROW + BETWEEN + 2 * INDENT;
  if (needed > upright(content)) {
    const short = [...set('Scale sheet', LARGE), ...set('Measure, then:'), ...set(command(along, aloft))];
    return setLines(short, { x: left, y: content.top });
  }
  const top = content.top - INDENT;
  const rows = top - heightOf(first);
  return [
    ...setLines(first, { x: left, y: top }),
    ...blank('across', along, { x: left + INDENT, y: rows - ROW }),
    ...blank('up', aloft, { x: left + INDENT, y: rows - 2 * ROW }),
    ...setLines(second, { x: left, y: rows - 2 * ROW - BETWEEN }),
  ];
}

type Set = (text: string, size?: Mm) => Line[];

const GAP: Line = { text: '', size: PLAIN };

function measuring(set: Set): Line[] {
  return [
    ...set('Scale sheet', LARGE),
    GAP,
    ...set('1. Print this sheet at 100 % (actual size) and let it lie for some minutes.'),
    ...set(
      '2. Measure one bar each way with a steel rule, the longest you can: from the middle of one end tick to the middle of the other. Write down:',
    ),
  ];
}

function saving(set: Set, along: BarLengths, aloft: BarLengths, drawn: boolean): Line[] {
  const third = drawn
    ? 'This sheet is drawn for a saved printer, so its bars should read true. If they don’t, print it without --printer, measure, and save anew, as in:'
    : 'Save what you read, and what the bar says. Half a millimetre short across and true up would be:';
  return [
    ...set(`3. ${third}`),
    ...set(command(along, aloft)),
    GAP,
    ...set('4. Print for it, at the same settings and on the same paper:'),
    ...set('copeleaf print JOB --printer "my printer"'),
    GAP,
    ...set(
      'More than 1.5 % off, or both ways alike by more than 1 %, is a wrong setting of the viewer or the printer: print again.',
    ),
  ];
}

function command(along: BarLengths, aloft: BarLengths): string {
  return `copeleaf printer add "my printer" --across ${along.mm - 0.5}mm/${along.mm}mm --up ${aloft.mm}mm/${aloft.mm}mm`;
}

function blank(axis: Direction, { mm, inches }: BarLengths, at: Point): Mark[] {
  const text = `${axis}, the bar of ${mm} mm or ${inches} in:`;
  const from = at.x + BLANK_FROM;
  return [
    words(text, PLAIN, at),
    line('frame', { x: from, y: at.y - 0.6 }, { x: from + BLANK, y: at.y - 0.6 }),
  ];
}
