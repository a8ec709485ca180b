import { beforeAll, describe, expect, test } from 'vitest';
import { DEEP, howMany } from '../count.ts';
import { type Raster, rasterOf, textOf } from '../ink/raster.ts';
import { girthOfPaper, type Landing, type Lie, outside, square } from './exact-lines.ts';
import { printedSample, type RoughLie, type RoughPages, roughPages } from './laid-wraps.ts';
import {
  lengthOf,
  lieOf,
  type SeamMarks,
  type Strays,
  seamAt,
  seamEdgeOf,
  straysOf,
} from './measured-leaf.ts';
import { PIXEL } from './printed-line.ts';

const DEGREE = Math.PI / 180;
const INCH = 25.4;
const DPI = 1200;
const STATIONS = howMany({ short: 400, deep: 1000 });
/** Seam edges and tile edges are ink too: stations begin this far from them, mm. */
const OFF_EDGE = 0.8;
/** Neighbouring tiles show the same 10 mm, so that one can be laid on the other. */
const OVERLAP = 10;

/** What the samples' files say, worked out by hand. */
const STAY = { radius: (1.25 * INCH) / 2, wall: 0.095 * INCH };
const STAY_A: Landing = { ...STAY, header: 0.75 * INCH, angle: 62 * DEGREE, clock: 0, offset: 0 };
const STAY_B: Landing = {
  ...STAY,
  header: 0.875 * INCH,
  angle: 48 * DEGREE,
  clock: 35 * DEGREE,
  offset: (3 / 32) * INCH,
};
const FOOT: Landing = { radius: 57.15, wall: 3.6, header: 69.85, angle: 60 * DEGREE, clock: 0, offset: 0 };

/** The opposite hand: stations run the other way round. */
function mirrored(landing: Landing): Landing {
  return { ...landing, clock: -landing.clock, offset: -landing.offset };
}

/** As on a tape: `18-3/8`. */
function mixed(whole: number, top: number, bottom: number): string {
  if (top === 0) return `${whole}`;
  return top % 2 === 0 ? mixed(whole, top / 2, bottom / 2) : `${whole}-${top}/${bottom}`;
}

/** The lengths of the bars of one page in each axis, the shorter first. */
function barLengths(raster: Raster, { bars }: RoughPages, page: number): number[][] {
  return (['across', 'up'] as const).map((axis) =>
    (bars[page] ?? [])
      .filter((bar) => bar.axis === axis)
      .map((bar) => lengthOf(raster, bar))
      .sort((a, b) => a - b),
  );
}

function expectTrueBars(pages: readonly number[][][], count: number): void {
  expect(pages).toHaveLength(count);
  for (const lengths of pages.flat()) {
    expect(lengths).toHaveLength(2);
    const [short = 0, long = 0] = lengths;
    expect(Math.abs(short - 100)).toBeLessThan(PIXEL);
    // 4 in is 101.6 mm exactly (international yard and pound agreement, 1959).
    expect(Math.abs(long - 101.6)).toBeLessThan(PIXEL);
  }
}

/** Most stations have to be clear, and the ones that are have to be all over the girth. */
function expectTrueLine({ each, worst }: Strays, of: number): void {
  expect(each.length).toBeGreaterThan(of / 2);
  expect(worst).toBeLessThan(PIXEL);
  const stations = each.map(({ station }) => station);
  const gaps = stations.slice(1).map((station, i) => station - (stations[i] ?? station));
  expect(Math.max(...gaps)).toBeLessThan(Math.PI / 4);
}

/** So narrow that each leaf has its own sheet, with its card under it: turned, no two would go on one. */
const NARROW = '7x11in';

/** A short run measures the hand that is mirrored. */
const HANDS = DEEP ? ['as-drawn', 'opposite'] : ['opposite'];

