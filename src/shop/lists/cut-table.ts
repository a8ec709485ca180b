import type { Mark, Point } from '../../draw/drawing.ts';
import { heightOf, TEXT, tellingOf, words } from '../../draw/lettering.ts';
import { DESCENT, spelled, widthOf } from '../../draw/letters.ts';
import { line } from '../../draw/strokes.ts';
import type { Mm } from '../../measure/units.ts';
import type { Language } from '../../words/language.ts';
import { asWritten } from '../../words/said.ts';
import { type Laid, type LaidItem, layText, tickBox } from '../laid.ts';
import type { BlankRow } from './cut-list.ts';

const GAP: Mm = 4;
const BOX: Mm = 5;

/** The blanks as a table with a box to tick for each: how many, how long, and whose they are. */
export function cutTable(
  rows: readonly BlankRow[],
  units: 'mm' | 'in',
  width: Mm,
  { lists: { cut } }: Language,
): readonly LaidItem[] {
  const heads = cut.heads(units);
  const cells = rows.map(({ copies, blank }) => [asWritten(`${copies}`), spelled(blank)] as const);
  const widest = (i: 0 | 1): Mm =>
    Math.max(widthOf(heads[i], TEXT), ...cells.map((row) => widthOf(row[i], TEXT)));
  const [first, second] = [BOX + widest(0), BOX + widest(0) + GAP + widest(1)];
  const right = (
    text: Parameters<typeof words>[0],
    fact: Parameters<typeof words>[1],
    end: Mm,
    at: Point,
  ): Mark => words(text, fact, TEXT, { x: at.x + end - widthOf(text, TEXT), y: baseOf(at) });
  const row = ({ of, name, size }: BlankRow, i: number, at: Point): Laid => {
    const [count, blank] = cells[i] ?? [name, name];
    const left = at.x + second + GAP;
    const named = layText(name, 'name', TEXT, { x: left, y: at.y }, width - second - GAP);
    const beside = left + widthOf(spelled(name), TEXT) + GAP;
    const isBeside = beside + widthOf(spelled(size), TEXT) < at.x + width;
    const place = isBeside ? { x: beside, y: at.y } : { x: left, y: named.foot };
    const sized = layText(size, 'tube', TEXT, place, at.x + width - place.x);
    const told = [
      right(count, 'copies', first, at),
      right(blank, 'blank', second, at),
      ...named.marks,
      ...sized.marks,
    ];
    return {
      marks: [...tickBox(at, TEXT), ...tellingOf(of, told), rule(at.x, sized.foot - 0.4, width)],
      foot: sized.foot - 0.8,
    };
  };
  const head = (at: Point): Laid => {
    const foot = at.y - heightOf([{ size: TEXT }], 'close') - 0.6;
    const marks = [right(heads[0], 'heading', first, at), right(heads[1], 'heading', second, at)];
    return { marks: [...marks, rule(at.x, foot, width)], foot: foot - 0.5 };
  };
  return [
    { heading: true, lay: head },
    ...rows.map((each, i): LaidItem => ({ lay: (at) => row(each, i, at) })),
  ];
}

function rule(left: Mm, y: Mm, width: Mm): Mark {
  return line('frame', { x: left, y }, { x: left + width, y });
}

/** The base line of a first line under a point. */
function baseOf(at: Point): Mm {
  return at.y - heightOf([{ size: TEXT }], 'close') + DESCENT * TEXT;
}
