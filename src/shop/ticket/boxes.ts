import { across, upright } from '../../draw/boxes.ts';
import type { Box, Mark, Point } from '../../draw/drawing.ts';
import { TEXT, tellingOf, WORTH } from '../../draw/lettering.ts';
import type { Fact } from '../../leaf/card/fact.ts';
import type { Mm } from '../../measure/units.ts';
import { takesTurned } from '../../tiler/free-room.ts';
import { type FrontBox, halfOf, type OnSheet, type SheetsOf } from '../../tiler/front.ts';
import { type Laid, type LaidItem, layFacts, layText } from '../laid.ts';
import { type Step, step } from '../steps/step.ts';
import { layHead, ruled } from './head.ts';
import { boxesFor, layStep } from './lay-steps.ts';
import { type Pictured, panelRows } from './panels.ts';
import type { Ticket } from './ticket.ts';

/** Between two tickets. */
const BETWEEN: Mm = 8;
/** On wider sheets the steps stand in two columns. */
const TWO_COLUMNS: Mm = 215;
const GUTTER: Mm = 8;

/**
 * Tickets, each in one box where a sheet has room for all of it, half as wide as the sheet where two stand beside one another; else in
 * its rows, which go on over as many pages as they need. What is in a box is made and drawn when it is asked for, so that of a
 * thousand tickets the pictures need not all be kept. The sheets of leaves take no more room than the `widest`. A ticket that is alone stands under what takes
 * `above` mm of its sheet.
 */
export function ticketBoxes(
  tickets: readonly Ticket[],
  room: Box,
  widest: SheetsOf,
  above: Mm = 0,
): readonly FrontBox[] {
  const [width, half, high] = [across(room), halfOf(room), upright(room)];
  const alone = tickets.length === 1;
  const ways = [
    ...(alone ? waysIn(width, high - above - BETWEEN, ['alone', ...SHARED]) : []),
    ...(!alone && half > LEAST_HALF ? waysIn(half, high) : []),
    ...waysIn(width, high),
  ];
  return tickets.flatMap((ticket) => {
    for (const way of ways) {
      const rows = (): readonly LaidItem[] => rowsOf(ticket, room, way, way.width >= TWO_COLUMNS);
      const needed = heightOf(rows(), way.width, widest(ticket.name));
      if (needed <= way.high) return [whole(ticket, rows, way.width, needed)];
    }
    return parted(ticket, rowsOf(ticket, room, { width, pictured: 'shared' }, false), width, widest);
  });
}

/** A way to lay a ticket, and what height it may take. */
interface Way {
  readonly width: Mm;
  readonly high: Mm;
  readonly pictured: Pictured;
}

const SHARED: readonly Pictured[] = ['shared', 'snug', 'close'];

function waysIn(width: Mm, high: Mm, all: readonly Pictured[] = SHARED): Way[] {
  return all.map((pictured) => ({ width, high, pictured }));
}

/** Narrower columns are tiring to read. */
const LEAST_HALF: Mm = 110;

function whole(ticket: Ticket, rows: () => readonly LaidItem[], width: Mm, height: Mm): FrontBox {
  return {
    width,
    height,
    white: BETWEEN,
    draw: (at, sheetsOf) => told(ticket, stacked(rows(), at, width, sheetsOf(ticket.name)).marks),
  };
}

function parted(ticket: Ticket, rows: readonly LaidItem[], width: Mm, widest: SheetsOf): FrontBox[] {
  const goesOn: LaidItem = {
    lay: (at, wide) => {
      const name = layText(ticket.words.sheets.more(ticket.name), 'name', WORTH, at, wide);
      return ruled({ ...name, foot: name.foot - 1 }, at, wide);
    },
  };
  const boxed = (row: LaidItem): FrontBox => ({
    width,
    height: heightOf([row], width, widest(ticket.name)),
    ...(row.heading && { heading: true }),
    draw: (at, sheetsOf) => told(ticket, row.lay(at, width, sheetsOf(ticket.name)).marks),
  });
  const whose = boxed(goesOn);
  return rows.map((row, i) => ({ ...boxed(row), ...(i === 0 ? { white: BETWEEN } : { whose }) }));
}