describe('a brace with its opposite hand, a leaf to a sheet, rastered by another program at 1200 dpi', () => {
  const { source, pdf } = printedSample('brace', NARROW);
  const measured: { rough: RoughLie; lie: Lie; strays: Strays; girth: number }[] = [];
  const bars: number[][][] = [];

  beforeAll(async () => {
    const pages = roughPages(source);
    for (const page of pages.bars.keys()) {
      const lies = pages.lies.filter((each) => each.page === page && HANDS.includes(each.hand));
      if (lies.length === 0) continue;
      const raster = await rasterOf(pdf, page, DPI);
      bars.push(barLengths(raster, pages, page));
      for (const rough of lies) {
        const asDrawn = rough.end === 'A' ? STAY_A : STAY_B;
        const landing = rough.hand === 'opposite' ? mirrored(asDrawn) : asDrawn;
        const lie = lieOf(raster, rough, landing, outside, INCH / 16);
        const across = [rough.left + OFF_EDGE, rough.left + girthOfPaper(landing) - OFF_EDGE] as const;
        const strays = straysOf(raster, lie, landing, outside, across, STATIONS);
        const girth =
          seamEdgeOf(raster, rough, landing, 'right') - seamEdgeOf(raster, rough, landing, 'left');
        measured.push({ rough, lie, strays, girth });
      }
    }
  });

  test("the middle of each leaf's cut line lies within one pixel of the exact curve", () => {
    expect(measured.map(({ rough }) => `${rough.end} ${rough.hand}`).sort()).toEqual(
      ['A', 'B'].flatMap((end) => HANDS.map((hand) => `${end} ${hand}`)),
    );
    for (const { strays } of measured) expectTrueLine(strays, STATIONS);
  });

  test('the seam edges stand once round the bent paper apart', () => {
    for (const { girth } of measured) expect(Math.abs(girth - Math.PI * (31.75 + 0.1))).toBeLessThan(PIXEL);
  });

  test('the words say how far apart along the spine the two base edges are printed to be', async () => {
    for (const hand of HANDS) {
      const [a, b] = measured.filter(({ rough }) => rough.hand === hand);
      if (!a || !b) throw new Error('no leaves');
      const apart = 24.375 - (a.lie.baseSetback + b.lie.baseSetback) / INCH;
      const sixteenths = Math.round((apart % 1) * 16);
      expect(Math.abs(apart - Math.floor(apart) - sixteenths / 16)).toBeLessThan(1e-9);
      const text = (await textOf(pdf, a.rough.page)).replace(/\s+/g, ' ');
      expect(text).toContain(`base edge: ${mixed(Math.floor(apart), sixteenths, 16)} in to base edge B`);
    }
  });

  test('the bars are within one pixel of 100 mm and 4 in on each sheet, across and up', () => {
    expectTrueBars(bars, 2 * HANDS.length);
  });
});

describe('a mast foot in two tiles on letter, rastered by another program at 1200 dpi', () => {
  const { source, pdf } = printedSample('mast-foot', 'letter');
  const bars: number[][][] = [];
  let lay: SeamMarks;
  let trim: SeamMarks;
  let right: Strays;
  let left: Strays;
  let girth: number;

  beforeAll(async () => {
    const pages = roughPages(source);
    const [first, second] = pages.lies;
    if (!first?.clip || !second?.clip || pages.lies.length > 2) throw new Error('not two tiles');

    const rightTile = await rasterOf(pdf, second.page, DPI);
    const lie = lieOf(rightTile, second, FOOT, square, 1);
    trim = seamAt(rightTile, second.clip.left, second);
    const edge = second.left + girthOfPaper(FOOT);
    right = straysOf(rightTile, lie, FOOT, square, [trim.x + OFF_EDGE, edge - OFF_EDGE], STATIONS);
    const rightEdge = seamEdgeOf(rightTile, second, FOOT, 'right');
    const rightBars = barLengths(rightTile, pages, second.page);

    const leftTile = await rasterOf(pdf, first.page, DPI);
    lay = seamAt(leftTile, first.clip.right - OVERLAP, first);
    const moved = {
      ...lie,
      spine: lie.spine + lay.x - trim.x,
      baseEdge: lie.baseEdge + middle(lay.heights) - middle(trim.heights),
    };
    const shown = [first.left + OFF_EDGE, first.clip.right - OFF_EDGE] as const;
    left = straysOf(leftTile, moved, FOOT, square, shown, STATIONS);
    girth = rightEdge - trim.x + lay.x - seamEdgeOf(leftTile, first, FOOT, 'left');
    bars.push(barLengths(leftTile, pages, first.page), rightBars);
  });

  test("the right tile's cut line lies within one pixel of the exact curve, by its spine and base edge", () => {
    expectTrueLine(right, STATIONS);
  });

  test("so does the left tile's, by the right one's spine and base edge, when that is laid on it by the marks", () => {
    expectTrueLine(left, STATIONS);
  });

  test('laid together, the seam edges stand once round the bent paper apart', () => {
    expect(Math.abs(girth - Math.PI * (114.3 + 0.1))).toBeLessThan(PIXEL);
  });

  test('the diamonds of both tiles are as far apart', () => {
    const apart = ([lower, upper]: SeamMarks['heights']) => upper - lower;
    expect(Math.abs(apart(lay.heights) - apart(trim.heights))).toBeLessThan(PIXEL);
  });

  test('the bars are within one pixel of 100 mm and 4 in on each sheet, across and up', () => {
    expectTrueBars(bars, 2);
  });
});

function middle([lower, upper]: SeamMarks['heights']): number {
  return (lower + upper) / 2;
}
