import type { Mark, Point } from '../leaf/drawing.ts';
import { widthOf } from '../leaf/letters.ts';
import type { Mm } from '../measure/units.ts';
import { SMALL, words } from './paragraph.ts';
import { OVERLAP, type Stretch } from './seams.ts';
import { line, outline, solid } from './strokes.ts';
import type { Neighbours } from './tile-head.ts';
import type { Tile, Tiling } from './tiling.ts';

/** A registration mark: a diamond astride the seam, with a line through it square to the seam. */
const DIAMOND: Mm = 3;
const DIAMOND_LINE: Mm = 4;
/** A mark's middle from the end of its seam: at the leaf's outer edge, and from a seam that crosses. */
const FROM_EDGE: Mm = 4;
const FROM_CROSSING: Mm = 6;
/** An arrow from the lay-on words to their line keeps this far from the words' ends. */
const ARROW_BESIDE: Mm = 2.5;

/** One edge of a tile, as its sheet carries it. `across` positions lie square to the seam, `along` ones on it. */
interface Seam {
  readonly upright: boolean;
  readonly at: Mm;
  readonly along: Stretch;
  /** The middles of the two registration marks. */
  readonly marks: Stretch;
  /** Longest first; the first one that fits between the marks is set. */
  readonly texts: readonly string[];
  readonly role: 'trim' | 'lay';
}

/**
 * Trim lines, lay-on lines, registration marks and their words of one tile, in the coordinates of the turned wrap. A trim line
 * and the lay-on line it belongs to lie at the same place of the wrap, and so do their marks.
 */
export function seamMarks(tiling: Tiling, tile: Tile, beside: Neighbours): Mark[] {
  return seamsOf(tiling, tile, beside).flatMap((seam) => [
    line('registration', point(seam, seam.at, seam.along.from), point(seam, seam.at, seam.along.to)),
    ...diamond(seam, seam.marks.from),
    ...diamond(seam, seam.marks.to),
    ...named(seam),
  ]);
}

function seamsOf(tiling: Tiling, tile: Tile, beside: Neighbours): Seam[] {
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
    seams.push({ ...standing, role: 'trim', at: clip.left, texts: trimTexts('', beside.left) });
  if (beside.right !== undefined)
    seams.push({ ...standing, role: 'lay', at: clip.right - OVERLAP, texts: layTexts(beside.right) });
  if (beside.below !== undefined) {
    const first = tiling.columns > 1 ? 'tape the row first, then ' : '';
    seams.push({ ...lying, role: 'trim', at: clip.bottom, texts: trimTexts(first, beside.below) });
  }
  if (beside.above !== undefined)
    seams.push({ ...lying, role: 'lay', at: clip.top - OVERLAP, texts: layTexts(beside.above) });
  return seams;
}

function trimTexts(first: string, neighbour: number): string[] {
  return [
    `✂ ${first}trim here: this edge lies on sheet ${neighbour}`,
    `✂ ${first}trim here`,
    '✂ trim here',
    '✂ trim',
  ];
}

function layTexts(neighbour: number): string[] {
  return [
    `lay sheet ${neighbour}’s trimmed edge on this line`,
    `lay sheet ${neighbour} here`,
    `sheet ${neighbour}`,
  ];
}

/** Trim words stand in the strip that is cut off; lay-on words beyond the part that is laid over, with arrows to their line. */
function named(seam: Seam): Mark[] {
  const free = seam.marks.to - seam.marks.from - 2 * (DIAMOND + 1);
  const arrows = seam.role === 'lay' ? 2 * (ARROW_BESIDE + 1) : 0;
  const text = seam.texts.find((each) => widthOf(each, SMALL) + arrows <= free) ?? seam.texts.at(-1) ?? '';
  const half = widthOf(text, SMALL) / 2;
  const middle = (seam.marks.from + seam.marks.to) / 2;
  const base = baseLine(seam);
  const set = words(text, SMALL, point(seam, base, middle - half), seam.upright ? 1 : 0);
  if (seam.role === 'trim') return [set];
  return [set, ...arrow(seam, middle - half - ARROW_BESIDE), ...arrow(seam, middle + half + ARROW_BESIDE)];
}

/** Words beside an upright seam read upwards, so that their letters reach to the left of their base line. */
function baseLine(seam: Seam): Mm {
  if (seam.role === 'trim') return seam.at - (seam.upright ? 1.6 : 3.4);
  return seam.at + OVERLAP + (seam.upright ? 3.6 : 1.6);
}

function arrow(seam: Seam, along: Mm): Mark[] {
  const tip = point(seam, seam.at, along);
  return [
    line('registration', point(seam, seam.at + OVERLAP + 3, along), tip),
    solid('registration', tip, point(seam, seam.at + 2, along - 0.6), point(seam, seam.at + 2, along + 0.6)),
  ];
}

function diamond(seam: Seam, along: Mm): Mark[] {
  const corner = (across: Mm, up: Mm) => point(seam, seam.at + across, along + up);
  return [
    outline('registration', corner(-DIAMOND, 0), corner(0, -DIAMOND), corner(DIAMOND, 0), corner(0, DIAMOND)),
    line('registration', corner(-DIAMOND_LINE, 0), corner(DIAMOND_LINE, 0)),
  ];
}

function point(seam: Seam, across: Mm, along: Mm): Point {
  return seam.upright ? { x: across, y: along } : { x: along, y: across };
}