function told({ name }: Ticket, marks: readonly Mark[]): Mark[] {
  return tellingOf({ place: 'ticket', tube: name }, marks);
}

/** The head, the pictures, and the steps, one under the other where they stand in one column. */
function rowsOf(
  ticket: Ticket,
  room: Box,
  { width, pictured }: Pick<Way, 'width' | 'pictured'>,
  twoColumns: boolean,
): readonly LaidItem[] {
  const panels = panelRows(ticket, width, pictured);
  const last = panels.at(-1);
  const head: LaidItem = {
    heading: true,
    lay: (at, wide, sheets) => ruled(layHead(ticket, at, wide, sheets), at, wide),
  };
  const pictures = panels.map((row) =>
    row === last ? { ...row, lay: (at: Point, wide: Mm) => ruled(row.lay(at, wide), at, wide) } : row,
  );
  const ticks = boxesFor(ticket);
  const whose: LaidItem = {
    lay: (at, wide) => layText(ticket.words.ticket.ticks, 'heading', TEXT, at, wide),
  };
  const steps = [
    ...(ticks.some((hand) => hand) ? [whose] : []),
    ...[...tapeStep(ticket, room), ...ticket.steps].map(
      (step): LaidItem => ({ lay: (at, wide) => layStep(step, ticks, TEXT, at, wide) }),
    ),
  ];
  const columns = twoColumns ? [{ lay: (at: Point, wide: Mm) => inTwo(steps, at, wide) }] : steps;
  return [head, ...placeRows(ticket), ...pictures, ...columns];
}

/** White between what lands on one tube and where the next goes. */
const BETWEEN_PLACES: Mm = 1.5;

/** Where the tubes go, and what lands on each: one under the other, ruled off. */
function placeRows({ places }: Ticket): readonly LaidItem[] {
  const all = places.flat();
  return places.map((facts, i) => ({
    ...(isFollowed(facts, places[i + 1]) && { heading: true }),
    lay: ({ x, y }, wide) => {
      const white = lands(places[i - 1]) && !lands(facts) ? BETWEEN_PLACES : 0;
      const at = { x, y: y - white };
      const laid = layFacts(facts, TEXT, at, wide, all);
      return i === places.length - 1 ? ruled(laid, at, wide) : laid;
    },
  }));
}

/** What lands on a tube stays with its name. */
function isFollowed([goes]: readonly Fact[], next: readonly Fact[] | undefined): boolean {
  return goes?.fact === 'place' && lands(next);
}

function lands([first]: readonly Fact[] = []): boolean {
  return first?.fact === 'landing';
}

/** Of a leaf that no sheet takes whole. */
function tapeStep({ ends, words }: Ticket, room: Box): Step[] {
  if (ends.every(({ wrap }) => !wrap || takesTurned(room, wrap))) return [];
  return [{ ...step('step:tape', words.steps.blank.tape), once: true }];
}

/** Rows in two columns, the first the shortest that is as high as the second. */
function inTwo(rows: readonly LaidItem[], at: Point, width: Mm): Laid {
  const wide = (width - GUTTER) / 2;
  const heights = rows.map((row) => heightOf([row], wide));
  const whole = heights.reduce((sum, height) => sum + height, 0);
  let [count, high] = [0, 0];
  while (2 * high < whole) high += heights[count++] ?? whole;
  const one = stacked(rows.slice(0, count), at, wide);
  const other = stacked(rows.slice(count), { x: at.x + wide + GUTTER, y: at.y }, wide);
  return { marks: [...one.marks, ...other.marks], foot: Math.min(one.foot, other.foot) };
}

function stacked(rows: readonly LaidItem[], at: Point, width: Mm, sheets?: readonly OnSheet[]): Laid {
  const marks: Mark[] = [];
  let foot = at.y;
  for (const row of rows) {
    const laid = row.lay({ x: at.x, y: foot }, width, sheets);
    marks.push(...laid.marks);
    foot = laid.foot;
  }
  return { marks, foot };
}

function heightOf(rows: readonly LaidItem[], width: Mm, sheets?: readonly OnSheet[]): Mm {
  return -stacked(rows, { x: 0, y: 0 }, width, sheets).foot;
}
