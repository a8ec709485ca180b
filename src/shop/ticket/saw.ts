import type { Box, Mark } from '../../draw/drawing.ts';
import { PLAIN } from '../../draw/lettering.ts';
import { spelled, widthOf } from '../../draw/letters.ts';
import { line } from '../../draw/strokes.ts';
import type { Mm } from '../../measure/units.ts';
import { type Laid, layText } from '../laid.ts';
import type { Ticket } from './ticket.ts';

/** Letters 3.5 mm high: a number on the ticket is read with both hands at the saw. */
export const SAW: Mm = 4.9;

/** Between two of the numbers. */
const APART: Mm = 7;

/** The numbers that are read from afar, beside one another, each under its name. */
export function laySaw({ saw }: Ticket, size: Mm, box: Box): Laid {
  if (saw.length === 0) return { marks: [], foot: box.top };
  const marks: Mark[] = [];
  let [left, top, foot] = [box.left, box.top, box.top];
  for (const { fact, label, text } of saw) {
    const wide = Math.max(widthOf(label, PLAIN), widthOf(spelled(text), size)) + 0.5;
    if (left > box.left && left + wide > box.right) [left, top] = [box.left, foot];
    const name = layText(label, fact, PLAIN, { x: left, y: top }, box.right - left);
    const number = layText(text, fact, size, { x: left, y: name.foot + 0.1 * size }, box.right - left);
    marks.push(...name.marks, ...number.marks);
    foot = Math.min(foot, number.foot);
    left += wide + APART;
  }
  const under = foot - 1;
  marks.push(line('frame', { x: box.left, y: under }, { x: box.right, y: under }));
  return { marks, foot: under };
}
