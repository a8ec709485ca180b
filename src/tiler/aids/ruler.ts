import { across, upright } from '../../draw/boxes.ts';
import type { Box, Mark, Point } from '../../draw/drawing.ts';
import {
  heightOf,
  LARGE,
  linesOf,
  PLAIN,
  setLines,
  words as setWords,
  type TextLine,
} from '../../draw/lettering.ts';
import { line } from '../../draw/strokes.ts';
import type { SheetAsk } from '../../job/job.ts';
import { LEAST_PRINTABLE } from '../../job/paper/paper.ts';
import type { Printer } from '../../job/paper/printer.ts';
import type { Said } from '../../measure/said.ts';
import { MM_PER_INCH, type Mm } from '../../measure/units.ts';
import type { Language } from '../../words/language.ts';
import { asWritten } from '../../words/said.ts';
import { BARS_HEIGHT, type BarLengths, bars, HALF_BARS, SHORT } from '../bars.ts';
import { furnish } from '../furniture.ts';
import type { LaidSheets } from '../lay-sheets.ts';
import { LINE_ROOM } from '../page.ts';
import type { Placement } from '../sheets.ts';
import { namedAid, oneSheet, pagesForAid } from './one-sheet.ts';

/** A strip with the long bars and white beside them. */
const STRIP: Mm = BARS_HEIGHT + 6;
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
export function rulerSheet(ask: SheetAsk, words: Language, printer?: Printer): LaidSheets {
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
  const named = namedAid(words.aids.ruler.subject, ask, words, printer);
  const furniture = furnish({ ...page, printable: inner }, named);
  const along = high ? longest(across(printable)) : undefined;
  const aloft = wide ? longest(upright(printable) - (high ? STRIP : 0)) : undefined;
  const long: Placement[] = [];
  if (along) {
    const at = { x: printable.left + LINE_ROOM, y: printable.top - HALF_BARS };
    long.push({ drawing: bars('across', words, along, 'long-bars-across'), at, turn: 0 });
  }
  if (aloft) {
    const at = { x: printable.right - HALF_BARS, y: printable.bottom + LINE_ROOM };
    long.push({ drawing: bars('up', words, aloft, 'long-bars-up'), at, turn: 1 });
  }
  return oneSheet(
    page,
    furniture,
    instructions(furniture.content, along ?? SHORT, aloft ?? SHORT, printer !== undefined, words),
    long,
  );
}

/** The longest bars in whole centimetres and whole inches. */
function longest(room: Mm): BarLengths {
  const free = room - 2 * LINE_ROOM;
  return { mm: Math.floor(free / 10) * 10, inches: Math.floor(free / MM_PER_INCH) };
}

/** The words and the lines to write on; on paper with little room, what to type and no more. */
function instructions(
  content: Box,
  along: BarLengths,
  aloft: BarLengths,
  drawn: boolean,
  { aids: { ruler } }: Language,
): Mark[] {
  const width = Math.min(WIDEST_COLUMN, across(content) - 2 * INDENT);
  const set = (text: Said, size: Mm = PLAIN): TextLine[] => linesOf(text, 'aid', size, width);
  const [first, second] = [measuring(set, ruler), saving(set, along, aloft, drawn, ruler)];
  const left = content.left + INDENT;
  const needed = heightOf([...first, ...second]) + 2 * ROW + BETWEEN + 2 * INDENT;
  if (needed > upright(content)) {
    const short = [
      ...set(ruler.title, LARGE),
      ...set(ruler.measureThen),
      ...set(ruler.command(along, aloft)),
    ];
    return setLines(short, { x: left, y: content.top });
  }
  const top = content.top - INDENT;
  const rows = top - heightOf(first);
  return [
    ...setLines(first, { x: left, y: top }),
    ...blank(ruler.barIs('across', along), { x: left + INDENT, y: rows - ROW }),
    ...blank(ruler.barIs('up', aloft), { x: left + INDENT, y: rows - 2 * ROW }),
    ...setLines(second, { x: left, y: rows - 2 * ROW - BETWEEN }),
  ];
}

type Set = (text: Said, size?: Mm) => TextLine[];

const GAP: TextLine = { text: asWritten(''), fact: 'aid', size: PLAIN };

function measuring(set: Set, ruler: Language['aids']['ruler']): TextLine[] {
  return [...set(ruler.title, LARGE), GAP, ...ruler.measuring.flatMap((step) => set(step))];
}

function saving(
  set: Set,
  along: BarLengths,
  aloft: BarLengths,
  drawn: boolean,
  ruler: Language['aids']['ruler'],
): TextLine[] {
  return [
    ...set(ruler.save(drawn)),
    ...set(ruler.command(along, aloft)),
    GAP,
    ...ruler.print.flatMap((step) => set(step)),
    GAP,
    ...set(ruler.wrongSetting),
  ];
}

function blank(text: Said, at: Point): Mark[] {
  const from = at.x + BLANK_FROM;
  return [
    setWords(text, 'aid', PLAIN, at),
    line('frame', { x: from, y: at.y - 0.6 }, { x: from + BLANK, y: at.y - 0.6 }),
  ];
}
