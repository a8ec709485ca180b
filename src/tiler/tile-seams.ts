import type { Point } from '../draw/drawing.ts';
import type { Said } from '../measure/said.ts';
import type { Mm } from '../measure/units.ts';
import type { Language } from '../words/language.ts';
import { OVERLAP, type SeamStretch } from './seams.ts';
import type { Neighbours } from './tile-head.ts';
import type { Tile, Tiling } from './tiling.ts';

/** A mark's middle from the end of its seam: at the leaf's outer edge, and from a seam that crosses. */
const FROM_EDGE: Mm = 4;
const FROM_CROSSING: Mm = 6;
/** One edge of a tile, as its sheet carries it. `across` positions lie square to the seam, `along` ones on it. */
export interface Seam {
  readonly upright: boolean;
  readonly at: Mm;
  readonly along: SeamStretch;
  /** The middles of the two registration marks. */
  readonly marks: SeamStretch;
  /** Longest first; the first one that fits between the marks is set. */
  readonly texts: readonly Said[];
  readonly role: 'trim' | 'lay';
}

/** The seams of one tile, in the coordinates of the turned wrap. */
export function seamsOf(tiling: Tiling, tile: Tile, beside: Neighbours, { sheets }: Language): Seam[] {
  const { clip, block } = tile;
  const standing = {
    upright: true,
    along: { from: block.bottom, to: block.top },
    marks: {
      from: tile.row < tiling.rows ? clip.bottom + FROM_CROSSING : block.bottom + FROM_EDGE,
      to: tile.row > 1 ? clip.top - FROM_CROSSING : block.top - FROM_EDGE,
    },
  };
  // When rows meet, each tile's part beyond its own lay-on line is already covered by its neighbour.
  const lying = {
    upright: false,
    along: { from: block.left, to: block.right },
    marks: {
      from: tile.column > 1 ? clip.left + FROM_CROSSING : block.left + FROM_EDGE,
      to: tile.column < tiling.columns ? clip.right - OVERLAP - FROM_CROSSING : block.right - FROM_EDGE,
    },
  };
  const seams: Seam[] = [];
  if (beside.left !== undefined)
    seams.push({ ...standing, role: 'trim', at: clip.left, texts: sheets.tile.trim(beside.left, false) });
  if (beside.right !== undefined)
    seams.push({
      ...standing,
      role: 'lay',
      at: clip.right - OVERLAP,
      texts: sheets.tile.layOn(beside.right),
    });
  if (beside.below !== undefined) {
    const texts = sheets.tile.trim(beside.below, tiling.columns > 1);
    seams.push({ ...lying, role: 'trim', at: clip.bottom, texts });
  }
  if (beside.above !== undefined)
    seams.push({ ...lying, role: 'lay', at: clip.top - OVERLAP, texts: sheets.tile.layOn(beside.above) });
  return seams;
}

/** A point so far square to a seam and so far along it, as the wrap counts. */
export function onSeam(seam: Seam, across: Mm, along: Mm): Point {
  return seam.upright ? { x: across, y: along } : { x: along, y: across };
}
