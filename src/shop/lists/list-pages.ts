import { across } from '../../draw/boxes.ts';
import type { Box } from '../../draw/drawing.ts';
import type { FactName } from '../../draw/facts.ts';
import { TEXT, tellingOf } from '../../draw/lettering.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { FrontBox } from '../../tiler/front.ts';
import type { Language } from '../../words/language.ts';
import { heading, type LaidItem, layText } from '../laid.ts';
import { type BlankRow, lengthless } from './cut-list.ts';
import { cutTable } from './cut-table.ts';
import type { EndTask, Stage } from './order.ts';
import { orderItems } from './order-rows.ts';
import type { StockPlan } from './stock.ts';
import { barScale, stockBars } from './stock-bars.ts';
import { blankName, boundInWords, leftInWords } from './stock-in-words.ts';

/** What the lists of a job are made from. */
export interface Lists {
  readonly words: Language;
  readonly units: 'mm' | 'in';
  readonly rows: readonly BlankRow[];
  readonly stages: readonly Stage[];
  /** The number of each tube's ticket, by its solution. */
  readonly ticketOf: (task: EndTask) => number;
  readonly stock?: StockPlan;
  /** What to know of a frame, if it is one: its open ends, and what to mend. */
  readonly notes?: readonly Said[];
}

/** Wider lists than this are tiring to read across. */
const WIDEST: Mm = 240;

/** The cautions, the cut list, what comes from which length of stock, and the order of work, in rows. */
export function listBoxes(lists: Lists, room: Box): readonly FrontBox[] {
  const { units, words, rows, stock } = lists;
  const { cut } = words.lists;
  const width = widthIn(room);
  const items = [
    heading(cut.title),
    ...cutTable(rows, units, width, words),
    note(cut.note(units)),
    ...(lists.notes ?? []).map(note),
    ...(stock ? stockItems(stock, units, words) : []),
    ...orderItems(lists.stages, lists.ticketOf, width, lists.notes !== undefined, words),
  ];
  return [...cautionBoxes(words, units, room), ...boxesOf(items, room)];
}

/** What to beware of, once a file. */
export function cautionBoxes(
  { lists: { cautions } }: Language,
  units: 'mm' | 'in',
  room: Box,
): readonly FrontBox[] {
  return boxesOf([heading(cautions.title), noteOf(cautions.note(units), 'caution')], room);
}

/** What comes from which length of stock, where there is some. */
export function stockBoxes({ stock, units, words }: Lists, room: Box): readonly FrontBox[] {
  return stock ? boxesOf(stockItems(stock, units, words), room) : [];
}

function widthIn(room: Box): Mm {
  return Math.min(across(room), WIDEST);
}

function boxesOf(items: readonly LaidItem[], room: Box): readonly FrontBox[] {
  const width = widthIn(room);
  return items.map(({ lay, heading }) => ({
    width: across(room),
    height: -lay({ x: 0, y: 0 }, width).foot,
    ...(heading && { heading }),
    draw: (at) => tellingOf({ place: 'list' }, lay(at, width).marks),
  }));
}

function note(text: Said): LaidItem {
  return noteOf(text, 'note');
}

function noteOf(text: Said, fact: FactName): LaidItem {
  return {
    lay: (at, width) => {
      const laid = layText(text, fact, TEXT, at, width);
      return { ...laid, foot: laid.foot - 0.8 };
    },
  };
}

function stockItems(plan: StockPlan, units: 'mm' | 'in', words: Language): LaidItem[] {
  const { stock } = words.lists;
  const scale = barScale(plan);
  const sizes = plan.sizes.flatMap((size) => {
    const left = leftInWords(size, units, words);
    return [
      { ...note(size.size), heading: true },
      ...stockBars(size, scale, units, words).map((bar, i, { length }) => ({
        ...bar,
        heading: i === length - 1,
      })),
      note(boundInWords(size, units, words)),
      ...(left ? [note(left)] : []),
    ];
  });
  const unknown = plan.unknown.map((solution) => ({
    name: blankName({ solution }, words),
    why: lengthless(solution),
  }));
  return [
    heading(stock.title),
    note(stock.rack(plan.rack, plan.sizes.length, plan.kerf)),
    ...sizes,
    ...(unknown.length > 0 ? [note(stock.allLengthless(unknown))] : []),
  ];
}
