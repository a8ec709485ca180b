import { across, moved, upright } from '../../draw/boxes.ts';
import type { Box, Mark } from '../../draw/drawing.ts';
import { LARGE, PLAIN, SMALL, tellingOf } from '../../draw/lettering.ts';
import { line } from '../../draw/strokes.ts';
import type { Mm } from '../../measure/units.ts';
import type { FrontBox } from '../../tiler/front.ts';
import type { Laid } from '../laid.ts';
import { layAbreast, layColumn, type TicketStyle } from './facts.ts';
import { layHead, NAME } from './head.ts';
import { layStep, laySteps } from './lay-steps.ts';
import { laySaw, SAW } from './saw.ts';
import type { Ticket } from './ticket.ts';

/** Between what belongs together, and between the parts of a ticket. */
const AIR: Mm = 4;
const GUTTER: Mm = 5;
/** Wider lines are tiring to read. */
const WIDEST: Mm = 190;

const GREAT: Mm = 4.5;
const READ: Mm = 3.54;
const NEAR: Mm = 3.4;
const FAIR: Mm = 3.1;
/** 7 pt: no smaller while there is room for it. */
const CLOSE: Mm = 2.5;
/** A picture where room is least. */
const LOW: Mm = 26;
const MANNERS: readonly TicketStyle[] = [
  { steps: GREAT, saw: SAW, facts: NEAR, pictures: 'beside' },
  { steps: LARGE, saw: SAW, facts: NEAR, pictures: 'beside' },
  { steps: LARGE, saw: SAW, facts: FAIR, pictures: 'beside' },
  { steps: LARGE, saw: SAW, facts: FAIR, pictures: 'under' },
  { steps: READ, saw: SAW, facts: NEAR, pictures: 'beside' },
  { steps: READ, saw: SAW, facts: FAIR, pictures: 'beside' },
  { steps: READ, saw: SAW, facts: FAIR, pictures: 'under' },
  { steps: READ, saw: SAW, facts: PLAIN, pictures: 'beside' },
  { steps: READ, saw: SAW, facts: PLAIN, pictures: 'under' },
  { steps: READ, saw: SAW, facts: PLAIN, pictures: 'beside', picture: LOW },
  { steps: READ, saw: SAW, facts: CLOSE, pictures: 'beside' },
  { steps: READ, saw: SAW, facts: CLOSE, pictures: 'under' },
  { steps: READ, saw: SAW, facts: CLOSE, pictures: 'beside', picture: LOW },
  { steps: READ, saw: SAW, facts: SMALL, pictures: 'beside' },
  { steps: READ, saw: SAW, facts: SMALL, pictures: 'under' },
  { steps: READ, saw: SAW, facts: SMALL, pictures: 'beside', picture: LOW },
  { steps: READ, saw: SAW, facts: PLAIN, pictures: 'none' },
  { steps: PLAIN, saw: SAW, facts: SMALL, pictures: 'beside' },
  { steps: PLAIN, saw: SAW, facts: SMALL, pictures: 'none' },
  { steps: SMALL, saw: LARGE, facts: SMALL, pictures: 'none' },
  { steps: SMALL, saw: LARGE, pictures: 'none' },
];

/**
 * Tickets, each on one page where it has room for it at any size, all of these in the largest size in which every one of
 * them has: the ticket of one tube is read beside that of another. The steps of one that has no room go on over as many
 * pages as they need. A ticket is drawn when it is asked for.
 */
export function ticketBoxes(tickets: readonly Ticket[], room: Box): readonly FrontBox[] {
  const box = { ...room, right: Math.min(room.right, room.left + (isWide(room) ? 1.45 : 1) * WIDEST) };
  const fits = (ticket: Ticket, manner: TicketStyle): boolean =>
    layTicket(ticket, box, { ...manner, blank: true }).foot >= box.bottom;
  const whole = tickets.filter((ticket) => MANNERS.toReversed().some((manner) => fits(ticket, manner)));
  const manner = firstThatFits(whole, fits);
  const width = across(room);
  return tickets.flatMap((ticket): FrontBox[] => {
    if (!manner || !whole.includes(ticket)) {
      return overPages(ticket, box).map((marks) => ({
        width,
        height: upright(box),
        draw: () => told(ticket, marks),
      }));
    }
    const { foot } = layTicket(ticket, box, { ...manner, blank: true });
    const draw: FrontBox['draw'] = ({ x, y }) => {
      const place = moved(box, { x: x - box.left, y: y - box.top });
      return told(ticket, layTicket(ticket, place, manner).marks);
    };
    return [{ width, height: box.top - foot, white: BETWEEN_TICKETS, draw }];
  });
}

/** Over a ticket that shares its page. */
const BETWEEN_TICKETS: Mm = 8;

function told({ solution: { tube, hand } }: Ticket, marks: readonly Mark[]): Mark[] {
  return tellingOf({ place: 'ticket', tube: tube.name, hand }, marks);
}

/** The first manner for all tickets; the one that did not fit last is tried first in the next. */
function firstThatFits(
  tickets: readonly Ticket[],
  fits: (ticket: Ticket, manner: TicketStyle) => boolean,
): TicketStyle | undefined {
  let hardest: Ticket | undefined;
  return MANNERS.find((manner) => {
    if (hardest && !fits(hardest, manner)) return false;
    const failing = tickets.find((ticket) => ticket !== hardest && !fits(ticket, manner));
    hardest = failing ?? hardest;
    return failing === undefined;
  });
}

/** How much of a wide sheet the facts take beside the steps. */
const SIDE = { beside: 0.35, under: 0.27, none: 0.27 } as const;

function isWide(room: Box): boolean {
  return across(room) > 1.15 * upright(room);
}

function layTicket(ticket: Ticket, box: Box, manner: TicketStyle): Laid {
  const head = layHead(ticket, box, manner.steps >= PLAIN ? NAME : LARGE);
  const saw = laySaw(ticket, manner.saw, { ...box, top: head.foot - 1 });
  const upper = [...head.marks, ...saw.marks];
  const top = saw.foot - AIR;
  if (manner.facts === undefined) {
    const steps = laySteps(ticket, manner.steps, { x: box.left, y: top }, across(box));
    return { marks: [...upper, ...steps.marks], foot: steps.foot };
  }
  if (isWide(box)) {
    const side = SIDE[manner.pictures] * across(box);
    const facts = layColumn(ticket, manner, { ...box, top, right: box.left + side });
    const left = box.left + side + 2 * GUTTER;
    const steps = laySteps(ticket, manner.steps, { x: left, y: top }, box.right - left);
    return { marks: [...upper, ...facts.marks, ...steps.marks], foot: Math.min(facts.foot, steps.foot) };
  }
  const facts = layAbreast(ticket, manner, { ...box, top });
  const under = facts.foot - AIR;
  const rule = line('frame', { x: box.left, y: under }, { x: box.right, y: under });
  const steps = laySteps(ticket, manner.steps, { x: box.left, y: under - AIR / 2 }, across(box));
  return { marks: [...upper, ...facts.marks, rule, ...steps.marks], foot: steps.foot };
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
      const saw = pages.length > 0 ? head : laySaw(ticket, LARGE, { ...box, top: head.foot - 1 });
      page = pages.length > 0 ? [...head.marks] : [...head.marks, ...saw.marks];
      pages.push(page);
      laid = layStep(step, ticket.copies, PLAIN, { x: box.left, y: saw.foot - 1 }, across(box));
    }
    page.push(...laid.marks);
    foot = laid.foot;
  }
  return pages;
}
