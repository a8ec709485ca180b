import { turned } from '../draw/boxes.ts';
import type { Box } from '../draw/drawing.ts';
import { wordsBox } from '../draw/lettering.ts';
import type { Leaf } from '../leaf/leaf.ts';
import type { Mm } from '../measure/units.ts';
import type { Size } from './free-room.ts';
import { type Cuts, cut, LAY_STRIP, type Lean, OVERLAP, type SeamStretch, TRIM_STRIP } from './seams.ts';

/** White round the outer edges of a leaf, where there is room, so that the marks at a seam's ends stand clear of the leaf. */
const APRON: Mm = 8;

/** A wrap cut into tiles on a grid. All boxes are in the coordinates of the wrap after its quarter turns. */
export interface Tiling {
  readonly turn: 0 | 1;
  readonly rows: number;
  readonly columns: number;
  /** What the wrap's words ink. */
  readonly words: readonly Box[];
  /** In reading order: row 1 is the top one. */
  readonly tiles: readonly Tile[];
  /** How much the seams disturb the places to keep whole. */
  readonly cost: number;
}

/**
 * One tile. A tile with a left or a lower neighbour is trimmed on that edge of its clip and laid on the neighbour, which
 * reaches `OVERLAP` under it. So each row is taped from left to right, then trimmed at its foot and laid on the row below.
 */
export interface Tile {
  readonly row: number;
  readonly column: number;
  /** What of the wrap it shows. */
  readonly clip: Box;
  /** The clip with its strips and aprons: what the tile takes of a sheet. */
  readonly block: Box;
}

/** The part of one axis that a tile shows, and what it takes of the sheet. */
interface Part {
  readonly clip: SeamStretch;
  readonly block: SeamStretch;
}

/** The tiling with the fewest tiles for this room; among equals the one that keeps most whole, then the unturned. */
export function tile(leaf: Leaf, room: Size, lean: Lean): Tiling {
  const [first, second] = [tileTurned(leaf, room, 0, lean), tileTurned(leaf, room, 1, lean)];
  const fewer = second.tiles.length - first.tiles.length || Math.round(second.cost - first.cost);
  return fewer < 0 ? second : first;
}

function tileTurned(leaf: Leaf, room: Size, turn: 0 | 1, lean: Lean): Tiling {
  const box = turned(leaf.wrap.box, turn);
  const keep = leaf.keepWhole.map((place) => turned(place, turn));
  const words = leaf.wrap.marks.flatMap((mark) =>
    mark.kind === 'words' ? [turned(wordsBox(mark), turn)] : [],
  );
  const wide = sideways(box);
  const high = upwards(box);
  const standing = cut(wide, room.width, { keep: keep.map(sideways), words: words.map(sideways) }, lean);
  const lying = cut(high, room.height, { keep: keep.map(upwards), words: words.map(upwards) }, lean);
  const columns = parts(wide, standing, room.width);
  const rows = parts(high, lying, room.height).reverse();
  return {
    turn,
    rows: rows.length,
    columns: columns.length,
    tiles: rows.flatMap((row, down) =>
      columns.map((column, along) => ({
        row: down + 1,
        column: along + 1,
        clip: boxOf(column.clip, row.clip),
        block: boxOf(column.block, row.block),
      })),
    ),
    words,
    cost: standing.cost + lying.cost,
  };
}

function sideways({ left, right }: Box): SeamStretch {
  return { from: left, to: right };
}

function upwards({ bottom, top }: Box): SeamStretch {
  return { from: bottom, to: top };
}

function parts(whole: SeamStretch, { seams }: Cuts, room: Mm): Part[] {
  return [whole.from, ...seams].map((from, index) => {
    const next = seams[index];
    const clip: SeamStretch = { from, to: next === undefined ? whole.to : next + OVERLAP };
    const before = index > 0 ? TRIM_STRIP : 0;
    const after = next === undefined ? 0 : LAY_STRIP;
    const spare = Math.max(0, room - before - after - (clip.to - clip.from));
    const outerEdges = (before === 0 ? 1 : 0) + (after === 0 ? 1 : 0);
    const apron = Math.min(APRON, spare / Math.max(1, outerEdges));
    return { clip, block: { from: clip.from - (before || apron), to: clip.to + (after || apron) } };
  });
}

function boxOf(sideways: SeamStretch, upwards: SeamStretch): Box {
  return { left: sideways.from, bottom: upwards.from, right: sideways.to, top: upwards.to };
}
