import { across } from '../../draw/boxes.ts';
import type { Box, Mark, Point } from '../../draw/drawing.ts';
import { PLAIN, SMALL } from '../../draw/lettering.ts';
import type { Mm } from '../../measure/units.ts';
import { heading, type Item, type Laid, layText } from '../laid.ts';
import { type CutRow, lengthless, listNote } from './cut-list.ts';
import { cutTable } from './cut-table.ts';
import type { EndTask, Stage } from './order.ts';
import { orderItems } from './order-rows.ts';
import type { StockPlan } from './stock.ts';
import { barScale, stockBars } from './stock-bars.ts';
import { blankName, boundInWords, leftInWords, rackInWords } from './stock-in-words.ts';

/** What the lists of a job are made from. */
export interface Lists {
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
  const cautions = [heading('Before you begin'), ...CAUTIONS.map(note)];
  const wide = across(box) > WIDE;
  const left = wide ? across(box) - ASIDE - GUTTER : across(box);
  const items = [
    ...(wide ? [] : cautions),
    heading('Cut list'),
    ...cutTable(lists.rows, lists.units, left),
    small(listNote(lists.rows, lists.units)),
    ...orderItems(lists.stages, lists.ticketOf, across(box)),
    ...(lists.stock ? stockItems(lists.stock, lists.units) : []),
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
function layAll(items: readonly Item[], at: Point, width: Mm): Laid {
  const marks: Mark[] = [];
  let foot = at.y;
  for (const item of items) {
    const laid = item.lay({ x: at.x, y: foot }, width);
    marks.push(...laid.marks);
    foot = laid.foot;
  }
  return { marks, foot };
}

const CAUTIONS = [
  'Measure the bars of a sheet before you cut by it. Guard eyes, ears, hands and lungs; cut edges are sharp.',
  'Hot work sets things alight: keep away what burns, and look again half an hour later. Fume of zinc and of plating is poisonous: take it off, and breathe none of it. Sealed tube is vented before it is welded.',
  'What carries people or loads (cages, trailers, pressure, lifting) follows the governing rules and local code, and is designed and welded by those licensed for it: a paper template proves neither strength nor weld.',
];

function note(text: string): Item {
  return noteOf(text, PLAIN);
}

function small(text: string): Item {
  return noteOf(text, SMALL);
}

function noteOf(text: string, size: Mm): Item {
  return {
    lay: (at, width) => {
      const laid = layText(text, size, at, width);
      return { ...laid, foot: laid.foot - 0.8 };
    },
  };
}

function stockItems(plan: StockPlan, units: 'mm' | 'in'): Item[] {
  const scale = barScale(plan);
  const sizes = plan.sizes.flatMap((size) => {
    const left = leftInWords(size, units);
    return [
      { ...note(size.size), heading: true },
      ...stockBars(size, scale, units),
      note(boundInWords(size, units)),
      ...(left ? [note(left)] : []),
    ];
  });
  const unknown = plan.unknown.map((solution) => `${blankName({ solution })} (${lengthless(solution)})`);
  return [
    heading('Stock'),
    note(rackInWords(plan)),
    ...sizes,
    ...(unknown.length > 0
      ? [note(`Without a length, so cut from none of these: ${unknown.join(', ')}.`)]
      : []),
  ];
}

/** What stands at the right of the first page, down to its foot, and the width that it leaves. */
interface Aside {
  readonly foot: Mm;
  readonly width: Mm;
}

/** Items down one page after another; a heading goes over with what follows it. */
function paged(items: readonly Item[], box: Box, aside?: Aside): readonly (readonly Mark[])[] {
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

function footOf(items: readonly Item[], place: number, at: Point, widthAt: (top: Mm) => Mm): Mm {
  const item = items[place];
  if (!item) return at.y;
  const { foot } = item.lay(at, widthAt(at.y));
  return item.heading ? footOf(items, place + 1, { x: at.x, y: foot }, widthAt) : foot;
}
