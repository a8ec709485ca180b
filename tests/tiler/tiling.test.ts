import { describe, expect, it } from 'vitest';
import { cut, type SeamStretch } from '../../src/tiler/seams.ts';
import { type Tile, tile } from '../../src/tiler/tiling.ts';
import { leafOf } from './synthetic.ts';

// The widths are our choice, no source: 8 mm of white at a leaf's outer edges, 5 mm beside a seam, 10 mm of overlap.
const APRON = 8;
const STRIP = 5;

/** The white at each edge of a tile, mm. */
function whiteOf({ clip, block }: Tile) {
  return {
    left: clip.left - block.left,
    bottom: clip.bottom - block.bottom,
    right: block.right - clip.right,
    top: block.top - clip.top,
  };
}

describe('white round a tile', () => {
  it('is 8 mm at the outer edges of a leaf and 5 mm at its seams, where there is room', () => {
    const { tiles, rows, columns } = tile(
      leafOf('mast foot', [380, 300]),
      { width: 240, height: 200 },
      'even',
    );
    expect([rows, columns]).toEqual([2, 2]);
    for (const one of tiles) {
      const white = whiteOf(one);
      expect(white.left).toBeCloseTo(one.column === 1 ? APRON : STRIP, 9);
      expect(white.right).toBeCloseTo(one.column === 2 ? APRON : STRIP, 9);
      expect(white.top).toBeCloseTo(one.row === 1 ? APRON : STRIP, 9);
      expect(white.bottom).toBeCloseTo(one.row === 2 ? APRON : STRIP, 9);
    }
  });

  it('is what the sheet has to spare where that is less, the same on both sides of a leaf that is whole', () => {
    const { tiles } = tile(leafOf('mast foot', [190, 253]), { width: 200, height: 260 }, 'even');
    expect(tiles).toHaveLength(1);
    for (const white of tiles.map(whiteOf)) {
      for (const side of [white.left, white.right]) expect(side).toBeCloseTo(5, 9);
      for (const side of [white.bottom, white.top]) expect(side).toBeCloseTo(3.5, 9);
    }
  });

  it('is none where the leaf fills the sheet', () => {
    const { tiles } = tile(leafOf('mast foot', [200, 260]), { width: 200, height: 260 }, 'even');
    expect(tiles.map(whiteOf)).toEqual([{ left: 0, bottom: 0, right: 0, top: 0 }]);
  });

  // Tiles of 190 and of 195 mm less 10 mm of overlap cover 375 mm, each with no room but for its strip.
  it('takes no more of the sheet than there is where the tiles of a leaf just cover it', () => {
    const room = { width: 200, height: 100 };
    const { tiles, turn } = tile(leafOf('mast foot', [380, 90]), room, 'even');
    expect([turn, tiles.length]).toEqual([0, 2]);
    for (const { block } of tiles) expect(block.right - block.left).toBeCloseTo(200, 9);
    expect(tiles.map((one) => whiteOf(one).left)).toEqual([0, STRIP]);
  });
});

describe('a seam keeps its marks off', () => {
  const seamsOf = (keep: readonly SeamStretch[], words: readonly SeamStretch[] = []): readonly number[] =>
    cut({ from: 0, to: 300 }, 200, { keep, words }, 'even').seams;

  it('lies in the middle where nothing is in its way', () => {
    expect(seamsOf([])).toEqual([150]);
  });

  // The next tile covers 10 mm beyond a seam, and its marks reach 4 mm to this side.
  it('a place to keep whole by 4 mm beyond it, and by the overlap before it', () => {
    expect(seamsOf([{ from: 145, to: 155.5 }])).toEqual([159.5]);
    expect(seamsOf([{ from: 155.5, to: 175 }])).toEqual([145.5]);
  });

  it('a line of words by 1.6 mm', () => {
    expect(seamsOf([], [{ from: 147.2, to: 151 }])).toEqual([152.6]);
    expect(seamsOf([], [{ from: 149, to: 152.3 }])).toEqual([147.4]);
  });

  it('lines of words that stand too close by going through the white between two', () => {
    const lines = Array.from({ length: 60 }, (_, i) => ({ from: i * 5 + 0.3, to: i * 5 + 3.3 }));
    const [seam = 0] = seamsOf([], lines);
    expect(Math.abs(seam - 150)).toBeLessThan(5);
    expect(lines.filter(({ from, to }) => from <= seam && seam <= to)).toEqual([]);
  });
});
