import { type Label, labelOf } from '../../draw/candidates.ts';
import type { Mark } from '../../draw/drawing.ts';
import { point } from '../../draw/path.ts';
import { outline, solid } from '../../draw/strokes.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Hand } from '../../saddle/solve.ts';

/** Between the words and the badge's edge. */
const PAD: Mm = 0.7;

/** How far a badge's point stands out. */
const POINT: Mm = 3;

/**
 * Which hand, as a flag that can't be missed: of the tube as it is drawn open, its point to one side; of the opposite hand solid at
 * its point, which is at the other side, as a mirror shows it.
 */
export function badgeOf(hand: Hand, name: Said, size: Mm, turn: 0 | 1): Label {
  const words = labelOf({ fact: 'hand', lines: [name], size });
  const high = words.height + 2 * PAD;
  const wide = words.width + 2 * PAD;
  const first = hand === 'opposite';
  const start = first ? 0 : POINT;
  const draw = (left: Mm, bottom: Mm): Mark[] => {
    // Along the words, and up from their foot; turned, along runs up the page and up runs to its left.
    const at = (along: Mm, up: Mm) =>
      turn === 0 ? point(left + along, bottom + up) : point(left + high - up, bottom + along);
    const tip = at(first ? wide + POINT : 0, high / 2);
    const [near, far] = first ? [wide, 0] : [start, start + wide];
    const body = [at(near, 0), at(far, 0), at(far, high), at(near, high)] as const;
    const text = labelOf({ fact: 'hand', lines: [name], size }, turn);
    const marks = text.draw(
      turn === 0 ? left + start + PAD : left + PAD,
      turn === 0 ? bottom + PAD : bottom + start + PAD,
    );
    return first
      ? [outline('outline', ...body), solid('outline', at(near, 0), at(near, high), tip), ...marks]
      : [outline('outline', tip, ...body), ...marks];
  };
  return turn === 0
    ? { width: wide + POINT, height: high, draw }
    : { width: high, height: wide + POINT, draw };
}
