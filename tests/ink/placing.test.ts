import { describe, expect, test } from 'vitest';
import type { Drawing } from '../../src/draw/drawing.ts';
import { inkPdf } from '../../src/ink/pdf.ts';
import type { Placement } from '../../src/tiler/sheets.ts';
import { A4, drawing, INFO, line, words } from './drawn.ts';
import { inksFrom, middleOfInk, rasterOf } from './raster.ts';

const DPI = 300;
const PIXEL = 25.4 / DPI;

/** A line at x = 30 from y = 10 to y = 50, which reaches beyond the drawing's box. */
const UPRIGHT: Drawing = {
  ...drawing('upright', line('cut', { x: 30, y: 10 }, { x: 30, y: 50 }), words('L', 8, { x: 40, y: 20 })),
  box: { left: 25, bottom: 20, right: 60, top: 40 },
};

async function raster(...placements: Placement[]) {
  return rasterOf(await inkPdf({ ...A4, sheets: [{ placements }] }, INFO), 0, DPI);
}

/** Stands in the page itself when placed once, and is called as a stored form when placed twice. */
describe.each([
  ['once', []],
  ['twice', [{ drawing: UPRIGHT, at: { x: 0, y: 200 }, turn: 0 }]],
] as const)('a drawing placed %s', (_, others) => {
  test('is carried to its place, whole, whatever its box says', async () => {
    const page = await raster({ drawing: UPRIGHT, at: { x: 50, y: 60 }, turn: 0 }, ...others);
    expect(Math.abs(middleOfInk(page, 'across', 90, 70, 86) - 80)).toBeLessThan(PIXEL);
    const length = inksFrom(page, 'up', 80, 60, 120).reduce((sum, ink) => sum + ink, 0) * PIXEL;
    expect(Math.abs(length - 40)).toBeLessThan(PIXEL);
  });

  test('is turned a quarter counter-clockwise about its origin', async () => {
    // (30, 10..50) turned goes to (-50..-10, 30).
    const page = await raster({ drawing: UPRIGHT, at: { x: 150, y: 60 }, turn: 1 }, ...others);
    expect(Math.abs(middleOfInk(page, 'up', 105, 82, 96) - 90)).toBeLessThan(PIXEL);
    const length = inksFrom(page, 'across', 90, 90, 150).reduce((sum, ink) => sum + ink, 0) * PIXEL;
    expect(Math.abs(length - 40)).toBeLessThan(PIXEL);
  });

  test("inks nothing outside its clip box, which is the sheet's and does not turn", async () => {
    const clip = { left: 110, bottom: 60, right: 130, top: 120 };
    const page = await raster({ drawing: UPRIGHT, at: { x: 150, y: 60 }, turn: 1, clip }, ...others);
    const length = inksFrom(page, 'across', 90, 60, 150).reduce((sum, ink) => sum + ink, 0) * PIXEL;
    expect(Math.abs(length - 20)).toBeLessThan(PIXEL);
    expect(Math.abs(middleOfInk(page, 'across', 90, 60, 150) - 120)).toBeLessThan(PIXEL);
  });

  test('is clipped no further than its own clip box reaches', async () => {
    const clip = { left: 0, bottom: 0, right: 20, top: 20 };
    const page = await raster({ drawing: UPRIGHT, at: { x: 50, y: 60 }, turn: 0, clip }, ...others);
    const after = await raster(
      { drawing: UPRIGHT, at: { x: 50, y: 60 }, turn: 0, clip },
      {
        drawing: drawing('next', line('cut', { x: 100, y: 90 }, { x: 110, y: 90 })),
        at: { x: 0, y: 0 },
        turn: 0,
      },
      ...others,
    );
    expect(Math.max(...inksFrom(page, 'across', 90, 70, 90))).toBe(0);
    expect(Math.max(...inksFrom(after, 'across', 90, 100, 110))).toBeGreaterThan(0.5);
  });
});

test('a solid shape and a closed line are filled and closed', async () => {
  const corner = { x: 20, y: 20 };
  const pieces = [
    { kind: 'line', to: { x: 40, y: 20 } },
    { kind: 'line', to: { x: 40, y: 40 } },
    { kind: 'line', to: { x: 20, y: 40 } },
  ] as const;
  const path = { start: corner, pieces, closed: true };
  const beside = {
    ...path,
    start: { x: 60, y: 20 },
    pieces: pieces.map(({ kind, to }) => ({ kind, to: { x: to.x + 40, y: to.y } })),
  };
  const shapes = drawing(
    'shapes',
    { kind: 'fill', purpose: 'picture', path },
    { kind: 'stroke', purpose: 'frame', path: beside },
  );
  const page = await raster({ drawing: shapes, at: { x: 0, y: 0 }, turn: 0 });
  expect(inksFrom(page, 'across', 30, 21, 39).every((ink) => ink === 1)).toBe(true);
  expect(inksFrom(page, 'across', 30, 62, 78).every((ink) => ink === 0)).toBe(true);
  expect(Math.max(...inksFrom(page, 'across', 30, 59, 61))).toBeGreaterThan(0.5);
});
