import { describe, expect, it } from 'vitest';
import type { Box, Point } from '../../src/draw/drawing.ts';
import { inkPdf } from '../../src/ink/pdf.ts';
import { PAPERS, type Paper, readPaper } from '../../src/job/paper/paper.ts';
import type { Printer } from '../../src/job/paper/printer.ts';
import { type LaidSheets, laySheets } from '../../src/tiler/lay-sheets.ts';
import type { Placement } from '../../src/tiler/sheets.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { someOf } from '../count.ts';
import { rasterOf } from '../ink/raster.ts';
import { barsOn } from '../print/laid-wraps.ts';
import { lengthOf } from '../print/measured-leaf.ts';
import { PIXEL } from '../print/printed-line.ts';
import { boxAround, inkBox, shownBox } from './ink-boxes.ts';
import { printerOf } from './measured-printer.ts';
import { ask, leafOf } from './synthetic.ts';

const ROLLS = ['roll 610mm', 'roll 24in', 'roll 160mm'].map(paperNamed);
const SHORT_AND_LONG = printerOf('99.3mm', '100.3mm');
const LONG_AND_SHORT = printerOf('101.2mm', '98.9mm');
const MARGINS = { left: 10, right: 10, top: 10, bottom: 17 };
/** Of a sideways page the paper's foot may be either side. */
const TURNED = { left: 17, right: 17, top: 10, bottom: 10 };
const OTHERS = { left: 6, right: 12, top: 8, bottom: 20 };
const OTHERS_TURNED = { left: 20, right: 20, top: 12, bottom: 12 };

function paperNamed(name: string): Paper {
  const reading = readPaper(name, 'mm');
  if (!reading.ok) throw new Error(reading.read);
  return reading.value;
}

/** A large leaf and a small one: together they take tiles on small papers, and share a sheet on large ones. */
const LEAVES = [leafOf('mast foot', [700, 260], [60, 40]), leafOf('rung', [70, 40], [50, 35])];

interface Laid {
  readonly set: LaidSheets;
  readonly paper: Paper;
  readonly printer: Printer | undefined;
  readonly sideways: boolean;
}

function laid(paper: Paper, printer?: Printer, margins = MARGINS): Laid {
  const set = laySheets(LEAVES, ask(paper, margins), { job: 'Trailer', words: ENGLISH }, printer);
  return { set, paper, printer, sideways: !paper.roll && set.width !== paper.width };
}

/** A point of a sheet where the file draws it. */
function drawn({ stretch }: LaidSheets, { x, y }: Point): Point {
  if (stretch === undefined) return { x, y };
  const { about, across, up } = stretch;
  return { x: about.x + (x - about.x) * across, y: about.y + (y - about.y) * up };
}

function drawnBox(set: LaidSheets, { left, bottom, right, top }: Box): Box {
  return boxAround([drawn(set, { x: left, y: bottom }), drawn(set, { x: right, y: top })]);
}

/** The bars of a sheet where the file draws them, each from end to end. */
function barsOf(set: LaidSheets, placements: readonly Placement[]) {
  return barsOn(placements).map((bar) => ({ ...bar, from: drawn(set, bar.from), to: drawn(set, bar.to) }));
}

const WAYS = [...PAPERS, ...ROLLS].flatMap((paper) =>
  [undefined, SHORT_AND_LONG, LONG_AND_SHORT].map((printer) => ({ name: paper.name, paper, printer })),
);

describe.each(WAYS)('on $name, drawn for $printer.across.factor by $printer.up.factor', (way) => {
  const all = [laid(way.paper, way.printer), laid(way.paper, way.printer, OTHERS)];

  it('nothing is drawn outside the margins, and nothing comes out of the printer outside them', () => {
    for (const [index, { set, sideways }] of all.entries()) {
      const [upright, turned] = index === 0 ? [MARGINS, TURNED] : [OTHERS, OTHERS_TURNED];
      const margins = sideways ? turned : upright;
      const inside = {
        left: margins.left,
        bottom: margins.bottom,
        right: set.width - margins.right,
        top: set.height - margins.top,
      };
      const outside = [...set.sheets].flatMap(({ placements }) =>
        placements.flatMap((placement) =>
          placement.drawing.marks.flatMap((mark) => {
            const box = inkBox(placement, mark);
            if (box.left > box.right || box.bottom > box.top) return [];
            return [box, drawnBox(set, box)].filter(
              (each) =>
                each.left < inside.left - 1e-9 ||
                each.bottom < inside.bottom - 1e-9 ||
                each.right > inside.right + 1e-9 ||
                each.top > inside.top + 1e-9,
            );
          }),
        ),
      );
      expect(outside).toEqual([]);
    }
  });

  it('the bars that come out are 100 mm and 4 in long, each way', () => {
    for (const { set, sideways, printer } of all) {
      // What is across on a sideways page runs up the paper.
      const [alongX, alongY] = [printer?.across.factor ?? 1, printer?.up.factor ?? 1];
      const made = sideways ? { across: alongY, up: alongX } : { across: alongX, up: alongY };
      for (const { placements } of set.sheets) {
        const lengths = (['across', 'up'] as const).map((axis) =>
          barsOf(set, placements)
            .filter((bar) => bar.axis === axis)
            .map(({ from, to }) => Math.hypot(to.x - from.x, to.y - from.y) * made[axis]),
        );
        for (const [metric, inches, ...more] of lengths) {
          expect(metric).toBeCloseTo(100, 9);
          // 4 in is 101.6 mm exactly (international yard and pound agreement, 1959).
          expect(inches).toBeCloseTo(101.6, 9);
          expect(more).toEqual([]);
        }
      }
    }
  });

  it('every sheet says for which printer it is drawn, if for any', () => {
    for (const { set, printer } of all) {
      for (const { placements } of set.sheets) {
        const words = placements.flatMap(({ drawing }) =>
          drawing.marks.flatMap((mark) => (mark.kind === 'words' ? [mark.text] : [])),
        );
        const text = words.join(' ');
        expect(text.includes('Drawn for the printer “workshop”')).toBe(printer !== undefined);
        if (printer) expect(text).toContain(`${printer.across.read.wrote} for 100mm across`);
      }
    }
  });
});

