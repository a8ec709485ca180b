import { describe, expect, it } from 'vitest';
import type { Box, Point } from '../../src/draw/drawing.ts';
import { inkPdf } from '../../src/ink/pdf.ts';
import type { Leaf } from '../../src/leaf/leaf.ts';
import { laySheets } from '../../src/tiler/lay-sheets.ts';
import type { Placement, Sheet } from '../../src/tiler/sheets.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { someOf } from '../count.ts';
import { inkAt, type Raster, rasterOf } from '../ink/raster.ts';
import { leavesOf } from '../print/laid-wraps.ts';
import { boxAround, inkBox, onSheet, pointsOf } from './ink-boxes.ts';
import { ask } from './synthetic.ts';

const DPI = 150;
const PIXEL = 25.4 / DPI;
/** A pixel's ink, from where it is part of a line, and up to where it is not. */
const DARK = 0.6;
const LIGHT = 0.3;
const BIG = { name: 'big', width: 1400, height: 1400 };

/** A leaf of a tube so thick, for the bow support of a kayak trailer. */
function leafOf(od: number, angle: number): Leaf {
  const { leaves } = leavesOf(
    `copeleaf: 1\ntube:\n  name: bow support\n  od: ${od}\n  wall: 4\n  ends:\n    A: { onto: { od: ${od * 1.25} }, angle: ${angle}, clock: 20 }\n`,
  );
  const [drawn] = leaves;
  if (!drawn) throw new Error('no leaf');
  return drawn.leaf;
}

/** A tile as it lies on its printed sheet. */
interface Tile {
  readonly raster: Raster;
  readonly turn: 0 | 1;
  readonly row: number;
  readonly column: number;
  /** What the sheet shows of the leaf, and where its leaf's origin lies on it: only to begin laying from. */
  readonly clip: Box;
  readonly origin: Point;
  readonly diamonds: readonly Point[];
  /** Where marks of seams are inked. */
  readonly marks: readonly Box[];
}

async function printed(leaf: Leaf, paper: { name: string; width: number; height: number }): Promise<Tile[]> {
  const set = laySheets([leaf], ask(paper), { job: 'Trailer', words: ENGLISH });
  const sheets = [...set.sheets];
  const pdf = await inkPdf({ ...set, sheets }, { title: 'tiles', jobName: 'tiles' });
  const tiles: Tile[] = [];
  for (const [page, sheet] of sheets.entries()) {
    const wrap = sheet.placements.find(({ drawing }) => drawing === leaf.wrap);
    if (wrap) tiles.push(tileOn(sheet, wrap, await rasterOf(pdf, page, DPI)));
  }
  return tiles;
}

function tileOn({ placements }: Sheet, wrap: Placement, raster: Raster): Tile {
  const seams = placements.filter(({ drawing }) => drawing.name.endsWith('seams'));
  const marks = seams.flatMap((placement) => placement.drawing.marks.map((mark) => ({ placement, mark })));
  const words = placements.flatMap(({ drawing }) =>
    drawing.marks.flatMap((mark) => (mark.kind === 'words' ? [mark.text] : [])),
  );
  // One that is not told is the only one.
  const told = (which: RegExp): number => Number(which.exec(words.join('\n'))?.[1] ?? 1);
  return {
    raster,
    turn: wrap.turn,
    row: told(/row (\d+) of/),
    column: told(/column (\d+) of/),
    clip: wrap.clip ?? { left: 0, bottom: 0, right: BIG.width, top: BIG.height },
    origin: wrap.at,
    diamonds: marks.flatMap(({ placement, mark }) => {
      if (mark.kind !== 'stroke' || !mark.path.closed) return [];
      const box = boxAround(pointsOf(mark.path).map((point) => onSheet(placement, point)));
      return [{ x: (box.left + box.right) / 2, y: (box.bottom + box.top) / 2 }];
    }),
    marks: marks.map(({ placement, mark }) => inkBox(placement, mark)),
  };
}

/** How far a tile's sheet is moved from the sheet of the first, and which points of the whole it covers. */
interface Lain {
  readonly tile: Tile;
  readonly by: Point;
}

const over = (tile: Tile) => (other: Tile) =>
  (other.row === tile.row && other.column === tile.column - 1) ||
  (other.column === tile.column && other.row === tile.row + 1);

/** Lays each tile on a neighbour that is laid already, by the two diamonds on the seam that they share, as a person does. */
function laidByTheirMarks(tiles: readonly Tile[]): Lain[] {
  const [first] = tiles;
  if (!first) throw new Error('no tiles');
  const lain: Lain[] = [{ tile: first, by: { x: 0, y: 0 } }];
  for (let pass = 0; pass < tiles.length; pass += 1) {
    for (const tile of tiles.filter((each) => !lain.some(({ tile: laid }) => laid === each))) {
      const base = lain.find(({ tile: laid }) => over(tile)(laid) || over(laid)(tile));
      if (base) lain.push({ tile, by: movedOnto(base, tile) });
    }
  }
  return lain;
}

/** The move that brings two diamonds of a tile onto two of its neighbour's. The same two seams carry the same distances. */
function movedOnto({ tile: base, by }: Lain, tile: Tile): Point {
  const level = base.row === tile.row;
  const upper = over(tile)(base) ? tile : base;
  const lower = upper === tile ? base : tile;
  const onTrim = pairOn(upper, level, level ? upper.clip.left : upper.clip.bottom);
  const onLay = pairOn(lower, level, level ? lower.clip.right - 10 : lower.clip.top - 10);
  const [from, to] = tile === upper ? [onTrim, onLay] : [onLay, onTrim];
  const moves = from.map((point, index) => ({
    x: (to[index]?.x ?? Number.NaN) - point.x,
    y: (to[index]?.y ?? Number.NaN) - point.y,
  }));
  const [first, second] = moves;
  if (!first || !second || moves.length !== 2) throw new Error('a seam without two marks');
  expect(Math.hypot(first.x - second.x, first.y - second.y)).toBeLessThan(0.01);
  return { x: by.x + first.x, y: by.y + first.y };
}

