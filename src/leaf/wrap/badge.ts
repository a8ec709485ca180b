import { type Label, labelOf } from '../../draw/candidates.ts';
import { point } from '../../draw/path.ts';
import { outline, solid } from '../../draw/strokes.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Hand } from '../../saddle/solve.ts';

/** Between the words and the badge's edge. */
const PAD: Mm = 0.8;

/** Which hand, as a tag that can't be missed and points nowhere: black where its words begin as drawn, where they end for the opposite hand, at both for both. */
export function badgeOf(hand: Hand | 'both', name: Said, size: Mm, turn: 0 | 1 = 0): Label {
  const text = labelOf({ fact: 'hand', lines: [name], size }, turn);
  const bar = 0.55 * size;
  const blacks = hand === 'both' ? 2 : 1;
  const along = (turn === 0 ? text.width : text.height) + 2 * PAD + blacks * bar;
  const up = (turn === 0 ? text.height : text.width) + 2 * PAD;
  const bars = [...(hand === 'opposite' ? [] : [0]), ...(hand === 'as-drawn' ? [] : [along - bar])];
  const start = hand === 'opposite' ? 0 : bar;
  return {
    width: turn === 0 ? along : up,
    height: turn === 0 ? up : along,
    draw: (left, bottom) => {
      const at = (x: Mm, y: Mm) =>
        turn === 0 ? point(left + x, bottom + y) : point(left + up - y, bottom + x);
      const box = (from: Mm, to: Mm) => [at(from, 0), at(to, 0), at(to, up), at(from, up)] as const;
      const [first, ...rest] = box(0, along);
      const foot = turn === 0 ? point(left + start, bottom) : point(left, bottom + start);
      return [
        outline('outline', first, ...rest),
        ...bars.map((black) => solid('outline', ...box(black, black + bar))),
        ...text.draw(foot.x + PAD, foot.y + PAD),
      ];
    },
  };
}
