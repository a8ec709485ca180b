import { across, turned, upright } from '../draw/boxes.ts';
import type { Box, Drawing } from '../draw/drawing.ts';
import type { Leaf } from '../leaf/leaf.ts';
import type { Mm } from '../measure/units.ts';
import type { Language } from '../words/language.ts';
import { cardPieces } from './card-pieces.ts';
import { type Size, takes } from './free-room.ts';
import type { Lean } from './seams.ts';
import { headOf } from './tile-head.ts';
import { type Tiling, tile } from './tiling.ts';

/** Least white between two blocks, mm. */
export const BETWEEN_BLOCKS: Mm = 5;
/** Between a wrap and its own card, which is not taken for a stranger's that lies further off. */
const TO_ITS_CARD: Mm = 2.5;

/** A drawing and where its turned box lies in its block, whose first piece has its top left corner at the origin. */
export interface PosturePart {
  readonly drawing: Drawing;
  readonly turn: 0 | 1;
  readonly box: Box;
}

/** One way in which a block can lie: a wrap alone, a wrap and its card beside it, or a card alone. */
export type Posture = readonly [PosturePart, ...PosturePart[]];

/** What is laid on one sheet, in the ways it can lie there, the best first. */
export interface LeafBlock {
  readonly leaf: Leaf;
  readonly ways: readonly [Posture, ...Posture[]];
}

/** A wrap that no sheet takes whole. */
export interface Tiled {
  readonly leaf: Leaf;
  readonly tilings: Readonly<Record<Lean, Tiling>>;
}

/** A card that no sheet of one way to lie takes, not even in pieces. */
export class CardSizeError extends RangeError {}

/**
 * What of a leaf is laid on sheets with this room: its wrap with its card right of it or under it; where they don't go on one sheet, its
 * wrap, whole or in tiles, and then its card. Throws where its card goes on none, nor can be cut into pieces that do.
 */
export function blocksOf(leaf: Leaf, content: Box, words: Language): readonly (LeafBlock | Tiled)[] {
  const wraps = waysOf(leaf.wrap, content);
  const cards = cardsOf(leaf, content, words);
  const [card, ...more] = cards;
  const together =
    card && more.length === 0
      ? wraps.flatMap(([wrap]) => card.ways.flatMap(([beside]) => pairs(wrap, beside, leaf, content)))
      : [];
  const [best, ...others] = together.length > 0 ? together : wraps;
  const wrap = best
    ? { leaf, ways: [best, ...others] as const }
    : { leaf, tilings: tilingsIn(leaf, content) };
  return together.length > 0 ? [wrap] : [wrap, ...cards];
}

function tilingsIn(leaf: Leaf, content: Box): Tiled['tilings'] {
  const { room } = headOf(content);
  const size = { width: across(room), height: upright(room) };
  return { even: tile(leaf, size, 'even'), low: tile(leaf, size, 'low') };
}

/** Unturned first, each way that the room takes. */
function waysOf(drawing: Drawing, content: Box): [PosturePart][] {
  return ([0, 1] as const).flatMap((turn): [PosturePart][] => {
    const piece = pieceAt(drawing, turn, { left: 0, top: 0 });
    return takes(content, sizeOf(piece)) ? [[piece]] : [];
  });
}

function pieceAt(drawing: Drawing, turn: 0 | 1, { left, top }: { left: Mm; top: Mm }): PosturePart {
  const box = turned(drawing.box, turn);
  return {
    drawing,
    turn,
    box: { left, bottom: top - upright(box), right: left + across(box), top },
  };
}

export function sizeOf({ box }: PosturePart): Size {
  return { width: across(box), height: upright(box) };
}

/** A card right of its wrap or under it, first under a footprint, which is about as high as wide. */
function pairs(wrap: PosturePart, { drawing, turn }: PosturePart, { joint }: Leaf, content: Box): Posture[] {
  const right = pieceAt(drawing, turn, { left: wrap.box.right + TO_ITS_CARD, top: 0 });
  const under = pieceAt(drawing, turn, { left: 0, top: wrap.box.bottom - TO_ITS_CARD });
  const cards = joint === undefined ? [under, right] : [right, under];
  return cards.flatMap((card): Posture[] => {
    const width = Math.max(wrap.box.right, card.box.right);
    const height = -Math.min(wrap.box.bottom, card.box.bottom);
    return takes(content, { width, height }) ? [[wrap, card]] : [];
  });
}

/** The card, upright where it can be; in pieces where no sheet takes it whole. */
function cardsOf(leaf: Leaf, content: Box, { sheets }: Language): LeafBlock[] {
  const { card, title } = leaf;
  if (card === undefined) return [];
  const room = { width: across(content), height: upright(content) };
  const whole = waysOf(card, content).length > 0;
  const pieces = whole ? [card] : cardPieces(card, sheets.more(title), room);
  return pieces.map((piece) => {
    const [way] = waysOf(piece, content);
    if (way) return { leaf, ways: [way] };
    throw new CardSizeError(
      `The card of "${title}" is ${across(card.box).toFixed(1)} x ${upright(card.box).toFixed(1)} mm and a sheet has room ` +
        `for ${room.width.toFixed(1)} x ${room.height.toFixed(1)} mm.`,
    );
  });
}
