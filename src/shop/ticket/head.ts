import { shortened } from '../../draw/breaking.ts';
import type { Box, Point } from '../../draw/drawing.ts';
import { LARGE, PLAIN, words } from '../../draw/lettering.ts';
import { spelled, widthOf } from '../../draw/letters.ts';
import { line, outline, solid } from '../../draw/strokes.ts';
import type { Mm } from '../../measure/units.ts';
import { type Laid, layText } from '../laid.ts';
import type { Ticket } from './ticket.ts';

/** The name of a tube is read from the other side of the bench. */
export const NAME: Mm = 8;

/** Which tube, how many, and which hand, told apart by where the black bar stands. */
export function layHead({ name, number, of, hand, copies, pieces }: Ticket, box: Box, size: Mm): Laid {
  const badge = hand ? layHand(hand.words, box, size) : { marks: [], foot: box.top, left: box.right };
  const room = badge.left - box.left - 5;
  const title = layText(shortened(spelled(name), size, room), size, { x: box.left, y: box.top }, room);
  const twin = hand ? [`its twin, the other hand, is ticket ${hand.twin}`] : [];
  const about = [
    `Ticket ${number} of ${of}`,
    `make ${copies}${pieces ? `: ${pieces}${copies > 1 ? ' each' : ''}` : ''}`,
    ...twin,
  ].join('  ·  ');
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
