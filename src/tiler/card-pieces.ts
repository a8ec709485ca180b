import { across, boundsOf, boxRoundBoth, grown, upright } from '../draw/boxes.ts';
import { shortened } from '../draw/breaking.ts';
import type { Box, Drawing, Mark, Path, Point } from '../draw/drawing.ts';
import { FOOT, heightOf, words, wordsBox } from '../draw/lettering.ts';
import { DESCENT } from '../draw/letters.ts';
import { HALF_LINE } from '../draw/pens.ts';
import type { Said } from '../measure/said.ts';
import type { Mm } from '../measure/units.ts';
import type { Size } from './free-room.ts';

/** A mark of a card and where it inks. */
interface Item {
  readonly mark: Mark;
  readonly box: Box;
}

/** Over a piece, the line that says whose card it goes on with. */
const LABEL: Mm = heightOf([{ size: FOOT }]);
/** White between two facts of a card; between two lines of one fact there is less. */
const BETWEEN_FACTS: Mm = 0.4;

/**
 * A card that is too large for a sheet's room, upright and turned, in pieces that are not, each but the first with its leaf's title:
 * cut where no ink is, between facts rather than between lines, between columns where that fails. The card itself where that fails too.
 */
export function cardPieces(card: Drawing, more: Said, room: Size): readonly Drawing[] {
  const items = card.marks.map((mark) => ({ mark, box: boxOf(mark) }));
  const pieces = divided(items, {
    width: room.width - LABEL - 2 * HALF_LINE,
    height: room.height - LABEL - 2 * HALF_LINE,
  });
  if (pieces === undefined) return [card];
  return pieces.map((piece, index) => {
    const box = grown(boxRound(piece), HALF_LINE);
    const marks = piece.map(({ mark }) => mark);
    const name = `${card.name}, piece ${index + 1}`;
    const of = card.of && { of: card.of };
    if (index === 0) return { name, box, marks, ...of };
    const text = shortened(more, FOOT, across(box));
    const label = words(text, 'tile', FOOT, { x: box.left, y: box.top + DESCENT * FOOT });
    return { name, box: { ...box, top: box.top + LABEL }, marks: [label, ...marks], ...of };
  });
}

/** Pieces that fit, those of a column before those of the next. */
function divided(items: readonly Item[], room: Size): (readonly Item[])[] | undefined {
  if (fits(boxRound(items), room)) return [items];
  for (const white of [BETWEEN_FACTS, 0]) {
    const level = levelCuts(items, white).findLast(({ first }) => fits(boxRound(first), room));
    const rest = level && divided(level.rest, room);
    if (level && rest) return [level.first, ...rest];
  }
  // A rule right across holds two columns together; between them it has no use.
  for (const { first, rest } of [{ first: [], rest: items }, ...levelCuts(items, 0)].reverse()) {
    if (first.length > 0 && !fits(boxRound(first), room)) continue;
    const columns = cutUpright(rest.filter((item) => !isRule(item, boxRound(items))));
    const [left, right] = columns ? [divided(columns.first, room), divided(columns.rest, room)] : [];
    if (left && right) return [...(first.length > 0 ? [first] : []), ...left, ...right];
  }
  return undefined;
}

interface Halves {
  readonly first: readonly Item[];
  readonly rest: readonly Item[];
}

/** Every level cut in so much white or more, the highest first. */
function levelCuts(items: readonly Item[], white: Mm): Halves[] {
  const ordered = items.toSorted((a, b) => b.box.top - a.box.top);
  const found: Halves[] = [];
  let foot = Number.POSITIVE_INFINITY;
  for (const [index, { box }] of ordered.entries()) {
    if (index > 0 && foot - box.top >= white)
      found.push({ first: ordered.slice(0, index), rest: ordered.slice(index) });
    foot = Math.min(foot, box.bottom);
  }
  return found;
}

/** The upright cut in the widest white. */
function cutUpright(items: readonly Item[]): Halves | undefined {
  const ordered = items.toSorted((a, b) => a.box.left - b.box.left);
  let found: Halves | undefined;
  let widest = 0;
  let edge = Number.NEGATIVE_INFINITY;
  for (const [index, { box }] of ordered.entries()) {
    if (index > 0 && box.left - edge > widest) {
      widest = box.left - edge;
      found = { first: ordered.slice(0, index), rest: ordered.slice(index) };
    }
    edge = Math.max(edge, box.right);
  }
  return found;
}

/** Whether a mark is one level line from side to side. */
function isRule({ mark, box }: Item, { left, right }: Box): boolean {
  return mark.kind === 'stroke' && box.top === box.bottom && box.left <= left && box.right >= right;
}

function fits(box: Box, { width, height }: Size): boolean {
  const [wide, high] = [across(box), upright(box)];
  return (wide <= width && high <= height) || (high <= width && wide <= height);
}

function boxRound(items: readonly Item[]): Box {
  return items.map(({ box }) => box).reduce(boxRoundBoth, boundsOf([]));
}

function boxOf(mark: Mark): Box {
  return mark.kind === 'words' ? wordsBox(mark) : boundsOf(hull(mark.path));
}

/** A Bézier stays within its control points. */
function hull({ start, pieces }: Path): Point[] {
  return [
    start,
    ...pieces.flatMap((piece) => (piece.kind === 'line' ? [piece.to] : [piece.c1, piece.c2, piece.to])),
  ];
}
