import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Box, Point } from '../../src/draw/drawing.ts';
import { PAPERS, type Paper } from '../../src/job/paper/paper.ts';
import type { Leaf } from '../../src/leaf/leaf.ts';
import { laySheets } from '../../src/tiler/lay-sheets.ts';
import type { Placement, Sheet } from '../../src/tiler/sheets.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { howMany } from '../count.ts';

import { boxAround, onSheet, pointsOf } from './ink-boxes.ts';
import { ask, leafOf } from './synthetic.ts';

const OVERLAP = 10;
/** A clip is so much wider than the leaf at the leaf's own edges, for the width of its lines. */
const CLIP_HAIR = 0.3;

/** A tile as its sheet shows it; the lines and marks in sheet coordinates, the clip in those of the turned wrap too. */
interface Tile {
  readonly sheet: number;
  readonly clip: Box;
  readonly shows: Box;
  readonly origin: Point;
  readonly words: string;
  /** Ends of the straight lines of the seams, and the middles of their diamonds. */
  readonly lines: readonly Box[];
  readonly diamonds: readonly Point[];
}

function tilesOf(leaf: Leaf, paper: Paper): Tile[] {
  const { sheets } = laySheets([leaf], ask(paper), { job: 'Trailer', words: ENGLISH });
  return [...sheets].flatMap((sheet, index) => {
    const wrap = sheet.placements.find(({ drawing }) => drawing === leaf.wrap);
    return wrap?.clip === undefined ? [] : [tileOn(sheet, index + 1, wrap, wrap.clip)];
  });
}

function tileOn({ placements }: Sheet, sheet: number, wrap: Placement, clip: Box): Tile {
  const own = placements.filter(({ drawing }) => drawing.name.startsWith('sheet '));
  const marks = own.flatMap((placement) => placement.drawing.marks.map((mark) => ({ placement, mark })));
  const strokes = marks.flatMap(({ placement, mark }) =>
    mark.kind === 'stroke' && mark.purpose === 'registration'
      ? [
          {
            closed: mark.path.closed,
            box: boxAround(pointsOf(mark.path).map((point) => onSheet(placement, point))),
          },
        ]
      : [],
  );
  const { x, y } = wrap.at;
  return {
    sheet,
    clip,
    shows: { left: clip.left - x, bottom: clip.bottom - y, right: clip.right - x, top: clip.top - y },
    origin: wrap.at,
    words: marks.flatMap(({ mark }) => (mark.kind === 'words' ? [mark.text] : [])).join('\n'),
    lines: strokes.filter(({ closed }) => !closed).map(({ box }) => box),
    diamonds: strokes
      .filter(({ closed }) => closed)
      .map(({ box }) => ({ x: (box.left + box.right) / 2, y: (box.bottom + box.top) / 2 })),
  };
}

/** Neighbours as the words of the sheets tell them: the one to trim, and the one it is laid on. */
function joints(tiles: readonly Tile[]): { over: Tile; under: Tile; upright: boolean }[] {
  return tiles.flatMap((over) =>
    (['left', 'below'] as const).flatMap((side) => {
      const told = new RegExp(`\\b${side}: sheet (\\d+)`).exec(over.words)?.[1];
      const under = tiles.find(({ sheet }) => `${sheet}` === told);
      return under === undefined ? [] : [{ over, under, upright: side === 'left' }];
    }),
  );
}

const swapped = ({ x, y }: Point): Point => ({ x: y, y: x });
const near = (a: number, b: number) => Math.abs(a - b) < 1e-6;

/** Everything of one tile read for an upright seam; for a level one x and y change places. */
function read(tile: Tile, upright: boolean) {
  const turn = (point: Point) => (upright ? point : swapped(point));
  const low = ({ left, bottom }: Box) => turn({ x: left, y: bottom });
  const high = ({ right, top }: Box) => turn({ x: right, y: top });
  return {
    from: low(tile.clip),
    to: high(tile.clip),
    origin: turn(tile.origin),
    lines: tile.lines.map((line) => ({ low: low(line), high: high(line) })),
    diamonds: tile.diamonds.map(turn).sort((a, b) => a.y - b.y),
  };
}

const side = (least: number) => fc.double({ min: least, max: 800, noNaN: true });
const large = fc
  .tuple(side(320), side(60), fc.boolean())
  .map(([long, short, tall]) => (tall ? [short, long] : [long, short]));
const paper = fc.constantFrom(...PAPERS.slice(0, 5), { name: 'smallest', width: 130, height: 137 });

function forRandomTiles(holds: (tiles: Tile[], leaf: Leaf) => void): void {
  fc.assert(
    fc.property(large, paper, ([width = 0, height = 0], paper) => {
      const leaf = leafOf('mast foot', [width, height], [50, 35]);
      const tiles = tilesOf(leaf, paper);
      fc.pre(tiles.length > 0);
      holds(tiles, leaf);
    }),
    { numRuns: howMany({ short: 20, deep: 80 }), seed: 711, endOnFailure: true },
  );
}

