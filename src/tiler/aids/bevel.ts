import { across, upright } from '../../draw/boxes.ts';
import type { Mark, Path, PathPiece, Point } from '../../draw/drawing.ts';
import {
  heightOf,
  LARGE,
  linesOf,
  PLAIN,
  SMALL,
  words as set,
  setLines,
  type TextLine,
} from '../../draw/lettering.ts';
import { CAP_HEIGHT, widthOf } from '../../draw/letters.ts';
import { line } from '../../draw/strokes.ts';
import type { SheetAsk } from '../../job/job.ts';
import type { Printer } from '../../job/paper/printer.ts';
import type { Said } from '../../measure/said.ts';
import { type Mm, radians } from '../../measure/units.ts';
import type { Language } from '../../words/language.ts';
import { asWritten } from '../../words/said.ts';
import { furnish } from '../furniture.ts';
import type { LaidSheets } from '../lay-sheets.ts';
import { namedAid, oneSheet, pagesForAid } from './one-sheet.ts';

/** Room round the arc for its outer numbers, and under the stock's edge for its words. */
const ROUND: Mm = 7;
const UNDER: Mm = 6;
/** Larger than any bevel's blade needs. */
const LARGEST_RADIUS: Mm = 180;
/** On a smaller card a second arc is too crowded to read, and so is every fifth number. */
const LEAST_OF_TWO: Mm = 70;
/** Lengths of the marks of 1, 5 and 10 degrees. */
const MARKS: readonly (readonly [every: number, length: Mm])[] = [
  [10, 6],
  [5, 4.2],
  [1, 2.6],
];

/** How much of a roll it takes. */
const OFF_ROLL: Mm = 320;

/**
 * A card to lay a sliding bevel on. Its stock lies along the card's straight edge and its blade across two arcs about one
 * centre; where both arcs read the same, the blade's edge goes through the centre and stands at that angle to the stock.
 * A small card has one arc, and a line that points to the centre.
 * Numbers outside the outer arc count from the right, those inside from the left: each is the other's supplement.
 */
export function bevelSheet(ask: SheetAsk, words: Language, printer?: Printer): LaidSheets {
  const named = namedAid(words.aids.bevel.subject, ask, words, printer);
  const ways = pagesForAid(ask, printer, OFF_ROLL).map((page) => {
    const furniture = furnish(page, named);
    const { content } = furniture;
    const width = across(content);
    const high = upright(content) - heightOf(told(width, true, words)) - ROUND - UNDER;
    return { page, furniture, content, radius: Math.min(LARGEST_RADIUS, width / 2 - ROUND, high) };
  });
  const [best] = ways.sort((a, b) => b.radius - a.radius);
  if (best === undefined) throw new RangeError(`${ask.paper.name} has no way to lie.`);
  const { page, furniture, content, radius } = best;
  const lines = told(across(content), radius >= LEAST_OF_TWO, words);
  const centre = { x: (content.left + content.right) / 2, y: content.bottom + UNDER };
  return oneSheet(page, furniture, [
    ...setLines(lines, { x: content.left, y: content.top }),
    ...card(centre, radius, words.aids.bevel.stock),
  ]);
}

function told(width: Mm, twoArcs: boolean, { aids: { bevel } }: Language): TextLine[] {
  const steps = bevel.steps(twoArcs).flatMap((step) => linesOf(step, 'aid', PLAIN, width));
  return [...linesOf(bevel.title, 'aid', LARGE, width), ...steps];
}

function card(centre: Point, radius: Mm, stock: Said): Mark[] {
  const reach = radius + ROUND - 0.5;
  return [
    line('cut', { x: centre.x - reach, y: centre.y }, { x: centre.x + reach, y: centre.y }),
    set(stock, 'aid', SMALL, { x: centre.x - widthOf(stock, SMALL) / 2, y: centre.y - 3.4 }),
    line('guide', centre, { x: centre.x, y: centre.y + 8 }),
    ...arc(centre, radius),
    ...degrees(centre, radius, 1),
    ...numbers(centre, radius + 3.6, radius < LEAST_OF_TWO ? 10 : 5, PLAIN, (angle) => angle),
    ...numbers(centre, radius - 9, 10, radius < LEAST_OF_TWO ? SMALL : PLAIN, (angle) => 180 - angle),
    ...(radius < LEAST_OF_TWO ? [] : innerArc(centre, radius / 2)),
  ];
}

function innerArc(centre: Point, radius: Mm): Mark[] {
  return [
    ...arc(centre, radius),
    ...degrees(centre, radius, 0.6),
    ...numbers(centre, radius + 2.8, 10, SMALL, (angle) => angle),
    ...numbers(centre, radius - 6.2, 10, SMALL, (angle) => 180 - angle),
  ];
}

/** Marks of every degree, from the arc inwards. At 0 and 180 the edge itself is the mark. */
function degrees(centre: Point, radius: Mm, size: number): Mark[] {
  return Array.from({ length: 179 }, (_, index) => {
    const angle = index + 1;
    const [, length] = MARKS.find(([every]) => angle % every === 0) ?? [1, 0];
    return line('guide', polar(centre, radius - length * size, angle), polar(centre, radius, angle));
  });
}

/** Numbers in the middle of their places. At 0 and 180 they would stand on the edge. */
function numbers(
  centre: Point,
  radius: Mm,
  step: number,
  size: Mm,
  reading: (angle: number) => number,
): Mark[] {
  const count = 180 / step - 1;
  return Array.from({ length: count }, (_, index) => {
    const angle = (index + 1) * step;
    const text = `${reading(angle)}`;
    const { x, y } = polar(centre, radius, angle);
    const em = angle % 10 === 0 ? size : SMALL;
    return set(asWritten(text), 'aid', em, { x: x - widthOf(text, em) / 2, y: y - (CAP_HEIGHT * em) / 2 });
  });
}

/** A half circle as cubics of 15 degrees, which stray from it by less than a hundred-millionth of its radius. */
function arc(centre: Point, radius: Mm): Mark[] {
  const step = 15;
  const handle = (4 / 3) * Math.tan(radians(step) / 4) * radius;
  const along = (angle: number, by: Mm): Point => {
    const at = polar(centre, radius, angle);
    return { x: at.x - by * Math.sin(radians(angle)), y: at.y + by * Math.cos(radians(angle)) };
  };
  const pieces = Array.from({ length: 180 / step }, (_, index): PathPiece => {
    const [from, to] = [index * step, (index + 1) * step];
    return { kind: 'cubic', c1: along(from, handle), c2: along(to, -handle), to: polar(centre, radius, to) };
  });
  const path: Path = { start: polar(centre, radius, 0), pieces, closed: false };
  return [{ kind: 'stroke', purpose: 'guide', path }];
}

function polar(centre: Point, radius: Mm, angle: number): Point {
  return {
    x: centre.x + radius * Math.cos(radians(angle)),
    y: centre.y + radius * Math.sin(radians(angle)),
  };
}
