import { across, grown, holds, moved, turned, upright } from '../draw/boxes.ts';
import type { Box, Point } from '../draw/drawing.ts';
import type { Leaf } from '../leaf/leaf.ts';
import { BETWEEN_BLOCKS, type LeafBlock, type Posture, sizeOf, type Tiled } from './blocks.ts';
import { type FreeRoom, places, without } from './free-room.ts';
import { LINE_ROOM } from './page.ts';
import type { Lean } from './seams.ts';
import type { Placement } from './sheets.ts';
import { headOf } from './tile-head.ts';
import type { Tiling } from './tiling.ts';

/** So many leaves are seen at once, and go on one of so many sheets begun last: a leaf is found near its turn, and long jobs stay quick. */
export const SEEN_AT_ONCE = 60;
const LOOK_BACK = 12;

/** A sheet while it is being filled. */
export interface Filling {
  readonly placements: Placement[];
  /** What is left of it. */
  room: FreeRoom;
  /** The turn of the block it was begun for. */
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

/** A way to fill sheets, to be tried for the fewest. */
export interface Manner {
  /** The largest first; else in their order. */
  readonly largestFirst: boolean;
  /** Whether a wrap lies turned: only where no sheet takes it otherwise, where a sheet begun does not, or rather so. */
  readonly turned: 'no' | 'may' | 'rather';
  /** How leaves are cut into tiles. */
  readonly lean: Lean;
}

interface Queued {
  readonly block: LeafBlock | Tiled;
  readonly order: number;
}

/**
 * Fills as few sheets as this manner can: each block goes on the first sheet that takes it. Packers of rectangles from a registry know
 * no card that lies with its wrap, no tile that leaves room, and no turn that a leaf is looked for in.
 */
export function pack(blocks: readonly (LeafBlock | Tiled)[], content: Box, manner: Manner): Filling[] {
  const fillings: Filling[] = [];
  for (const { block, order } of inTurn(blocks, manner)) {
    if ('tilings' in block)
      fillings.push(...tileSheets(block.leaf, block.tilings[manner.lean], content, order));
    else layBlock(fillings, block, content, order, manner);
  }
  return fillings.sort((a, b) => a.order - b.order);
}

function inTurn(blocks: readonly (LeafBlock | Tiled)[], { largestFirst }: Manner): Queued[] {
  const queue = blocks.map((block, order) => ({ block, order }));
  if (!largestFirst) return queue;
  const windows = Array.from({ length: Math.ceil(queue.length / SEEN_AT_ONCE) }, (_, index) =>
    queue.slice(index * SEEN_AT_ONCE, (index + 1) * SEEN_AT_ONCE),
  );
  return windows.flatMap((seen) => seen.sort((a, b) => area(b) - area(a) || a.order - b.order));
}

function area({ block }: Queued): number {
  const box = 'tilings' in block ? block.leaf.wrap.box : block.ways[0][0].box;
  return across(box) * upright(box);
}

function tileSheets(leaf: Leaf, tiling: Tiling, content: Box, order: number): Filling[] {
  const { room } = headOf(content);
  const together: Filling[] = [];
  tiling.tiles.forEach(({ row, column, clip, block }, index) => {
    const offset = { x: room.left - block.left, y: room.top - block.top };
    const shown = {
      left: clip.left - (column === 1 ? LINE_ROOM : 0),
      bottom: clip.bottom - (row === tiling.rows ? LINE_ROOM : 0),
      right: clip.right + (column === tiling.columns ? LINE_ROOM : 0),
      top: clip.top + (row === 1 ? LINE_ROOM : 0),
    };
    together.push({
      placements: [{ drawing: leaf.wrap, at: offset, turn: tiling.turn, clip: moved(shown, offset) }],
      room: without([room], grown(moved(block, offset), BETWEEN_BLOCKS)),
      order,
      tile: { leaf, tiling, index, offset, together },
    });
  });
  return together;
}

/** A card that does not lie with its wrap comes on a sheet of its wrap's where it can. */
function layBlock(
  fillings: Filling[],
  { leaf, ways }: LeafBlock,
  content: Box,
  order: number,
  manner: Manner,
): void {
  const lately = fillings.slice(-LOOK_BACK);
  const own = lately.filter(({ placements }) => placements.some(({ drawing }) => drawing === leaf.wrap));
  const fresh: Filling = { placements: [], room: [content], order };
  const inOrder = {
    no: ways.filter(([{ turn }]) => turn === ways[0][0].turn),
    may: ways,
    rather: ways.toSorted((a, b) => b[0].turn - a[0].turn),
  }[manner.turned];
  for (const filling of [...own, ...lately, fresh]) {
    for (const way of inOrder) {
      const at = placeFor(filling.room, way);
      if (at === undefined) continue;
      put(filling, way, at);
      if (filling === fresh) begin(fillings, fresh);
      return;
    }
  }
}

/** Begins a sheet. One that no leaf is looked for on any more keeps no room, for the fillings of every manner are held until the best is known. */
function begin(fillings: Filling[], fresh: Filling): void {
  fillings.push(fresh);
  const left = fillings.at(-1 - LOOK_BACK);
  if (left) left.room = [];
}

/** The first place, as one reads, where all of it has room. */
function placeFor(room: FreeRoom, way: Posture): Point | undefined {
  for (const { left, top } of places(room, sizeOf(way[0]))) {
    const at = { x: left, y: top };
    if (way.every(({ box }) => room.some((free) => holds(grown(free, 1e-9), moved(box, at))))) return at;
  }
  return undefined;
}

function put(filling: Filling, way: Posture, at: Point): void {
  for (const { drawing, turn, box } of way) {
    const own = turned(drawing.box, turn);
    const place = moved(box, at);
    filling.placements.push({
      drawing,
      at: { x: place.left - own.left, y: place.bottom - own.bottom },
      turn,
    });
    filling.room = without(filling.room, grown(place, BETWEEN_BLOCKS));
  }
}
