import type { Mark, Point } from '../../draw/drawing.ts';
import { tellingOf } from '../../draw/lettering.ts';
import type { Mm } from '../../measure/units.ts';
import { type Laid, layText, tickBox } from '../laid.ts';
import type { Step } from '../steps/step.ts';
import type { Ticket } from './ticket.ts';

/** More boxes than this beside a step are not told apart. */
const MOST_BOXES = 4;

/** The steps, each with a box to tick for each copy. */
export function laySteps(ticket: Ticket, size: Mm, at: Point, width: Mm): Laid {
  const marks: Mark[] = [];
  let foot = at.y;
  for (const step of ticket.steps) {
    const laid = layStep(step, ticket.copies, size, { x: at.x, y: foot }, width);
    marks.push(...laid.marks);
    foot = laid.foot;
  }
  return { marks, foot };
}

/** One step under a point. */
export function layStep(
  { text, fact, end, once }: Step,
  copies: number,
  size: Mm,
  at: Point,
  width: Mm,
): Laid {
  const most = copies <= MOST_BOXES ? copies : 1;
  const boxes = once ? 1 : most;
  const pitch = 1.05 * size;
  const indent = most * pitch + 0.5 * size;
  const ticks = Array.from({ length: boxes }, (_, i) => tickBox({ x: at.x + i * pitch, y: at.y }, size));
  const laid = layText(text, fact, size, { x: at.x + indent, y: at.y }, width - indent);
  const words = end ? tellingOf({ end }, laid.marks) : laid.marks;
  return { marks: [...ticks, ...words], foot: laid.foot - 0.16 * size };
}