function pairOn({ diamonds }: Tile, level: boolean, at: number): Point[] {
  return diamonds
    .filter(({ x, y }) => Math.abs((level ? x : y) - at) < 1e-6)
    .sort((a, b) => (level ? a.y - b.y : a.x - b.x));
}

/** The tiles from the top of the pile down: an upper row lies on the lower one, and in a row the right tile on the left. */
function fromTheTop(lain: readonly Lain[]): Lain[] {
  return [...lain].sort((a, b) => a.tile.row - b.tile.row || b.tile.column - a.tile.column);
}

function shows({ tile: { clip }, by }: Lain, { x, y }: Point): boolean {
  return clip.left <= x - by.x && x - by.x <= clip.right && clip.bottom <= y - by.y && y - by.y <= clip.top;
}

/** The most ink within so many pixels of a place. */
function inkNear({ raster }: Tile, { x, y }: Point, reach: number): number {
  const [column, row] = [Math.floor(x * raster.across), raster.height - 1 - Math.floor(y * raster.up)];
  let most = 0;
  for (let down = -reach; down <= reach; down += 1)
    for (let along = -reach; along <= reach; along += 1)
      most = Math.max(most, inkAt(raster, column + along, row + down));
  return most;
}

interface Difference {
  /** Dark pixels of either picture with nothing dark within one pixel of them in the other. */
  readonly stray: number;
  readonly dark: number;
}

/** Compares the laid tiles with the leaf in one piece, pixel by pixel, but for the marks of the seams. */
function difference(lain: readonly Lain[], whole: Tile, leaf: Leaf): Difference {
  const [first] = lain;
  if (!first) throw new Error('no tiles');
  const turned = (point: Point) => (first.tile.turn === 0 ? point : { x: -point.y, y: point.x });
  const { left, bottom, right, top } = leaf.wrap.box;
  const onWhole = (point: Point) => {
    const { x, y } = whole.turn === 0 ? point : { x: -point.y, y: point.x };
    return { x: whole.origin.x + x, y: whole.origin.y + y };
  };
  const pile = fromTheTop(lain);
  let [stray, dark] = [0, 0];
  for (let x = left + PIXEL / 2; x < right; x += PIXEL) {
    for (let y = bottom + PIXEL / 2; y < top; y += PIXEL) {
      const place = turned({ x, y });
      const together = { x: first.tile.origin.x + place.x, y: first.tile.origin.y + place.y };
      const shown = pile.find((each) => shows(each, together));
      if (!shown) throw new Error(`nothing covers ${x}, ${y}`);
      const at = { x: together.x - shown.by.x, y: together.y - shown.by.y };
      const [tiled, one] = [inkNear(shown.tile, at, 0), inkNear(whole, onWhole({ x, y }), 0)];
      if (tiled <= DARK && one <= DARK) continue;
      dark += 1;
      const missed =
        (tiled > DARK && inkNear(whole, onWhole({ x, y }), 1) < LIGHT) ||
        (one > DARK && inkNear(shown.tile, at, 1) < LIGHT);
      if (missed && !marked(lain, together)) stray += 1;
    }
  }
  return { stray, dark };
}

/** Whether a mark of a seam lies there on any tile, or so near that its edge does. */
function marked(lain: readonly Lain[], { x, y }: Point): boolean {
  return lain.some(({ tile, by }) =>
    tile.marks.some(
      (box) =>
        x - by.x > box.left - 0.4 &&
        x - by.x < box.right + 0.4 &&
        y - by.y > box.bottom - 0.4 &&
        y - by.y < box.top + 0.4,
    ),
  );
}

/** The first of these papers that cuts the leaf into so many tiles. */
function paperFor(leaf: Leaf, tiles: number) {
  for (let width = 330; width >= 140; width -= 5) {
    const paper = { name: 'some paper', width, height: width * 1.2 };
    const set = laySheets([leaf], ask(paper), { job: 'Trailer', words: ENGLISH });
    if ([...set.sheets].filter(({ placements }) => placements.some(({ clip }) => clip)).length === tiles)
      return paper;
  }
  throw new Error(`no paper cuts the leaf into ${tiles} tiles`);
}

const LEAVES = [
  [6, leafOf(168.3, 45)],
  [12, leafOf(219.1, 35)],
  [2, leafOf(114.3, 60)],
] as const;

describe.each(someOf(LEAVES, { short: 1 }))(
  'a leaf cut into %d tiles, rastered and laid by its registration marks',
  (count, leaf) => {
    it('shows what the leaf shows in one piece', async () => {
      const tiles = await printed(leaf, paperFor(leaf, count));
      expect(tiles).toHaveLength(count);
      const [whole] = await printed(leaf, BIG);
      if (!whole) throw new Error('no single sheet');
      const lain = laidByTheirMarks(tiles);
      expect(lain).toHaveLength(count);
      const { stray, dark } = difference(lain, whole, leaf);
      expect(dark).toBeGreaterThan(10_000);
      expect(stray).toBe(0);
      // One tile laid half a millimetre off shows.
      const askew = lain.map((each, index) =>
        index === 1 ? { ...each, by: { x: each.by.x + 0.35, y: each.by.y + 0.35 } } : each,
      );
      expect(difference(askew, whole, leaf).stray).toBeGreaterThan(500);
    });
  },
);
