import { broken, shortened } from '../draw/breaking.ts';
import type { Box, Mark } from '../draw/drawing.ts';
import { extentOf, FOOT, lettered, words } from '../draw/lettering.ts';
import { CAP_HEIGHT, spelled, widthOf } from '../draw/letters.ts';
import { filled, framed } from '../draw/strokes.ts';
import type { JointSide } from '../leaf/leaf.ts';
import type { Said } from '../measure/said.ts';
import type { Mm } from '../measure/units.ts';
import type { Language } from '../words/language.ts';
import { asWritten } from '../words/said.ts';
import type { Tile, Tiling } from './tiling.ts';

/** Height of the strip at the head of a tile's sheet: four lines. */
const LINES = 4;
export const HEAD: Mm = extentOf({
  lines: Array.from({ length: LINES }, () => asWritten('')),
  size: FOOT,
}).height;

/** A box of the map, with room for a sheet's number, white round it and a bar on either side. */
const CELL_WIDTH: Mm = 8;
const CELL_HEIGHT: Mm = 4.2;
const CELL_AIR: Mm = 0.35;
const [LEAST_BAR, MOST_BAR]: readonly [Mm, Mm] = [0.9, 2];
/** The most of the head's width that the map takes. */
const MAP_SHARE = 0.2;
/** Under the head, and right of the map. */
const AIR: Mm = 3;
/** A map of six rows takes all but a hair of the white under the head too. */
const MAP_HEIGHT: Mm = HEAD + AIR - 0.3;

/** The sheets that hold the tiles next to one, numbered from 1; undefined where there is none. */
export type Neighbours = Readonly<Record<'left' | 'right' | 'above' | 'below', number | undefined>>;

/** What the head of a tile's sheet is made from. */
export interface TileHead {
  readonly title: Said;
  /** Which way the joint lies on the unturned wrap, if it has one. */
  readonly joint?: JointSide;
  readonly tiling: Tiling;
  readonly tile: Tile;
  readonly beside: Neighbours;
  /** The numbers of the sheets that hold the tiles, in the tiling's order. */
  readonly sheets: readonly number[];
  /** Whether nothing but the tile lies on its sheet; the rest would vanish under the next tile. */
  readonly alone: boolean;
}

/** Which tile this is: a map of the grid with the tile marked, its row, column and neighbours, and how they are taped. */
export function tileHead(head: TileHead, strip: Box, words: Language): Mark[] {
  const { tile: say } = words.sheets;
  const { title, joint, tiling, tile, beside, sheets, alone } = head;
  const width = Math.min(CELL_WIDTH, (MAP_SHARE * (strip.right - strip.left)) / tiling.columns);
  const left = strip.left + width * tiling.columns + AIR;
  const room = strip.right - left;
  const row = say.place(tile.row, tiling.rows, tile.column, tiling.columns);
  const place = joint ? say.toJoint(row, ARROWS[joint][tiling.turn]) : row;
  const titleRoom = room - widthOf(`${place} · `, FOOT);
  const lines = [
    say.titled(place, shortened(spelled(title), FOOT, titleRoom)),
    shortened(say.neighbours(beside), FOOT, room),
    ...broken(say.taping(tiling.rows, tiling.columns, alone), FOOT, room),
  ];
  const block = { fact: 'tile' as const, lines: lines.slice(0, LINES), size: FOOT };
  return [
    ...map(tiling, tile, sheets, strip, width),
    ...lettered(block, left, strip.top - extentOf(block).height),
  ];
}

/** The way to the joint as it lies on the sheet, by the wrap's quarter turns: a turned wrap's head is to the left. */
const ARROWS: Readonly<Record<JointSide, readonly [string, string]>> = { up: ['↑', '←'], down: ['↓', '→'] };

/** The grid with each tile's sheet in its box, where that has room; the tile's own box has a bar on either side, or is filled. */
function map(tiling: Tiling, here: Tile, sheets: readonly number[], strip: Box, width: Mm): Mark[] {
  const height = Math.min(CELL_HEIGHT, MAP_HEIGHT / tiling.rows);
  return tiling.tiles.flatMap((tile, index): Mark[] => {
    const left = strip.left + (tile.column - 1) * width;
    const top = strip.top - (tile.row - 1) * height;
    const cell = { left, right: left + width, bottom: top - height, top };
    const edge = framed(cell);
    const number = asWritten(`${sheets[index] ?? ''}`);
    const wide = widthOf(number, FOOT);
    const bar = Math.min(MOST_BAR, (width - wide) / 2 - CELL_AIR);
    if (bar < LEAST_BAR || height < CAP_HEIGHT * FOOT + 2 * CELL_AIR)
      return tile === here ? [edge, filled(cell)] : [edge];
    const at = { x: left + (width - wide) / 2, y: top - (height + CAP_HEIGHT * FOOT) / 2 };
    const bars = [
      { ...cell, right: cell.left + bar },
      { ...cell, left: cell.right - bar },
    ];
    return [edge, ...(tile === here ? bars.map(filled) : []), words(number, 'tile', FOOT, at)];
  });
}

/** The strip for a tile's head, at the top of a sheet's room, and the room it leaves. */
export function headOf(content: Box): { strip: Box; room: Box } {
  const foot = content.top - HEAD;
  return { strip: { ...content, bottom: foot }, room: { ...content, top: foot - AIR } };
}