/**
 * A page of A0 has two thousand million dots at 1200 dpi, so papers but A4 and letter are inked with a smaller page round the
 * same drawing: the corner that holds the bars.
 */
it.each(someOf([...PAPERS, ...ROLLS], { short: 5 }))(
  'rastered at 1200 dpi, the bars on $name are exact to a dot',
  async (paper) => {
    const { set } = laid(paper);
    const [sheet] = set.sheets;
    if (!sheet) throw new Error('no sheet');
    const whole = paper.name === 'A4' || paper.name === 'letter';
    const corner = whole ? {} : { width: Math.min(set.width, 135), height: Math.min(set.height, 160) };
    const pdf = await inkPdf({ ...set, ...corner, sheets: [sheet] }, { title: 'bars', jobName: 'bars' });
    const raster = await rasterOf(pdf, 0, 1200);
    const lengths = barsOf(set, sheet.placements).map((bar) => lengthOf(raster, bar));
    expect(lengths).toHaveLength(4);
    for (const [index, length] of [100, 101.6, 100, 101.6].entries())
      expect(Math.abs((lengths[index] ?? 0) - length)).toBeLessThan(PIXEL);
  },
);

describe('off a roll', () => {
  const [wide, , narrow] = ROLLS;
  if (!wide || !narrow) throw new Error('no rolls');
  const lay = (sizes: readonly (readonly [number, number])[], paper: Paper, margins = MARGINS) =>
    laySheets(
      sizes.map((size, index) => leafOf(`stay ${index}`, size, [60, 40])),
      ask(paper, margins),
      { job: 'Trailer', words: ENGLISH },
    );

  /** How far the lowest block of a set lies over the words at the foot of its sheet. */
  function whiteUnder({ sheets }: LaidSheets): number {
    return Math.min(
      ...[...sheets].map(({ placements }) => {
        const blocks = placements.filter(({ drawing }) => /, (wrap|card)$/.test(drawing.name));
        const words = placements
          .filter(({ drawing }) => drawing.name.startsWith('sheet '))
          .flatMap((placement) => placement.drawing.marks.map((mark) => inkBox(placement, mark).top));
        return Math.min(...blocks.map((block) => shownBox(block).bottom)) - Math.max(...words);
      }),
    );
  }

  it('a page is as wide as the roll and as long as its leaves need', () => {
    const short = lay([[300, 200]], wide);
    const long = lay(
      Array.from({ length: 9 }, () => [400, 150] as const),
      wide,
    );
    expect([short.width, long.width]).toEqual([610, 610]);
    expect(long.height).toBeGreaterThan(short.height + 3 * 150);
    // 4 mm of white, what is left of a whole millimetre of paper, and the room over a line's letters.
    for (const set of [short, long]) expect(whiteUnder(set)).toBeLessThan(4 + 1 + 2);
    expect(whiteUnder(short)).toBeGreaterThan(3.9);
  });

  it('a leaf longer than a bench still comes in one piece', () => {
    const set = lay([[1500, 300]], wide);
    expect(set.count).toBe(1);
    expect(set.height).toBeGreaterThan(1500);
    expect([...set.sheets].flatMap(({ placements }) => placements.filter(({ clip }) => clip))).toEqual([]);
  });

  it('only a leaf wider than the roll both ways is cut into tiles', () => {
    const tiles = [...lay([[300, 220]], narrow).sheets].flatMap(({ placements }) =>
      placements.filter(({ clip }) => clip),
    );
    expect(tiles).toHaveLength(2);
    const whole = [...lay([[300, 120]], narrow).sheets].flatMap(({ placements }) =>
      placements.filter(({ clip }) => clip),
    );
    expect(whole).toEqual([]);
  });

  it('many leaves go on pages of one length that a bench takes', () => {
    const set = lay(
      Array.from({ length: 40 }, (_, index) => [300 + index, 200] as const),
      wide,
    );
    expect(set.count).toBeGreaterThan(1);
    expect(set.height).toBeLessThanOrEqual(1200);
  });
});
