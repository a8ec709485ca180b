import { beforeAll, describe, expect, it } from 'vitest';
import { inkPdf } from '../../src/ink/pdf.ts';
import type { Printer } from '../../src/job/paper/printer.ts';
import { laySheets } from '../../src/tiler/lay-sheets.ts';
import type { Placement } from '../../src/tiler/sheets.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { type Raster, rasterOf } from '../ink/raster.ts';
import { printerOf } from '../tiler/measured-printer.ts';
import { girthOfPaper, type Landing, outside } from './exact-lines.ts';
import { barsOn, type DrawnLeaf, leavesOf, type RoughBar, type RoughLie, spineOf } from './laid-wraps.ts';
import { lengthOf, lieOf, type Strays, seamEdgeOf, straysOf } from './measured-leaf.ts';
import { PIXEL } from './printed-line.ts';

const DPI = 600;
/** What the printer makes of a millimetre. */
const SHORT_ACROSS = 0.993;
const LONG_UP = 1.003;
const STATIONS = 600;
const DEGREE = Math.PI / 180;

/** A gunwale stay of the trailer, and the same by hand for the exact line. */
const JOB = `copeleaf: 1
paper: A4
tube:
  name: gunwale stay
  od: 38.1
  wall: 2.4
  ends:
    A: { onto: { od: 44.5 }, angle: 60 }
`;
const STAY: Landing = { radius: 19.05, wall: 2.4, header: 22.25, angle: 60 * DEGREE, clock: 0, offset: 0 };

/** What the printer puts on paper: the page drawn smaller or larger about its middle, resampled to the same dots. */
function printedBy(drawn: Raster, across: number, up: number): Raster {
  const { width, height } = drawn;
  const data = new Uint8Array(width * height).fill(255);
  const levels = (count: number, factor: number) =>
    Array.from({ length: count }, (_, dot) => count / 2 + (dot + 0.5 - count / 2) / factor - 0.5);
  const [columns, rows] = [levels(width, across), levels(height, up)];
  // Beyond the page's edge there is the margin of its other side, as white.
  const level = (dot: number) => drawn.data[dot] ?? 255;
  for (const [down, row] of rows.entries()) {
    const top = Math.floor(row);
    const low = row - top;
    for (let along = 0; along < width; along++) {
      const column = columns[along] ?? 0;
      const left = Math.floor(column);
      const right = column - left;
      const above = top * width + left;
      const below = above + width;
      const [a, b, c, d] = [level(above), level(above + 1), level(below), level(below + 1)];
      // Most of a page is white.
      if (a + b + c + d === 4 * 255) continue;
      const upper = (1 - right) * a + right * b;
      const lower = (1 - right) * c + right * d;
      data[down * width + along] = Math.round((1 - low) * upper + low * lower);
    }
  }
  return { ...drawn, data };
}

function roughLie(drawn: DrawnLeaf, placements: readonly Placement[]): RoughLie {
  const { wrap } = drawn.leaf;
  const placement = placements.find(({ drawing }) => drawing === wrap);
  if (placement?.turn !== 0) throw new Error('the wrap is not there, or turned');
  const { at } = placement;
  return {
    ...drawn,
    page: 0,
    left: at.x + wrap.box.left + 0.2,
    spine: at.x + spineOf(wrap),
    baseEdge: at.y + wrap.box.top - 0.2,
    diamonds: [],
  };
}

/** A place as the printer's page has it: without a printer's factors the page itself is drawn smaller or larger. */
function moved(bar: RoughBar, width: number, height: number): RoughBar {
  const place = ({ x, y }: RoughBar['from']) => ({
    x: width / 2 + (x - width / 2) * SHORT_ACROSS,
    y: height / 2 + (y - height / 2) * LONG_UP,
  });
  return { ...bar, from: place(bar.from), to: place(bar.to) };
}

