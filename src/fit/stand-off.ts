import type { Mm } from '../measure/units.ts';
import { type Cope, clockStation } from '../saddle/cope.ts';
import { highestOf } from '../saddle/peaks.ts';
import { sideLimitsOfLine } from './side-limits.ts';

const STATIONS = 180;

/**
 * How far the end is held off by its own inner edge if its face is left square on the line it would then be wrongly
 * cut to: the outside line, or with `from: inside` the inside line it is cut to by intent. Undefined without a wall.
 */
export function standOffOf({ end, joint, outside, inside, square }: Cope): Mm | undefined {
  if (!inside || !square) return undefined;
  const { preparation } = end;
  const cutTo = preparation.edge === 'square' && preparation.from === 'inside' ? inside : outside;
  const held = (station: number): Mm => square(station).setback - cutTo(station).setback;
  const { turn } = joint.section;
  const sideLimits = [outside, inside].flatMap((line) => sideLimitsOfLine(line, turn));
  const start = clockStation(joint, end);
  const most = highestOf({ height: held, turn, start, steps: STATIONS, sideLimits });
  return Math.max(0, most?.height ?? 0);
}
