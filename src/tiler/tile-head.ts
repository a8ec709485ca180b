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

const CELL_WIDTH: Mm = 6;
const CELL_HEIGHT: Mm = 4.2;
const MAP_WIDTH: Mm = 30;
const AIR: Mm = 3;

/** The sheets that hold the tiles next to one, numbered from 1; left out where there is none. */
export interface Neighbours {
  readonly left?: number;
  readonly right?: number;
  readonly above?: number;
  readonly below?: number;
}

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

/** Which tile this is: a map of the grid with the tile filled, its row, column and neighbours, and how they are taped. */
export function tileHead(head: TileHead, strip: Box, words: Language): Mark[] {
  const { tile: say } = words.sheets;
  const { title, joint, tiling, tile, beside, sheets, alone } = head;
  const width = Math.min(CELL_WIDTH, MAP_WIDTH / tiling.columns);
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

function map(tiling: Tiling, here: Tile, sheets: readonly number[], strip: Box, width: Mm): Mark[] {
  const height = Math.min(CELL_HEIGHT, HEAD / tiling.rows);
  return tiling.tiles.flatMap((tile, index): Mark[] => {
    const left = strip.left + (tile.column - 1) * width;
    const top = strip.top - (tile.row - 1) * height;
    const cell = { left, right: left + width, bottom: top - height, top };
    const edge = framed(cell);
    if (tile === here) return [edge, filled(cell)];
    const number = asWritten(`${sheets[index] ?? ''}`);
    const wide = widthOf(number, FOOT);
    if (height < CELL_HEIGHT || wide > width - 0.8) return [edge];
    const at = { x: left + (width - wide) / 2, y: top - (height + CAP_HEIGHT * FOOT) / 2 };
    return [edge, words(number, 'tile', FOOT, at)];
  });
}

/** The strip for a tile's head, at the top of a sheet's room, and the room it leaves. */
export function headOf(content: Box): { strip: Box; room: Box } {
  const foot = content.top - HEAD;
  return { strip: { ...content, bottom: foot }, room: { ...content, top: foot - AIR } };
}
