import { across, grown, holds, moved, turned, upright } from '../draw/boxes.ts';
import type { Box, Drawing, Point } from '../draw/drawing.ts';
import type { Leaf } from '../leaf/leaf.ts';
import type { Mm } from '../measure/units.ts';
import type { Language } from '../words/language.ts';
import { cardPieces } from './card-pieces.ts';
import { type FreeRoom, placeNear, places, type Size, takes, without } from './free-room.ts';
import { LINE_ROOM } from './page.ts';
import type { Lean } from './seams.ts';
import type { Placement } from './sheets.ts';
import { headOf } from './tile-head.ts';
import { type Tiling, tile } from './tiling.ts';

/** Least white between two blocks, mm. */
export const BETWEEN_BLOCKS: Mm = 5;
/** A block goes on one of the last sheets begun, so that a leaf is found near its turn, and long jobs stay quick. */
const LOOK_BACK = 12;

/** A sheet while it is being filled. */
export interface Filling {
  readonly placements: Placement[];
  /** What is left of it. */
  room: FreeRoom;
  /** How many cards it holds whose wraps lie elsewhere. */
  cardsApart: number;
  /** How many of its cards lie neither right of their wraps nor under them. */
  cardsAway: number;
  /** The tubes and hands that it holds leaves of. */
  readonly owners: Set<string>;
  /** The turn of the leaf it was begun for. */
  readonly order: number;
  /** Where the sheet holds a tile. */
  readonly tile?: TileSpot;
}

/** A tile's place on its sheet. */
export interface TileSpot {
  readonly leaf: Leaf;
  readonly tiling: Tiling;
  readonly index: number;
  /** Where the turned wrap's origin lies on the sheet. */
  readonly offset: Point;
  /** The sheets of all tiles of the leaf, this one among them, in the order of its tiles. */
  readonly together: readonly Filling[];
}

/** A card that no sheet of one way to lie takes, not even in pieces. */
export class CardSizeError extends RangeError {}

/** How a leaf goes on sheets of one size: whole, in the turns it fits (the best first), or in tiles; its card with it. */
export type Shape = WholeShape | TiledShape;

interface AnyShape {
  readonly leaf: Leaf;
  readonly cards: readonly Card[];
}

interface WholeShape extends AnyShape {
  readonly turns: readonly (0 | 1)[];
}

interface TiledShape extends AnyShape {
  readonly tilings: Readonly<Record<Lean, Tiling>>;
}

/** A leaf's card, or a piece of it where no sheet takes it whole. */
export interface Card {
  readonly drawing: Drawing;
  readonly turn: 0 | 1;
}

/** Ways to fill sheets, to be tried for the fewest. */
export interface PackStrategy {
  /** Leaves are laid in their order; else the largest first. */
  readonly inOrder: boolean;
  /** A leaf may be turned to go on a sheet already begun. */
  readonly mayTurn: boolean;
  /** How leaves are cut into tiles. */
  readonly lean: Lean;
  /** A leaf goes on no sheet that holds one of another tube or hand. */
  readonly apart: boolean;
}

/** How a leaf goes on a sheet with this room. Throws a RangeError where its card goes on none, nor can be cut into pieces that do. */
export function shapeOf(leaf: Leaf, content: Box, words: Language): Shape {
  const cards = cardsOf(leaf, content, words);
  const turns = turnsIn(content, leaf.wrap);
  if (turns.length > 0) return { leaf, cards, turns };
  const { room } = headOf(content);
  const size = { width: across(room), height: upright(room) };
  return { leaf, cards, tilings: { even: tile(leaf, size, 'even'), low: tile(leaf, size, 'low') } };
}

function turnsIn(content: Box, drawing: Drawing): (0 | 1)[] {
  return ([0, 1] as const).filter((turn) => takes(content, sizeOf(drawing, turn)));
}

function cardsOf({ card, title }: Leaf, content: Box, { sheets }: Language): Card[] {
  const whole = turnsIn(content, card)[0];
  if (whole !== undefined) return [{ drawing: card, turn: whole }];
  const room = { width: across(content), height: upright(content) };
  return cardPieces(card, sheets.more(title), room).map((drawing) => {
    const turn = turnsIn(content, drawing)[0];
    if (turn !== undefined) return { drawing, turn };
    throw new CardSizeError(
      `The card of "${title}" is ${across(card.box).toFixed(1)} x ${upright(card.box).toFixed(1)} mm and a sheet has room ` +
        `for ${room.width.toFixed(1)} x ${room.height.toFixed(1)} mm.`,
    );
  });
}

/**
 * Fills as few sheets as this manner can. A leaf's card lies on its wrap's sheet where there is any way to do it, right of it or
 * under it where there is room.
 */
export function pack(shapes: readonly Shape[], content: Box, manner: PackStrategy): Filling[] {
  const fillings: Filling[] = [];
  const queue = shapes.map((shape, order) => ({ shape, order }));
  if (!manner.inOrder) queue.sort((a, b) => area(b.shape) - area(a.shape) || a.order - b.order);
  for (const { shape, order } of queue) {
    if ('tilings' in shape) layTiles(fillings, shape, order, content, manner);
    else layWhole(fillings, shape, order, content, manner);
  }
  return fillings.sort((a, b) => a.order - b.order);
}

function area({ leaf: { wrap } }: Shape): number {
  return across(wrap.box) * upright(wrap.box);
}

