import { across, upright } from '../draw/boxes.ts';
import { shortened } from '../draw/breaking.ts';
import type { Box, Words } from '../draw/drawing.ts';
import { heightOf, LARGE, linesOf, PLAIN, SMALL, setLines, type TextLine } from '../draw/lettering.ts';
import { spelled, widthOf } from '../draw/letters.ts';
import type { Printer } from '../job/paper/printer.ts';
import type { Said } from '../measure/said.ts';
import type { Mm } from '../measure/units.ts';
import type { Language } from '../words/language.ts';
import { asWritten, joined } from '../words/said.ts';
import { ABOVE_BAR, BAR_PITCH, BARS_HEIGHT, BARS_LENGTH, BELOW_BAR, bars } from './bars.ts';
import { LINE_ROOM, type Page } from './page.ts';
import type { Placement } from './sheets.ts';

/** White between the strips of furniture and what lies on the sheet. */
const AIR: Mm = 4;
/** The words stand beside the bars where this much is left for them, else over them. */
const LEAST_COLUMN: Mm = 66;
const MOST_JOB_LINES = 2;

/** Between the bars to read across, where the words beside them leave room for it. */
const WIDE_PITCH: Mm = 7;

/** What stands on every sheet of a set, and the room it leaves. */
export interface Furniture {
  /** The same on every sheet: the bars, and the words that matter. */
  readonly placements: readonly Placement[];
  /** What to beware of, for the sheets that are cut by; the pages before them say it in their own words. */
  readonly cautions?: Placement;
  /** Room for leaves, clear of the furniture. */
  readonly content: Box;
  /** The line that names one sheet of the set, from 1. */
  readonly sheetLine: (sheet: number, of: number) => Words[];
}

/** What the furniture's words name. */
export interface SheetWords {
  readonly job: string;
  readonly paper: string;
  readonly words: Language;
  /** The printer that the sheets are drawn for, if any. */
  readonly printer?: Printer;
  /** Whether what lies on the sheet is cut by: then it carries the cautions. */
  readonly cutBy?: boolean;
}

/**
 * A strip at the foot with the bars to read across and the words, and a strip at the left with the bars to read up. On
 * tiles these are the sides that are trimmed off, so that no strip lies under a finished leaf.
 */
export function furnish(page: Page, named: SheetWords): Furniture {
  const { left, bottom, right, top } = page.printable;
  const { words } = named;
  const column = columnOf(page, named);
  const contentLeft = left + BARS_HEIGHT + AIR;
  const side = column.left + widestOf(column.lines) + 2 * AIR;
  const besideWords =
    named.cutBy && cautionsIn({ left: side, right, foot: column.foot }, words.sheets.cautions, column.top);
  const overWords =
    named.cutBy &&
    !besideWords &&
    cautionsIn({ left: contentLeft, right, foot: column.top + CLEAR }, words.sheets.cautions);
  const cautions = besideWords || overWords;
  const lineWidth = besideWords ? side - AIR - column.left : right - column.left;
  const pitch = column.beside ? widePitch(page.printable) : BAR_PITCH;
  return {
    placements: [
      { drawing: bars('across', words, pitch), at: { x: left + LINE_ROOM, y: bottom + BELOW_BAR }, turn: 0 },
      standingBars(page.printable, column.top, words),
      wordsIn(column, right - column.left),
    ],
    ...(cautions && { cautions }),
    content: {
      left: contentLeft,
      bottom: (overWords ? overWords.at.y : column.top) + AIR,
      right: right - LINE_ROOM,
      top: top - LINE_ROOM,
    },
    sheetLine: (sheet, of) =>
      setLines([fitting(words.sheets.number(sheet, of, spelled(asWritten(named.paper))), lineWidth)], {
        x: column.left,
        y: column.top,
      }),
  };
}

/** The words on every sheet, the sheet's number over them: beside the bars to read across, or over these. */
interface Column {
  readonly beside: boolean;
  readonly left: Mm;
  readonly foot: Mm;
  readonly lines: readonly TextLine[];
  /** Where its lines end, and where the sheet's number does. */
  readonly linesTop: Mm;
  readonly top: Mm;
}

