import { moved } from '../draw/boxes.ts';
import type { Mark } from '../draw/drawing.ts';
import type { SheetAsk } from '../job/job.ts';
import type { Printer } from '../job/paper/printer.ts';
import type { Leaf } from '../leaf/leaf.ts';
import type { Mm } from '../measure/units.ts';
import type { Language } from '../words/language.ts';
import { byTube, type FrontPages, type SheetsOf } from './front.ts';
import { fewest, type Layout, type SetNames } from './layout.ts';
import type { Filling, TileSpot } from './pack.ts';
import { layOnRoll } from './roll.ts';
import { seamMarks } from './seam-marks.ts';
import type { Placement, Sheet, SheetSet } from './sheets.ts';
import { headOf, type Neighbours, tileHead } from './tile-head.ts';
import type { Tile } from './tiling.ts';

/** A set of sheets, each drawn when it is asked for, as often as it is. */
export interface LaidSheets extends SheetSet {
  /** How many sheets there are. */
  readonly count: number;
  /** On how many the leaf goes that takes the most. */
  readonly mostOfOne: number;
}

/**
 * Lays leaves on as few sheets as it can, all of one orientation, each with its calibration bars and the words that
 * matter. Lengths in mm. A leaf too large for a sheet is cut into tiles; on a roll, pages are as long as they need. Sheets
 * drawn for a printer say so; `front` boxes come first, on sheets of their own that are counted with them. The same leaves give the same sheets. Throws a RangeError
 * where the paper leaves less than 110 mm each way inside its margins, or a leaf's card is larger than a sheet.
 */
export function laySheets(
  leaves: readonly Leaf[],
  ask: SheetAsk,
  set: Pick<SetNames, 'job' | 'words'>,
  printer?: Printer,
  front?: FrontPages,
): LaidSheets {
  const named = { ...set, ...(printer && { printer }), ...(front && { front }) };
  const layout = ask.paper.roll ? layOnRoll(leaves, ask, named) : fewest(leaves, ask, named);
  const pages = layout.front;
  const count = pages.length + layout.fillings.length;
  const numbers = new Map(layout.fillings.map((filling, index) => [filling, pages.length + index + 1]));
  return {
    width: layout.page.width,
    height: layout.page.height,
    ...(layout.page.stretch && { stretch: layout.page.stretch }),
    count,
    mostOfOne: Math.max(1, ...layout.fillings.map(({ tile }) => tile?.together.length ?? 1)),
    sheets: {
      *[Symbol.iterator]() {
        const sheetsOf = sheetsByTube(numbers);
        for (const [index, draw] of pages.entries())
          yield frontSheet(layout, draw(sheetsOf), index + 1, count);
        for (const filling of layout.fillings) yield sheetOf(layout, filling, numbers, count, set.words);
      },
    },
  };
}

function sheetsByTube(numbers: ReadonlyMap<Filling, number>): SheetsOf {
  return byTube(
    [...numbers].flatMap(([{ placements }, sheet]) =>
      placements.flatMap(({ drawing: { of } }) => (of ? [{ of, sheet }] : [])),
    ),
  );
}

function frontSheet({ page, furniture }: Layout, marks: readonly Mark[], number: number, of: number): Sheet {
  const drawing = {
    name: `front ${number}`,
    box: page.printable,
    marks: [...furniture.sheetLine(number, of), ...marks],
  };
  return { placements: [...furniture.placements, { drawing, at: { x: 0, y: 0 }, turn: 0 }] };
}

function sheetOf(
  { page, furniture, lift }: Layout,
  filling: Filling,
  numbers: Map<Filling, number>,
  count: number,
  words: Language,
): Sheet {
  const number = numbers.get(filling) ?? 0;
  const line = furniture.sheetLine(number, count);
  const name = `sheet ${number}`;
  const spot = filling.tile;
  const own = (marks: Placement['drawing']['marks']): Placement => ({
    drawing: { name, box: page.printable, marks },
    at: { x: 0, y: 0 },
    turn: 0,
  });
  const laid = filling.placements.map((placement) => lifted(placement, lift));
  const every = [...furniture.placements, ...(number === 1 ? furniture.cautions : [])];
  if (spot === undefined) return { placements: [...every, own(line), ...laid] };

  const tile = spot.tiling.tiles[spot.index];
  if (tile === undefined) throw new RangeError(`The leaf "${spot.leaf.title}" has no tile ${spot.index}.`);
  const sheets = spot.together.map((each) => numbers.get(each) ?? 0);
  const beside = neighboursOf(spot, tile, sheets);
  const { strip } = headOf(furniture.content);
  const seams: Placement = {
    drawing: { name: `${name} seams`, box: tile.block, marks: seamMarks(spot.tiling, tile, beside, words) },
    at: spot.offset,
    turn: 0,
  };
  const alone = filling.placements.length === 1;
  const { title, joint } = spot.leaf;
  const named = { title, ...(joint && { joint }) };
  const head = tileHead({ ...named, tiling: spot.tiling, tile, beside, sheets, alone }, strip, words);
  return { placements: [...every, own([...line, ...head]), ...laid, lifted(seams, lift)] };
}

function lifted(placement: Placement, by: Mm): Placement {
  const { at, clip } = placement;
  const up = { x: 0, y: by };
  return { ...placement, at: { x: at.x, y: at.y + by }, ...(clip && { clip: moved(clip, up) }) };
}

function neighboursOf({ tiling }: TileSpot, tile: Tile, sheets: readonly number[]): Neighbours {
  const at = (row: number, column: number) =>
    sheets[tiling.tiles.findIndex((each) => each.row === row && each.column === column)];
  return {
    left: at(tile.row, tile.column - 1),
    right: at(tile.row, tile.column + 1),
    above: at(tile.row - 1, tile.column),
    below: at(tile.row + 1, tile.column),
  };
}