function layTiles(
  fillings: Filling[],
  { leaf, cards, tilings }: TiledShape,
  order: number,
  content: Box,
  manner: PackStrategy,
): void {
  const tiling = tilings[manner.lean];
  const { room } = headOf(content);
  const together: Filling[] = [];
  tiling.tiles.forEach(({ row, column, clip, block }, index) => {
    const offset = { x: room.left - block.left, y: room.top - block.top };
    const shown = moved(
      {
        left: clip.left - (column === 1 ? LINE_ROOM : 0),
        bottom: clip.bottom - (row === tiling.rows ? LINE_ROOM : 0),
        right: clip.right + (column === tiling.columns ? LINE_ROOM : 0),
        top: clip.top + (row === 1 ? LINE_ROOM : 0),
      },
      offset,
    );
    together.push({
      ...emptySheet(content, order),
      placements: [{ drawing: leaf.wrap, at: offset, turn: tiling.turn, clip: shown }],
      room: without([room], grown(moved(block, offset), BETWEEN_BLOCKS)),
      owners: new Set(leaf.of === undefined ? [] : [leaf.of]),
      tile: { leaf, tiling, index, offset, together },
    });
  });
  fillings.push(...together);
  const near = begun(fillings, leaf, manner);
  for (const card of cards) layCard(fillings, together, near, card, leaf, order, content);
}

function layWhole(
  fillings: Filling[],
  { leaf, cards, turns: all }: WholeShape,
  order: number,
  content: Box,
  manner: PackStrategy,
): void {
  const turns = manner.mayTurn ? all : all.slice(0, 1);
  const near = begun(fillings, leaf, manner);
  const fresh = emptySheet(content, order);
  const [card] = cards;
  const inLine = inLineWith(leaf);
  for (const candidates of card && cards.length === 1 ? [near, [fresh]] : []) {
    for (const find of [inLine, placeNear]) {
      for (const turn of turns) {
        const found = candidates.find((filling) => card && layPair(filling, leaf, turn, card, find));
        if (found === undefined) continue;
        if (found === fresh) fillings.push(fresh);
        if (find !== inLine) found.cardsAway += 1;
        return;
      }
    }
  }
  // The two don't go on one sheet.
  const turn = turns[0] ?? 0;
  const size = sizeOf(leaf.wrap, turn);
  const holder = near.find(({ room }) => places(room, size).length > 0) ?? fresh;
  if (holder === fresh) fillings.push(fresh);
  const [place] = places(holder.room, size);
  if (place !== undefined) put(holder, leaf, leaf.wrap, turn, place);
  for (const each of cards) layCard(fillings, [holder], near, each, leaf, order, content);
}

function emptySheet(content: Box, order: number): Filling {
  return { placements: [], room: [content], cardsApart: 0, cardsAway: 0, owners: new Set(), order };
}

/** The sheets begun lately that may take something of this leaf. */
function begun(fillings: readonly Filling[], { of }: Leaf, { apart }: PackStrategy): Filling[] {
  const lately = fillings.slice(-LOOK_BACK);
  return apart && of !== undefined ? lately.filter(({ owners }) => owners.has(of)) : lately;
}

/** Lays wrap and card on one sheet, the card as `find` says; lays nothing where they don't go both. */
function layPair(filling: Filling, leaf: Leaf, turn: 0 | 1, card: Card, find: typeof placeNear): boolean {
  const size = sizeOf(card.drawing, card.turn);
  for (const place of places(filling.room, sizeOf(leaf.wrap, turn))) {
    const near = find(without(filling.room, grown(place, BETWEEN_BLOCKS)), size, place);
    if (near === undefined) continue;
    put(filling, leaf, leaf.wrap, turn, place);
    put(filling, leaf, card.drawing, card.turn, near);
    return true;
  }
  return false;
}

/** The place right of a box, in line with its top. */
function rightOf({ right, top }: Box, { width, height }: Size): Box {
  return { left: right + BETWEEN_BLOCKS, bottom: top - height, right: right + BETWEEN_BLOCKS + width, top };
}

/** The place under a box, in line with its left. */
function under({ left, bottom }: Box, { width, height }: Size): Box {
  return {
    left,
    bottom: bottom - BETWEEN_BLOCKS - height,
    right: left + width,
    top: bottom - BETWEEN_BLOCKS,
  };
}

/** How a card finds a place in line with its wrap: right of it or under it, first under a footprint, which is about as high as wide. */
function inLineWith({ joint }: Leaf): typeof placeNear {
  const ways = joint === undefined ? [under, rightOf] : [rightOf, under];
  return (room, size, box) =>
    ways.map((way) => way(box, size)).find((place) => room.some((free) => holds(grown(free, 1e-9), place)));
}

/** Lays a card on the first of its wrap's own sheets that takes it, else on one near, else on a new one. */
function layCard(
  fillings: Filling[],
  own: readonly Filling[],
  near: readonly Filling[],
  { drawing, turn }: Card,
  leaf: Leaf,
  order: number,
  content: Box,
): void {
  const size = sizeOf(drawing, turn);
  const fresh = emptySheet(content, order);
  for (const filling of [...own, ...near, fresh]) {
    const place = placeNear(filling.room, size, content);
    if (place === undefined) continue;
    put(filling, leaf, drawing, turn, place);
    if (!own.includes(filling)) filling.cardsApart += 1;
    if (filling === fresh) fillings.push(fresh);
    return;
  }
}

function put(filling: Filling, { of }: Leaf, drawing: Drawing, turn: 0 | 1, place: Box): void {
  const box = turned(drawing.box, turn);
  if (of !== undefined) filling.owners.add(of);
  filling.placements.push({ drawing, at: { x: place.left - box.left, y: place.bottom - box.bottom }, turn });
  filling.room = without(filling.room, grown(place, BETWEEN_BLOCKS));
}

function sizeOf(drawing: Drawing, turn: 0 | 1): Size {
  const box = turned(drawing.box, turn);
  return { width: across(box), height: upright(box) };
}
