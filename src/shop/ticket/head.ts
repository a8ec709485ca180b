import { shortened } from '../../draw/breaking.ts';
import type { Box, Point } from '../../draw/drawing.ts';
import { LARGE, PLAIN, words as run } from '../../draw/lettering.ts';
import { spelled, widthOf } from '../../draw/letters.ts';
import { line, outline, solid } from '../../draw/strokes.ts';
import { partOf, type Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import { type Laid, layText } from '../laid.ts';
import type { Ticket } from './ticket.ts';

/** The name of a tube is read from the other side of the bench. */
export const NAME: Mm = 8;

/** Which tube, how many, and which hand, told apart by where the black bar stands. */
export function layHead(ticket: Ticket, box: Box, size: Mm): Laid {
  const { name, hand, words } = ticket;
  const badge = hand
    ? layHand(words.ticket.hand(hand.own), hand.own === 'opposite', box, size)
    : { marks: [], foot: box.top, left: box.right };
  const room = badge.left - box.left - 5;
  const title = layText(
    partOf(name, shortened(spelled(name), size, room)),
    'name',
    size,
    { x: box.left, y: box.top },
    room,
  );
  const second = layText(
    words.ticket.about(ticket),
    'about',
    size === NAME ? LARGE : PLAIN,
    { x: box.left, y: title.foot },
    room,
  );
  const foot = Math.min(second.foot, badge.foot) - 1;
  const rule = line('frame', { x: box.left, y: foot }, { x: box.right, y: foot });
  return { marks: [...badge.marks, ...title.marks, ...second.marks, rule], foot };
}

/** A frame with a black bar at its left as drawn, at its right for the opposite hand. */
function layHand(text: Said, opposite: boolean, box: Box, size: Mm): Laid & { left: Mm } {
  const wide = widthOf(text, size * 0.6) + size * 1.6;
  const [left, top, foot] = [box.right - wide, box.top, box.top - size * 1.3];
  const bar = size * 0.55;
  const from = opposite ? box.right - bar : left;
  const corners = (x: Mm, width: Mm): [Point, Point, Point, Point] => [
    { x, y: top },
    { x: x + width, y: top },
    { x: x + width, y: foot },
    { x, y: foot },
  ];
  const middle = left + (opposite ? 0 : bar) + (wide - bar - widthOf(text, size * 0.6)) / 2;
  return {
    marks: [
      outline('frame', ...corners(left, wide)),
      solid('frame', ...corners(from, bar)),
      run(text, 'name', size * 0.6, { x: middle, y: foot + size * 0.42 }),
    ],
    foot,
    left,
  };
}
