import type { Box, Mark } from '../leaf/drawing.ts';
import type { Mm } from '../measure/units.ts';
import { across, upright } from '../tiler/boxes.ts';
import type { FrontPages } from '../tiler/lay-sheets.ts';
import { LARGE, PLAIN, SMALL } from '../tiler/paragraph.ts';
import { line } from '../tiler/strokes.ts';
import type { Laid } from './laid.ts';
import type { Ticket } from './ticket.ts';
import { layAbreast, layColumn, type Manner } from './ticket-facts.ts';
import { layHead, NAME } from './ticket-head.ts';
import { layStep, laySteps } from './ticket-steps.ts';

/** Between what belongs together, and between the parts of a ticket. */
const AIR: Mm = 4;
const GUTTER: Mm = 5;
/** Wider lines are tiring to read. */
const WIDEST: Mm = 190;

const READ: Mm = 3.6;
const MANNERS: readonly Manner[] = [
  { steps: LARGE, facts: PLAIN, pictures: true },
  { steps: READ, facts: PLAIN, pictures: true },
  { steps: READ, facts: SMALL, pictures: true },
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
    const side = 0.35 * across(box);
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