interface Measured {
  /** 100 mm and 4 in across, then up. */
  readonly bars: readonly number[];
  readonly strays: Strays;
  readonly girth: number;
}

/** Draws the stay's leaf, prints it on the printer that is off, and measures what lies on the paper. */
async function measured(printer?: Printer): Promise<Measured> {
  const { job, leaves } = leavesOf(JOB);
  const [drawn] = leaves;
  if (!drawn) throw new Error('no leaf');
  const set = laySheets([drawn.leaf], job.sheet, { job: 'trailer', words: ENGLISH }, printer);
  const [sheet] = set.sheets;
  if (!sheet || set.width > set.height) throw new Error('not one upright sheet');
  const pdf = await inkPdf(set, { title: 'stay', jobName: 'stay' });
  const paper = printedBy(await rasterOf(pdf, 0, DPI), SHORT_ACROSS, LONG_UP);
  const bars = barsOn(sheet.placements).map((bar) => (printer ? bar : moved(bar, set.width, set.height)));
  const rough = roughLie(drawn, sheet.placements);
  const at = printer ? rough : movedLie(rough, set.width, set.height);
  const lie = lieOf(paper, at, STAY, outside, 1);
  // Where the right edge is looked for; seamEdgeOf takes a tube.
  const girth = girthOfPaper(STAY) * (printer ? 1 : SHORT_ACROSS);
  const asWide = { ...STAY, radius: (girth / Math.PI - 0.1) / 2 };
  const across = [lie.spine - girthOfPaper(STAY) / 2 + 1, lie.spine + girthOfPaper(STAY) / 2 - 1] as const;
  return {
    bars: bars.map((bar) => lengthOf(paper, bar)),
    strays: straysOf(paper, lie, STAY, outside, across, STATIONS),
    girth: seamEdgeOf(paper, at, asWide, 'right') - seamEdgeOf(paper, at, asWide, 'left'),
  };
}

function movedLie(rough: RoughLie, width: number, height: number): RoughLie {
  return {
    ...rough,
    left: width / 2 + (rough.left - width / 2) * SHORT_ACROSS,
    spine: width / 2 + (rough.spine - width / 2) * SHORT_ACROSS,
    baseEdge: height / 2 + (rough.baseEdge - height / 2) * LONG_UP,
  };
}

describe('a printer 0.7 % short across and 0.3 % long up', () => {
  let without: Measured;
  let drawnFor: Measured;

  beforeAll(async () => {
    without = await measured();
    drawnFor = await measured(printerOf('99.3mm', '100.3mm'));
  });

  it('shows its error on the bars of a sheet that is drawn for no printer', () => {
    const expected = [100 * SHORT_ACROSS, 101.6 * SHORT_ACROSS, 100 * LONG_UP, 101.6 * LONG_UP];
    expect(without.bars).toHaveLength(4);
    for (const [index, bar] of without.bars.entries())
      expect(Math.abs(bar - (expected[index] ?? 0))).toBeLessThan(PIXEL);
    expect(Math.abs(without.girth - girthOfPaper(STAY) * SHORT_ACROSS)).toBeLessThan(PIXEL);
    expect(without.strays.worst).toBeGreaterThan(0.15);
  });

  it('prints true bars on a sheet that is drawn for it', () => {
    expect(drawnFor.bars).toHaveLength(4);
    for (const [index, bar] of drawnFor.bars.entries())
      expect(Math.abs(bar - (index % 2 === 0 ? 100 : 101.6))).toBeLessThan(PIXEL);
  });

  it('prints a true leaf on it: once round as long as the bent paper, the cut line within a dot of the exact one', () => {
    expect(Math.abs(drawnFor.girth - girthOfPaper(STAY))).toBeLessThan(PIXEL);
    expect(drawnFor.strays.each.length).toBeGreaterThan(STATIONS / 2);
    expect(drawnFor.strays.worst).toBeLessThan(PIXEL);
  });
});
