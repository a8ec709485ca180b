import type { Box, Mark, Point } from '../leaf/drawing.ts';
import { spelled, widthOf } from '../leaf/letters.ts';
import { viewsOf } from '../leaf/side-view.ts';
import type { Mm } from '../measure/units.ts';
import { across, upright } from '../tiler/boxes.ts';
import type { FrontPages } from '../tiler/lay-sheets.ts';
import { LARGE, PLAIN, SMALL, shortened, words } from '../tiler/paragraph.ts';
import { line, outline, solid } from '../tiler/strokes.ts';
import { type Laid, layFacts, layText, tickBox } from './laid.ts';
import type { Ticket } from './ticket.ts';
import { twistPicture } from './twist-picture.ts';

/** The name of a tube is read from the other side of the bench. */
const NAME: Mm = 8;
/** Between what belongs together, and between the parts of a ticket. */
const AIR: Mm = 4;
const GUTTER: Mm = 5;
/** Wider lines are tiring to read. */
const WIDEST: Mm = 190;
const PICTURE: Mm = 34;

/** How much a ticket shows and how large its steps are set, from what reads best to what goes on the smallest paper. */
interface Manner {
  readonly steps: Mm;
  readonly facts?: Mm;
  readonly pictures: boolean;
  /** Pictures are left white, where only the room they take is asked for. */
  readonly blank?: boolean;
}

const READ: Mm = 3.6;
const MANNERS: readonly Manner[] = [
  { steps: LARGE, facts: PLAIN, pictures: true },
  { steps: READ, facts: PLAIN, pictures: true },
  { steps: READ, facts: PLAIN, pictures: false },
  { steps: PLAIN, facts: SMALL, pictures: true },
  { steps: PLAIN, facts: SMALL, pictures: false },
  { steps: SMALL, facts: SMALL, pictures: false },
  { steps: SMALL, pictures: false },
];

/**
 * A ticket on one page where it has room for it at any size; else its steps go on over as many as they need. A page is
 * drawn when it is asked for.
 */
export function ticketPages(ticket: Ticket, room: Box): ReturnType<FrontPages> {
  const box = { ...room, right: Math.min(room.right, room.left + (isWide(room) ? 1.45 : 1) * WIDEST) };
  for (const manner of MANNERS) {
    const { foot } = layTicket(ticket, box, { ...manner, blank: true });
    if (foot >= box.bottom) return [() => layTicket(ticket, box, manner).marks];
  }
  return overPages(ticket, box).map((marks) => () => marks);
}

function isWide(room: Box): boolean {
  return across(room) > 1.15 * upright(room);
}

function layTicket(ticket: Ticket, box: Box, manner: Manner): Laid {
  const head = layHead(ticket, box, manner.steps >= PLAIN ? NAME : LARGE);
  const top = head.foot - AIR;
  if (manner.facts === undefined) {
    const steps = laySteps(ticket, manner.steps, { x: box.left, y: top }, across(box));
    return { marks: [...head.marks, ...steps.marks], foot: steps.foot };
  }
  if (isWide(box)) {
    const side = 0.33 * across(box);
    const facts = layColumn(ticket, manner, { ...box, top, right: box.left + side });
    const left = box.left + side + 2 * GUTTER;
    const steps = laySteps(ticket, manner.steps, { x: left, y: top }, box.right - left);
    return { marks: [...head.marks, ...facts.marks, ...steps.marks], foot: Math.min(facts.foot, steps.foot) };
  }
  const facts = layAbreast(ticket, manner, { ...box, top });
  const under = facts.foot - AIR;
  const rule = line('frame', { x: box.left, y: under }, { x: box.right, y: under });
  const steps = laySteps(ticket, manner.steps, { x: box.left, y: under - AIR / 2 }, across(box));
  return { marks: [...head.marks, ...facts.marks, rule, ...steps.marks], foot: steps.foot };
}

/** Which tube, how many, and which hand, told apart by where the black bar stands. */
function layHead({ name, number, of, hand, copies }: Ticket, box: Box, size: Mm): Laid {
  const badge = hand ? layHand(hand.words, box, size) : { marks: [], foot: box.top, left: box.right };
  const room = badge.left - box.left - GUTTER;
  const title = layText(shortened(spelled(name), size, room), size, { x: box.left, y: box.top }, room);
  const twin = hand ? [`its twin, the other hand, is ticket ${hand.twin}`] : [];
  const about = [`Ticket ${number} of ${of}`, `make ${copies}`, ...twin].join('  ·  ');
  const second = layText(about, size === NAME ? LARGE : PLAIN, { x: box.left, y: title.foot }, room);
  const foot = Math.min(second.foot, badge.foot) - 1;
  const rule = line('frame', { x: box.left, y: foot }, { x: box.right, y: foot });
  return { marks: [...badge.marks, ...title.marks, ...second.marks, rule], foot };
}

/** A frame with a black bar at its left as drawn, at its right for the opposite hand. */
function layHand(text: string, box: Box, size: Mm): Laid & { left: Mm } {
  const wide = widthOf(text, size * 0.6) + size * 1.6;
  const [left, top, foot] = [box.right - wide, box.top, box.top - size * 1.3];
  const bar = size * 0.55;
  const from = text === 'as drawn' ? left : box.right - bar;
  const corners = (x: Mm, width: Mm): [Point, Point, Point, Point] => [
    { x, y: top },
    { x: x + width, y: top },
    { x: x + width, y: foot },
    { x, y: foot },
  ];
  const middle = left + (text === 'as drawn' ? bar : 0) + (wide - bar - widthOf(text, size * 0.6)) / 2;
  return {
    marks: [
      outline('frame', ...corners(left, wide)),
      solid('frame', ...corners(from, bar)),
      words(text, size * 0.6, { x: middle, y: foot + size * 0.42 }),
    ],
    foot,
    left,
  };
}