function columnOf({ printable, sideways }: Page, named: SheetWords): Column {
  const beside = across(printable) >= BARS_LENGTH + 2 * AIR + LEAST_COLUMN;
  const left = printable.left + (beside ? BARS_LENGTH + 2 * AIR : BARS_HEIGHT + AIR);
  const foot = beside ? printable.bottom : printable.bottom + BARS_HEIGHT + AIR / 2;
  const lines = shared(named, sideways, printable.right - left);
  const linesTop = foot + heightOf(lines);
  return { beside, left, foot, lines, linesTop, top: linesTop + heightOf([{ size: LARGE }]) };
}

function wordsIn({ left, foot, lines, linesTop }: Column, width: Mm): Placement {
  const box = { left: 0, bottom: foot - linesTop, right: width, top: 0 };
  const drawing = { name: 'foot-words', box, marks: setLines(lines, { x: 0, y: 0 }) };
  return { drawing, at: { x: left, y: linesTop }, turn: 0 };
}

/** As far apart as the bars to read up, which stand over them, leave room for. */
function widePitch(printable: Box): Mm {
  const room = upright(printable) - BARS_LENGTH - BELOW_BAR - ABOVE_BAR;
  return Math.max(BAR_PITCH, Math.min(WIDE_PITCH, room));
}

/** Between the sheet's number and the cautions over it. */
const CLEAR: Mm = 0.8;

/** Narrower, the cautions are a tower that nobody reads. */
const NARROWEST_CAUTIONS: Mm = 50;

/** The cautions as wide as there is room, from its foot up; undefined where they would reach over `top`. */
function cautionsIn(
  room: { left: Mm; right: Mm; foot: Mm },
  cautions: Said,
  top: Mm = Number.POSITIVE_INFINITY,
): Placement | undefined {
  const width = room.right - room.left;
  if (width < NARROWEST_CAUTIONS) return undefined;
  const lines = linesOf(cautions, 'caution', SMALL, width);
  const high = heightOf(lines);
  if (room.foot + high > top) return undefined;
  const box = { left: 0, bottom: -high, right: width, top: 0 };
  const drawing = { name: 'cautions', box, marks: setLines(lines, { x: 0, y: 0 }) };
  return { drawing, at: { x: room.left, y: room.foot + high }, turn: 0 };
}

function widestOf(lines: readonly TextLine[]): Mm {
  return Math.max(0, ...lines.map(({ text, size }) => widthOf(text, size)));
}

/** The bars to read up stand over the strip at the foot; on the smallest sheets there is just room over the other bars. */
function standingBars({ left, top }: Box, stripTop: Mm, words: Language): Placement {
  const foot = Math.min(stripTop + AIR, top - BARS_LENGTH);
  return { drawing: bars('up', words, BAR_PITCH), at: { x: left + ABOVE_BAR + BAR_PITCH, y: foot }, turn: 1 };
}

function shared(named: SheetWords, sideways: boolean, width: Mm): TextLine[] {
  const set = (text: Said, size: Mm): TextLine[] => linesOf(text, 'sheet', size, width);
  return [
    ...atMost(MOST_JOB_LINES, set(spelled(asWritten(named.job)), PLAIN), width),
    ...(named.printer ? set(drawnFor(named.printer, named.words), SMALL) : []),
    ...named.words.sheets.beforeCutting.flatMap((text) => set(text, SMALL)),
    ...(sideways && !named.printer ? set(named.words.sheets.sideways, SMALL) : []),
  ];
}

/** The bars read true only from this printer, at the setting it was measured at. */
function drawnFor({ name, across, up }: Printer, { paper, sheets }: Language): Said {
  return spelled(sheets.drawnFor(name, paper.measured(across), paper.measured(up)));
}

/** A name longer than its lines is cut short, and says so with an ellipsis. */
function atMost(count: number, lines: readonly TextLine[], width: Mm): TextLine[] {
  if (lines.length <= count) return [...lines];
  const kept = lines.slice(0, count);
  const last = kept.pop();
  const rest = joined(
    lines.slice(count - 1).map(({ text }) => text),
    ' ',
  );
  return last === undefined ? [] : [...kept, { ...last, text: shortened(rest, last.size, width) }];
}

function fitting(text: Said, width: Mm): TextLine {
  const size = [LARGE, PLAIN].find((each) => widthOf(text, each) <= width) ?? SMALL;
  return { text: shortened(text, size, width), fact: 'sheet', size };
}
