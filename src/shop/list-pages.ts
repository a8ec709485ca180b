import type { Box, Mark, Point } from '../leaf/drawing.ts';
import type { Mm } from '../measure/units.ts';
import { across } from '../tiler/boxes.ts';
import { LARGE, PLAIN } from '../tiler/paragraph.ts';
import type { CutRow } from './cut-list.ts';
import { cutTable } from './cut-table.ts';
import { type Item, layText, tickBox } from './laid.ts';
import type { Stage } from './order.ts';
import type { StockPlan } from './stock.ts';
import { stockBars } from './stock-bars.ts';
import { blankName, boundInWords, leftInWords } from './stock-in-words.ts';

/** What the lists of a job are made from. */
export interface Lists {
  readonly units: 'mm' | 'in';
  readonly rows: readonly CutRow[];
  readonly stages: readonly Stage[];
  /** The number of each tube's ticket, by its solution. */
  readonly ticketOf: (stage: Stage['tasks'][number]) => number;
  readonly stock?: StockPlan;
}

/** Wider lists than this are tiring to read across. */
const WIDEST: Mm = 240;

/** The cut list, the order of work, what comes from which length of stock, and the cautions, on as many pages as they need. */
export function listPages(lists: Lists, room: Box): readonly (readonly Mark[])[] {
  const box = { ...room, right: Math.min(room.right, room.left + WIDEST) };
  const items = [
    heading('Cut list'),
    ...cutTable(lists.rows, lists.units, across(box)),
    heading('Order of work'),
    note('All ends onto one header together. A box for each end: tick it when it is cut.'),
    ...lists.stages.flatMap((stage, i) => stageItems(stage, i, lists)),
    ...(lists.stock ? stockItems(lists.stock, lists.units) : []),
    heading('Before you begin'),
    ...CAUTIONS.map(note),
  ];
  return paged(items, box);
}

const CAUTIONS = [
  'Measure the bars of a sheet before you cut by it. Guard eyes, ears, hands and lungs; cut edges are sharp.',
  'Hot work sets things alight: keep away what burns, and look again half an hour later. Fume of zinc and of plating is poisonous: take it off, and breathe none of it. Sealed tube is vented before it is welded.',
  'What carries people or loads (cages, trailers, pressure, lifting) follows the governing rules and local code, and is designed and welded by those licensed for it: a paper template proves neither strength nor weld.',
];

function heading(text: string): Item {
  return {
    heading: true,
    lay: (at, width) => {
      const laid = layText(text, LARGE, { x: at.x, y: at.y - 2 }, width);
      return { ...laid, foot: laid.foot - 0.6 };
    },
  };
}

function note(text: string): Item {
  return {
    lay: (at, width) => {
      const laid = layText(text, PLAIN, at, width);
      return { ...laid, foot: laid.foot - 0.8 };
    },
  };
}

function stageItems({ setting, tasks }: Stage, place: number, { ticketOf }: Lists): Item[] {
  const title = `${place + 1}. ${setting.name}`;
  const head: Item = {
    heading: true,
    lay: (at, width) => layText(title, PLAIN, { x: at.x, y: at.y - 1 }, width),
  };
  const rows = tasks.map((task): Item => {
    const { tube } = task.solution;
    const hand = tube.pair ? `, ${task.solution.hand === 'opposite' ? 'opposite hand' : 'as drawn'}` : '';
    const copies = tube.copies > 1 ? ` (${tube.copies})` : '';
    const text = `end ${task.end} of ${tube.name}${hand}${copies}, ticket ${ticketOf(task)}`;
    return {
      lay: (at, width) => {
        const laid = layText(text, PLAIN, { x: at.x + 9, y: at.y }, width - 9);
        return { marks: [tickBox({ x: at.x + 4.5, y: at.y }, PLAIN), ...laid.marks], foot: laid.foot };
      },
    };
  });
  return [head, ...rows];
}

function stockItems(plan: StockPlan, units: 'mm' | 'in'): Item[] {
  const sizes = plan.sizes.flatMap((size) => {
    const left = leftInWords(size, units);
    return [
      { ...note(size.size), heading: true },
      ...stockBars(size, units),
      note(boundInWords(size, units)),
      ...(left ? [note(left)] : []),
    ];
  });
  const unknown = plan.unknown.map((solution) => blankName({ solution, length: 0 }));
  return [
    heading('Stock'),
    ...(plan.sizes.length > 1 ? [note('The lengths told are taken to be there of each size.')] : []),
    ...sizes,
    ...(unknown.length > 0
      ? [note(`Length not known yet, so cut from none of these: ${unknown.join(', ')}.`)]
      : []),
  ];
}

/** Items down one page after another; a heading goes over with what follows it. */
function paged(items: readonly Item[], box: Box): readonly (readonly Mark[])[] {
  const pages: Mark[][] = [[]];
  let top = box.top;
  for (const [i, item] of items.entries()) {
    const needed = footOf(items, i, { x: box.left, y: top }, across(box));
    if (needed < box.bottom && top < box.top) {
      pages.push([]);
      top = box.top;
    }
    const laid = item.lay({ x: box.left, y: top }, across(box));
    pages.at(-1)?.push(...laid.marks);
    top = laid.foot;
  }
  return pages;
}

function footOf(items: readonly Item[], place: number, at: Point, width: Mm): Mm {
  const item = items[place];
  if (!item) return at.y;
  const { foot } = item.lay(at, width);
  return item.heading ? footOf(items, place + 1, { x: at.x, y: foot }, width) : foot;
}
