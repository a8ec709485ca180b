import { shortened } from '../../draw/breaking.ts';
import type { Mark, Point } from '../../draw/drawing.ts';
import { TEXT, words } from '../../draw/lettering.ts';
import { spelled, widthOf } from '../../draw/letters.ts';
import { framed, line } from '../../draw/strokes.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Language } from '../../words/language.ts';
import { type Laid, type LaidItem, layText } from '../laid.ts';
import type { PlannedBar, SizePlan, StockPlan } from './stock.ts';
import { barInWords, blankName } from './stock-in-words.ts';

const HIGH: Mm = 5;
/** Under a shorter bar the words may be wider than it. */
const SHORT_LINE: Mm = 90;

/** What all bars of a plan have alike: the longest of them fills the width, and all begin under one another. */
export interface BarScale {
  readonly longest: Mm;
  readonly names: Mm;
}

export function barScale({ sizes }: StockPlan): BarScale {
  const bars = sizes.flatMap((size) => size.bars);
  return {
    longest: Math.max(...bars.map(({ length }) => length)),
    names: Math.max(...bars.map(({ name }) => widthOf(spelled(name), TEXT))) + 3,
  };
}

/** Each length of stock as a bar to scale with all others, cut where it is cut, and in words under it. */
export function stockBars(
  { bars }: SizePlan,
  { longest, names }: BarScale,
  units: 'mm' | 'in',
  words: Language,
): readonly LaidItem[] {
  return bars.map((bar) => ({
    lay: (at, width) =>
      layBar(
        bar,
        { text: barInWords(bar, units, words), names: bar.blanks.map((blank) => blankName(blank, words)) },
        { ...at, names, room: width - names, longest },
      ),
  }));
}

function layBar(
  bar: PlannedBar,
  said: { readonly text: Said; readonly names: readonly Said[] },
  { names, room, longest, ...at }: Point & BarScale & { room: Mm },
): Laid {
  const scale = room / longest;
  const top = at.y - 0.8;
  const left = at.x + names;
  const right = left + bar.length * scale;
  const marks: Mark[] = [
    words(spelled(bar.name), 'stock', TEXT, { x: at.x, y: top - HIGH + 1.2 }),
    framed({ left, right, bottom: top - HIGH, top }),
  ];
  let x = left;
  for (const [i, blank] of bar.blanks.entries()) {
    const wide = blank.length * scale;
    marks.push(
      line('frame', { x: x + wide, y: top }, { x: x + wide, y: top - HIGH }),
      ...fitting(said.names[i] ?? said.text, x, wide, top),
    );
    x += wide;
  }
  if (bar.offcutName) marks.push(...fitting(bar.offcutName, x, right - x, top));
  const text = layText(
    said.text,
    'stock',
    TEXT,
    { x: left, y: top - HIGH - 0.4 },
    Math.min(room, Math.max(SHORT_LINE, bar.length * scale)),
  );
  return { marks: [...marks, ...text.marks], foot: text.foot - 0.6 };
}

/** A name inside its piece, cut short where it must be; none where not even a few letters go in. */
function fitting(name: Said, left: Mm, wide: Mm, top: Mm): Mark[] {
  const text = shortened(spelled(name), TEXT, wide - 1.6);
  if (text.length < 3) return [];
  return [words(text, 'stock', TEXT, { x: left + 0.8, y: top - HIGH + 1.4 })];
}