describe('a leaf in tiles', () => {
  it('is covered wholly', () => {
    forRandomTiles((tiles, leaf) => {
      const { left, bottom, right, top } = leaf.wrap.box;
      const turn = laidTurn(tiles, leaf);
      const whole = turn ? { left: -top, bottom: left, right: -bottom, top: right } : leaf.wrap.box;
      const xs = [...new Set(tiles.flatMap(({ shows }) => [shows.left, shows.right]))].sort((a, b) => a - b);
      const ys = [...new Set(tiles.flatMap(({ shows }) => [shows.bottom, shows.top]))].sort((a, b) => a - b);
      expect(boxAround(xs.flatMap((x) => ys.map((y) => ({ x, y }))))).toSatisfy(
        (all: Box) =>
          all.left <= whole.left &&
          all.bottom <= whole.bottom &&
          all.right >= whole.right &&
          all.top >= whole.top,
      );
      const middles = (edges: number[]) =>
        edges.slice(1).map((edge, index) => (edge + (edges[index] ?? edge)) / 2);
      const bare = middles(xs).flatMap((x) =>
        middles(ys).filter(
          (y) => !tiles.some(({ shows: s }) => s.left < x && x < s.right && s.bottom < y && y < s.top),
        ),
      );
      expect(bare).toEqual([]);
    });
  });

  it('overlaps by 10 mm at every seam', () => {
    forRandomTiles((tiles) => {
      const all = joints(tiles);
      expect(all.length).toBeGreaterThanOrEqual(tiles.length - 1);
      for (const { over, under, upright } of all) {
        const overlap = upright ? under.shows.right - over.shows.left : under.shows.top - over.shows.bottom;
        expect(overlap).toBeGreaterThanOrEqual(OVERLAP - 1e-9);
      }
    });
  });

  it('comes into register when a trimmed edge is laid on its line by the marks', () => {
    forRandomTiles((tiles) => {
      for (const joint of joints(tiles)) {
        const over = read(joint.over, joint.upright);
        const under = read(joint.under, joint.upright);
        // The trim line: where the trimmed sheet's clip begins, over all its height.
        const trim = over.lines.find(
          ({ low, high }) =>
            near(low.x, over.from.x) &&
            near(high.x, over.from.x) &&
            low.y <= over.from.y + CLIP_HAIR + 1e-9 &&
            high.y >= over.to.y - CLIP_HAIR - 1e-9,
        );
        const layAt = under.to.x - OVERLAP;
        const lay = under.lines.find(
          ({ low, high }) =>
            near(low.x, layAt) &&
            near(high.x, layAt) &&
            low.y <= under.from.y + CLIP_HAIR + 1e-9 &&
            high.y >= under.to.y - CLIP_HAIR - 1e-9,
        );
        if (trim === undefined || lay === undefined) throw new Error('a seam without its lines');
        const above = over.diamonds.filter(({ x }) => near(x, trim.low.x));
        const below = under.diamonds.filter(({ x }) => near(x, lay.low.x));
        expect([above.length, below.length]).toEqual([2, 2]);
        const [first, second] = above;
        const [firstBelow, secondBelow] = below;
        if (!first || !second || !firstBelow || !secondBelow) throw new Error('no marks');
        // The person lays the line on the line and the first mark on the first mark; all else must follow.
        const move = { x: lay.low.x - trim.low.x, y: firstBelow.y - first.y };
        expect(Math.abs(second.y + move.y - secondBelow.y)).toBeLessThan(0.01);
        expect(Math.abs(over.origin.x + move.x - under.origin.x)).toBeLessThan(0.01);
        expect(Math.abs(over.origin.y + move.y - under.origin.y)).toBeLessThan(0.01);
        // As far apart as the seam allows: 6 mm off what crosses it, the overlap not counted, which the next tile hides.
        const seam = over.to.y - over.from.y - OVERLAP - 2 * CLIP_HAIR;
        expect(second.y - first.y).toBeGreaterThanOrEqual(seam - 12 - 1e-9);
      }
    });
  });

  it('says on each sheet which edge is trimmed, which line it is laid on, and where its neighbours are', () => {
    forRandomTiles((tiles) => {
      for (const { over, under, upright } of joints(tiles)) {
        expect(over.words).toMatch(/✂.* ?trim/u);
        expect(under.words).toMatch(
          new RegExp(`sheet ${over.sheet}(’s trimmed edge on this line| here|\\n|$)`, 'u'),
        );
        expect(under.words).toContain(`${upright ? 'right' : 'above'}: sheet ${over.sheet}`);
      }
      for (const { words } of tiles) expect(words).toMatch(/(row|column) \d+ of \d+/);
    });
  });

  it('is cut beside a place to keep whole where there is a way', () => {
    const [letter, A4] = PAPERS;
    if (letter === undefined || A4 === undefined)
      throw new Error('letter and A4 are the papers to begin with');
    for (const paper of [letter, A4]) {
      // 300 mm go on two sheets with some 30 mm to spare: the place stands where a cut would go through it.
      const plain = leafOf('mast foot', [300, 200], [60, 40]);
      const tiles = tilesOf(plain, paper);
      const [first] = seamsOf(tiles, plain);
      if (first === undefined) throw new Error('no seam');
      const place = { left: first - 6, right: first + 6, bottom: -40, top: 140 };
      const spared: Leaf = { ...plain, keepWhole: [place] };
      const kept = tilesOf(spared, paper);
      expect(kept).toHaveLength(tiles.length);
      const seams = seamsOf(kept, spared);
      expect(seams).toHaveLength(1);
      for (const at of seams)
        expect(at >= place.right || at + OVERLAP <= place.left, `cut at ${at}`).toBe(true);
    }
  });
});

/** Where a leaf cut along its length only is cut, in its own coordinates: turned, its length runs up the sheets. */
function seamsOf(tiles: readonly Tile[], leaf: Leaf): number[] {
  const turn = laidTurn(tiles, leaf);
  const along = joints(tiles).filter(({ upright }) => upright !== turn);
  expect(along).toHaveLength(joints(tiles).length);
  return along.map(({ over }) => (turn ? over.shows.bottom : over.shows.left));
}

function laidTurn(tiles: readonly Tile[], { wrap }: Leaf): boolean {
  const all = boxAround(
    tiles.flatMap(({ shows }) => [
      { x: shows.left, y: shows.bottom },
      { x: shows.right, y: shows.top },
    ]),
  );
  return Math.abs(all.right - all.left - (wrap.box.right - wrap.box.left)) > 1;
}
