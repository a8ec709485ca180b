import type { Point } from '../../draw/drawing.ts';
import { tellingOf } from '../../draw/lettering.ts';
import { filled, framed } from '../../draw/strokes.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import { type Laid, layText, tickBox } from '../laid.ts';
import type { Step } from '../steps/step.ts';

/** More boxes than this beside a step are not told apart. */
const MOST_BOXES = 4;

/** One step under a point, with a box to tick for each copy. */
export function layStep(
  { text, fact, end, hand, once, warnings }: Step,
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
