import { across, upright } from '../draw/boxes.ts';
import { broken, shortened } from '../draw/breaking.ts';
import type { Box, Mark } from '../draw/drawing.ts';
import { type Block, extentOf, FOOT, lettered } from '../draw/lettering.ts';
import { spelled } from '../draw/letters.ts';
import type { Printer } from '../job/paper/printer.ts';
import type { Said } from '../measure/said.ts';
import type { Mm } from '../measure/units.ts';
import type { Language } from '../words/language.ts';
import { asWritten, joined } from '../words/said.ts';
import { BARS_HEIGHT, BARS_LENGTH, bars, HALF_BARS } from './bars.ts';
import { LINE_ROOM, type Page } from './page.ts';
import type { Placement } from './sheets.ts';

/** White between the strips of furniture and what lies on the sheet, and between parts of the furniture. */
const AIR: Mm = 2;
const CLEAR: Mm = 0.2;
/** The words stand beside the bars where this much is left for them, else over them. */
const LEAST_COLUMN: Mm = 66;
/** What furniture leaves of the printable part, at the least: what is only of use is said in few words, or not, where it would not. */
const LEAST_FREE = 0.75;

/** What stands on every sheet of a set, and the room it leaves. */
export interface Furniture {
  /** The same on every sheet: the bars, and the words that matter. */
  readonly placements: readonly Placement[];
  /** What to beware of, for the first sheet of a set that no pages of words come before. */
  readonly cautions: readonly Placement[];
  /** Room for leaves, clear of the furniture. */
  readonly content: Box;
  /** The line that names one sheet of the set, from 1. */
  readonly sheetLine: (sheet: number, of: number) => Mark[];
}

/** What the furniture's words name. */
export interface SheetWords {
  readonly job: string;
  readonly paper: string;
  readonly words: Language;
  /** The printer that the sheets are drawn for, if any. */
  readonly printer?: Printer;
  /** Whether the first sheet carries the cautions; room for them is left on all. */
  readonly cautioned?: boolean;
}

/**
 * A strip at the foot with the bars to read across and the words, and a strip at the left with the bars to read up. On
 * tiles these are the sides that are trimmed off, so that no strip lies under a finished leaf.
 */
export function furnish(page: Page, named: SheetWords): Furniture {
  const full = footOf(page, named, true);
  const { column, name } = leavesEnough(page.printable, full.column) ? full : footOf(page, named, false);
  const { left, bottom, right, top } = page.printable;
  const { words } = named;
  const side = left + BARS_HEIGHT + AIR;
  const cautions = blockIn(named.cautioned ? words.sheets.cautions : asWritten(''), right - side);
  const under = column.top + (named.cautioned ? CLEAR + extentOf(cautions).height : 0);
  return {
    placements: [
      { drawing: bars('across', words), at: { x: left + LINE_ROOM, y: bottom + HALF_BARS }, turn: 0 },
      { drawing: bars('up', words), at: { x: left + HALF_BARS, y: bottom + BARS_HEIGHT + CLEAR }, turn: 1 },
      placed('foot-words', column.words, column.left, column.bottom),
    ],
    cautions: named.cautioned ? [placed('cautions', cautions, side, column.top + CLEAR)] : [],
    content: { left: side, bottom: under + AIR, right: right - LINE_ROOM, top: top - LINE_ROOM },
    sheetLine: (sheet, of) => {
      const text = spelled(
        joined([words.sheets.number(sheet, of, spelled(name)), asWritten(named.job)], ' · '),
      );
      const line = {
        fact: 'sheet' as const,
        lines: [shortened(text, FOOT, right - column.left)],
        size: FOOT,
      };
      return lettered(line, column.left, column.top - extentOf(line).height);
    },
  };
}

/** The words on every sheet, the sheet's number over them: beside the bars to read across, or over these. */
interface Column {
  readonly left: Mm;
  readonly bottom: Mm;
  readonly words: Block;
  /** Over the sheet's number. */
  readonly top: Mm;
}

/** The foot with all its words, or with those that must be; and what the paper is called there. */
function footOf(page: Page, named: SheetWords, full: boolean): { column: Column; name: Said } {
  const { printable } = page;
  const { printer, words } = named;
  const { beforeCutting, sideways, drawnFor, forPrinter } = words.sheets;
  const beside = across(printable) >= BARS_LENGTH + 2 * AIR + LEAST_COLUMN;
  const left = printable.left + (beside ? BARS_LENGTH + 2 * AIR : BARS_HEIGHT + AIR);
  const bottom = printable.bottom + (beside ? 0 : BARS_HEIGHT + CLEAR);
  const told =
    printer && drawnFor(printer.name, words.paper.measured(printer.across), words.paper.measured(printer.up));
  const more = told ?? (page.sideways ? sideways : undefined);
  const text = joined([...beforeCutting, ...(full && more ? [more] : [])], ' ');
  const lines = broken(spelled(text), FOOT, printable.right - left);
  const [number = asWritten('')] = lines;
  const top = bottom + extentOf({ lines: [number, ...lines], size: FOOT }).height;
  const paper = asWritten(named.paper);
  return {
    column: { left, bottom, words: { fact: 'sheet', lines, size: FOOT }, top },
    name: printer && !full ? forPrinter(paper, printer.name) : paper,
  };
}

function leavesEnough(printable: Box, { top }: Column): boolean {
  const all = across(printable) * upright(printable);
  const free = (across(printable) - BARS_HEIGHT - AIR - LINE_ROOM) * (printable.top - LINE_ROOM - top - AIR);
  return free >= LEAST_FREE * all;
}

function blockIn(text: Said, width: Mm): Block {
  return { fact: 'caution', lines: broken(text, FOOT, width), size: FOOT };
}

function placed(name: string, block: Block, left: Mm, bottom: Mm): Placement {
  const { width, height } = extentOf(block);
  const box = { left: 0, bottom: 0, right: width, top: height };
  return { drawing: { name, box, marks: lettered(block, 0, 0) }, at: { x: left, y: bottom }, turn: 0 };
}
