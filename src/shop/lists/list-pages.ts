import { across } from '../../draw/boxes.ts';
import type { Box, Mark, Point } from '../../draw/drawing.ts';
import { PLAIN, SMALL } from '../../draw/lettering.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Language } from '../../words/language.ts';
import { heading, type Laid, type LaidItem, layText } from '../laid.ts';
import { type CutRow, lengthless, listNote } from './cut-list.ts';
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
  readonly rows: readonly CutRow[];
  readonly stages: readonly Stage[];
  /** The number of each tube's ticket, by its solution. */
  readonly ticketOf: (task: EndTask) => number;
  readonly stock?: StockPlan;
}

/** Wider lists than this are tiring to read across. */
const WIDEST: Mm = 240;

/** The cautions, the cut list, the order of work, and what comes from which length of stock, on as many pages as they need. */
export function listPages(lists: Lists, room: Box): readonly (readonly Mark[])[] {
  const box = { ...room, right: Math.min(room.right, room.left + WIDEST) };
  const { units, words, rows, stock } = lists;
  const { cautions: caution, cut } = words.lists;
  const cautions = [heading(caution.title), ...caution.notes.map(note)];
  const wide = across(box) > WIDE;
  const left = wide ? across(box) - ASIDE - GUTTER : across(box);
  const items = [
    ...(wide ? [] : cautions),
    heading(cut.title),
    ...cutTable(rows, units, left, words),
    small(listNote(rows, units, words)),
    ...orderItems(lists.stages, lists.ticketOf, across(box), words),
    ...(stock ? stockItems(stock, units, words) : []),
  ];
  if (!wide) return paged(items, box);
  const at = { x: box.right - ASIDE, y: box.top };
  const aside = layAll(cautions, at, ASIDE);
  const [first = [], ...others] = paged(items, box, { foot: aside.foot, width: left });
  return [[...aside.marks, ...first], ...others];
}

/** On wider sheets than this the cautions stand beside the cut list, in a column of this width. */
const WIDE: Mm = 200;
const ASIDE: Mm = 66;
const GUTTER: Mm = 8;

/** Items under one another. */
function layAll(items: readonly LaidItem[], at: Point, width: Mm): Laid {
  const marks: Mark[] = [];
  let foot = at.y;
  for (const item of items) {
    const laid = item.lay({ x: at.x, y: foot }, width);
    marks.push(...laid.marks);
    foot = laid.foot;
  }
  return { marks, foot };
}

function note(text: Said): LaidItem {
  return noteOf(text, PLAIN);
}

function small(text: Said): LaidItem {
  return noteOf(text, SMALL);
}

function noteOf(text: Said, size: Mm): LaidItem {
  return {
    lay: (at, width) => {
      const laid = layText(text, 'note', size, at, width);
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
      ...stockBars(size, scale, units, words),
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
    note(stock.rack(plan.rack, plan.sizes.length)),
    ...sizes,
    ...(unknown.length > 0 ? [note(stock.allLengthless(unknown))] : []),
  ];
}

/** What stands at the right of the first page, down to its foot, and the width that it leaves. */
interface Aside {
  readonly foot: Mm;
  readonly width: Mm;
}

/** Items down one page after another; a heading goes over with what follows it. */
function paged(items: readonly LaidItem[], box: Box, aside?: Aside): readonly (readonly Mark[])[] {
  const pages: Mark[][] = [[]];
  const widthAt = (top: Mm): Mm =>
    aside && pages.length === 1 && top > aside.foot ? aside.width : across(box);
  let top = box.top;
  for (const [i, item] of items.entries()) {
    const needed = footOf(items, i, { x: box.left, y: top }, widthAt);
    if (needed < box.bottom && top < box.top) {
      pages.push([]);
      top = box.top;
    }
    const laid = item.lay({ x: box.left, y: top }, widthAt(top));
    pages.at(-1)?.push(...laid.marks);
    top = laid.foot;
  }
  return pages;
}

function footOf(items: readonly LaidItem[], place: number, at: Point, widthAt: (top: Mm) => Mm): Mm {
  const item = items[place];
  if (!item) return at.y;
  const { foot } = item.lay(at, widthAt(at.y));
  return item.heading ? footOf(items, place + 1, { x: at.x, y: foot }, widthAt) : foot;
}