/** Tube and ends beside one another. */
function layAbreast(ticket: Ticket, manner: Manner, box: Box): Laid {
  const count = 1 + ticket.ends.length;
  const width = (across(box) - (count - 1) * GUTTER) / count;
  const blocks = blocksOf(ticket, manner);
  const laid = blocks.map((block, i) => {
    const left = box.left + i * (width + GUTTER);
    return layBlock(block, manner, { ...box, left, right: left + width });
  });
  const foot = Math.min(...laid.map((each) => each.foot));
  if (!manner.pictures) return { marks: laid.flatMap(({ marks }) => marks), foot };
  const pictures = blocks.map(({ draw }, i) => {
    const left = box.left + i * (width + GUTTER);
    return draw({ left, right: left + width, top: foot, bottom: foot - PICTURE });
  });
  const lowest = Math.min(...pictures.map((each) => each.foot));
  return { marks: [...laid, ...pictures].flatMap(({ marks }) => marks), foot: lowest };
}

/** Tube and ends under one another, each with its picture at its right. */
function layColumn(ticket: Ticket, manner: Manner, box: Box): Laid {
  const marks: Mark[] = [];
  let top = box.top;
  for (const block of blocksOf(ticket, manner)) {
    const width = manner.pictures ? 0.56 * across(box) : across(box);
    const facts = layBlock(block, manner, { ...box, top, right: box.left + width });
    const right = { left: box.left + width + 2, right: box.right, top, bottom: top - PICTURE };
    const picture = manner.pictures ? block.draw(right) : { marks: [], foot: top };
    marks.push(...facts.marks, ...picture.marks);
    top = Math.min(facts.foot, picture.foot) - AIR / 2;
  }
  return { marks, foot: top };
}

interface Block {
  readonly title: string;
  readonly facts: Ticket['tube'];
  readonly draw: (box: Box) => Laid;
}

function blocksOf(ticket: Ticket, { blank = false }: Manner): readonly Block[] {
  const twist = (box: Box): Laid => {
    const draw = twistPicture(ticket.solution);
    if (!draw) return { marks: [], foot: box.top };
    const marks = blank ? [] : draw({ ...box, bottom: box.bottom + CAPTION });
    return captioned(marks, 'heels, seen from end B', box);
  };
  return [
    { title: 'Tube', facts: ticket.tube, draw: twist },
    ...ticket.ends.map(({ name, facts, cope }) => ({
      title: `End ${name}`,
      facts,
      draw: (box: Box): Laid => {
        if (!cope) return { marks: [], foot: box.top };
        const [view] = viewsOf(cope, name);
        const marks = blank ? [] : view.draw({ ...box, bottom: box.bottom + CAPTION });
        return captioned(marks, view.caption, box);
      },
    })),
  ];
}

const CAPTION: Mm = 3.4;

function captioned(marks: readonly Mark[], caption: string, box: Box): Laid {
  const wide = widthOf(caption, SMALL);
  const at = { x: Math.max(box.left, (box.left + box.right - wide) / 2), y: box.bottom + CAPTION };
  const under = layText(caption, SMALL, at, box.right - at.x);
  return { marks: [...marks, ...under.marks], foot: under.foot };
}

function layBlock({ title, facts }: Block, { facts: size = PLAIN }: Manner, box: Box): Laid {
  const head = layText(title, size === SMALL ? PLAIN : LARGE, { x: box.left, y: box.top }, across(box));
  const rows = layFacts(facts, size, { x: box.left, y: head.foot }, across(box));
  return { marks: [...head.marks, ...rows.marks], foot: rows.foot };
}

/** More boxes than this beside a step are not told apart. */
const MOST_BOXES = 4;

/** The steps, each with a box to tick for each copy. */
function laySteps(ticket: Ticket, size: Mm, at: Point, width: Mm): Laid {
  const marks: Mark[] = [];
  let foot = at.y;
  for (const step of ticket.steps) {
    const laid = layStep(step, ticket.copies, size, { x: at.x, y: foot }, width);
    marks.push(...laid.marks);
    foot = laid.foot;
  }
  return { marks, foot };
}

function layStep(step: string, copies: number, size: Mm, at: Point, width: Mm): Laid {
  const boxes = copies <= MOST_BOXES ? copies : 1;
  const pitch = 1.05 * size;
  const indent = boxes * pitch + 0.5 * size;
  const ticks = Array.from({ length: boxes }, (_, i) => tickBox({ x: at.x + i * pitch, y: at.y }, size));
  const laid = layText(step, size, { x: at.x + indent, y: at.y }, width - indent);
  return { marks: [...ticks, ...laid.marks], foot: laid.foot - 0.35 * size };
}

/** On paper too small for a whole ticket. */
function overPages(ticket: Ticket, box: Box): readonly (readonly Mark[])[] {
  const pages: Mark[][] = [];
  let page: Mark[] = [];
  let foot = Number.NEGATIVE_INFINITY;
  for (const step of ticket.steps) {
    let laid = layStep(step, ticket.copies, PLAIN, { x: box.left, y: foot }, across(box));
    if (laid.foot < box.bottom || pages.length === 0) {
      const head = layHead(ticket, box, LARGE);
      page = [...head.marks];
      pages.push(page);
      laid = layStep(step, ticket.copies, PLAIN, { x: box.left, y: head.foot - 1 }, across(box));
    }
    page.push(...laid.marks);
    foot = laid.foot;
  }
  return pages;
}
