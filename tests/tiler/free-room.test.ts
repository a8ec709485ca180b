import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/draw/drawing.ts';
import { places, without } from '../../src/tiler/free-room.ts';

const box = (left: number, bottom: number, right: number, top: number): Box => ({ left, bottom, right, top });
const SHEET = box(0, 0, 100, 100);

const inOrder = (boxes: readonly Box[]): Box[] =>
  boxes.toSorted((a, b) => a.left - b.left || a.bottom - b.bottom || a.right - b.right);

describe('what is left of a sheet when a box is taken from it', () => {
  it('is the largest rectangles beside, below and above it, which overlap', () => {
    expect(inOrder(without([SHEET], box(30, 40, 60, 70)))).toEqual([
      box(0, 0, 30, 100),
      box(0, 0, 100, 40),
      box(0, 70, 100, 100),
      box(60, 0, 100, 100),
    ]);
    expect(inOrder(without([SHEET], box(0, 0, 60, 40)))).toEqual([
      box(0, 40, 100, 100),
      box(60, 0, 100, 100),
    ]);
  });

  it('is the sheet where the box does not touch it, and nothing where it covers it', () => {
    expect(without([SHEET], box(100, 0, 120, 100))).toEqual([SHEET]);
    expect(without([SHEET], box(-1, -1, 101, 101))).toEqual([]);
  });

  it('has each rectangle once, and none within another', () => {
    // Either leaves the lower half; the left one has another within it.
    const room = without([box(0, 0, 100, 100), box(0, 0, 100, 60)], box(0, 50, 100, 100));
    expect(room).toEqual([box(0, 0, 100, 50)]);
  });
});

describe('a place', () => {
  const ROOM = [box(50, 0, 100, 60), box(0, 0, 40, 60), box(20, 0, 100, 100)];

  it('is looked for from the top, then from the left, wherever the size goes', () => {
    expect(places(ROOM, { width: 30, height: 50 })).toEqual([
      box(20, 50, 50, 100),
      box(0, 10, 30, 60),
      box(50, 10, 80, 60),
    ]);
    expect(places(ROOM, { width: 60, height: 80 })).toEqual([box(20, 20, 80, 100)]);
    expect(places(ROOM, { width: 90, height: 10 })).toEqual([]);
  });
});
