import type { Point } from '../../draw/drawing.ts';
import { tellingOf } from '../../draw/lettering.ts';
import { filled, framed } from '../../draw/strokes.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Hand } from '../../saddle/solve.ts';
import { type Laid, layText, tickBox } from '../laid.ts';
import type { Step } from '../steps/step.ts';
import type { Ticket } from './ticket.ts';

/** More boxes than this beside a step are not told apart. */
const MOST_BOXES = 4;

/** Whose each box beside a step is: one for each copy, of both hands of a pair; one for all where there are many. */
export function boxesFor({ copies, hands }: Pick<Ticket, 'copies' | 'hands'>): readonly (Hand | undefined)[] {
  if (copies > MOST_BOXES) return [undefined];
  return hands.flatMap(({ hand }) => Array<Hand | undefined>(copies / hands.length).fill(hand));
}

/** One step under a point, with boxes to tick. */
export function layStep(
  { text, fact, end, hand, once, warnings }: Step,
  boxes: readonly (Hand | undefined)[],
  size: Mm,
  at: Point,
  width: Mm,
): Laid {
  const own = once ? [undefined] : boxes.filter((whose) => !hand || !whose || whose === hand);
  const pitch = 1.05 * size;
  const indent = boxes.length * pitch + 0.5 * size;
  const ticks = own.flatMap((whose, i) => tickBox({ x: at.x + i * pitch, y: at.y }, size, whose));
  const laid = layText(text, fact, size, { x: at.x + indent, y: at.y }, width - indent);
  const marks = [...ticks, ...laid.marks];
  let foot = laid.foot - 0.16 * size;
  for (const warning of warnings) {
    const boxed = layWarning(warning, size, { x: at.x + indent, y: foot }, width - indent);
    marks.push(...boxed.marks);
    foot = boxed.foot;
  }
  return { marks: tellingOf({ ...(end && { end }), ...(hand && { hand }) }, marks), foot };
}

/** A frame with a solid bar at its left, which no other frame on a ticket has but a hand's. */
function layWarning(text: Said, size: Mm, at: Point, width: Mm): Laid {
  const [inset, bar] = [0.5 * size, 0.45 * size];
  const laid = layText(
    text,
    'warning',
    size,
    { x: at.x + bar + inset, y: at.y - 0.2 * size },
    width - bar - 2 * inset,
  );
  const box = { left: at.x, right: at.x + width, top: at.y - 0.1 * size, bottom: laid.foot - 0.3 * size };
  return {
    marks: [framed(box), filled({ ...box, right: at.x + bar }), ...laid.marks],
    foot: box.bottom - 0.4 * size,
  };
}
