import type { SheetAsk } from '../job/job.ts';
import type { Leaf } from '../leaf/leaf.ts';
import { type Furniture, furnish } from './furniture.ts';
import { type Filling, type Manner, pack, type Shape, shapeOf, type TileSpot } from './pack.ts';
import { type Page, pagesOf } from './page.ts';
import { seamMarks } from './seam-marks.ts';
import type { Placement, Sheet, SheetSet } from './sheets.ts';
import { headOf, type Neighbours, tileHead } from './tile-head.ts';
import type { Tile } from './tiling.ts';

/** From the one that keeps most of the order to the ones that only save paper. */
const MANNERS: readonly Manner[] = [true, false].flatMap((inOrder) =>
  [false, true].flatMap((mayTurn) => (['even', 'low'] as const).map((lean) => ({ inOrder, mayTurn, lean }))),
);

/** One way to lay all leaves. */
interface Layout {
  readonly page: Page;
  readonly furniture: Furniture;
  readonly fillings: readonly Filling[];
}

/** A set of sheets, each drawn when it is asked for, as often as it is. */
export interface LaidSheets extends SheetSet {
  /** How many sheets there are. */
  readonly count: number;
}

/**
 * Lays leaves on as few sheets as it can, all of one orientation, each with its calibration bars and the words that
 * matter. Lengths in mm. A leaf too large for a sheet is cut into tiles. The same leaves give the same sheets. Throws a RangeError
 * where the paper leaves less than 110 mm each way inside its margins, or a leaf's card is larger than a sheet.
 */
export function laySheets(leaves: readonly Leaf[], ask: SheetAsk, words: { job: string }): LaidSheets {
  const layout = fewest(leaves, ask, words.job);
  const numbers = new Map(layout.fillings.map((filling, index) => [filling, index + 1]));
  return {
    width: layout.page.width,
    height: layout.page.height,
    count: layout.fillings.length,
    sheets: {
      *[Symbol.iterator]() {
        for (const filling of layout.fillings) yield sheetOf(layout, filling, numbers);
      },
    },
  };
}

/** Fewest sheets; among equals fewest tiles, then fewest cards away from their wraps, then the seams that disturb least, then leaves in their order, then an upright page. */
function fewest(leaves: readonly Leaf[], ask: SheetAsk, job: string): Layout {
  const tables = pagesOf(ask).map((page) => table(leaves, page, { job, paper: ask.paper.name }));
  const usable = tables.flatMap((each) => ('shapes' in each ? [each] : []));
  const tiled = usable.some(({ shapes }) => shapes.some((shape) => 'tilings' in shape));
  const layouts = MANNERS.filter(({ lean }) => tiled || lean === 'even').flatMap((manner) =>
    usable.map(({ page, furniture, shapes }) => ({
      page,
      furniture,
      fillings: pack(shapes, furniture.content, manner),
    })),
  );
  const [best] = layouts.sort(
    (a, b) =>
      a.fillings.length - b.fillings.length ||
      tiles(a) - tiles(b) ||
      strays(a) - strays(b) ||
      harm(a) - harm(b),
  );
  if (best !== undefined) return best;
  throw tables.flatMap((each) => ('error' in each ? [each.error] : []))[0];
}

/** Everything about one orientation that all manners share; an error where a card fits no sheet of it. */
function table(
  leaves: readonly Leaf[],
  page: Page,
  named: { job: string; paper: string },
): { page: Page; furniture: Furniture; shapes: Shape[] } | { error: unknown } {
  const furniture = furnish(page, named);
  try {
    return { page, furniture, shapes: leaves.map((leaf) => shapeOf(leaf, furniture.content)) };
  } catch (error) {
    return { error };
  }
}

function tiles({ fillings }: Layout): number {
  return fillings.filter(({ tile }) => tile !== undefined).length;
}

/** How many cards lie on another sheet than any of their wrap. */
function strays({ fillings }: Layout): number {
  return fillings.reduce((sum, { strays }) => sum + strays, 0);
}

function harm({ fillings }: Layout): number {
  const costs = fillings.map(({ tile }) => (tile?.index === 0 ? tile.tiling.cost : 0));
  return Math.round(costs.reduce((sum, cost) => sum + cost, 0));
}

function sheetOf(
  { page, furniture, fillings }: Layout,
  filling: Filling,
  numbers: Map<Filling, number>,
): Sheet {
  const number = numbers.get(filling) ?? 0;
  const line = furniture.sheetLine(number, fillings.length);
  const name = `sheet ${number}`;
  const spot = filling.tile;
  const own = (marks: Placement['drawing']['marks']): Placement => ({
    drawing: { name, box: page.printable, marks },
    at: { x: 0, y: 0 },
    turn: 0,
  });
  if (spot === undefined) return { placements: [...furniture.placements, own(line), ...filling.placements] };

  const tile = spot.tiling.tiles[spot.index];
  if (tile === undefined) throw new RangeError(`The leaf "${spot.leaf.title}" has no tile ${spot.index}.`);
  const sheets = spot.together.map((each) => numbers.get(each) ?? 0);
  const beside = neighboursOf(spot, tile, sheets);
  const { strip } = headOf(furniture.content);
  const seams: Placement = {
    drawing: { name: `${name} seams`, box: tile.block, marks: seamMarks(spot.tiling, tile, beside) },
    at: spot.offset,
    turn: 0,
  };
  const alone = filling.placements.length === 1;
  const { title } = spot.leaf;
  const head = tileHead({ title, tiling: spot.tiling, tile, beside, sheets, alone }, strip);
  return { placements: [...furniture.placements, own([...line, ...head]), ...filling.placements, seams] };
}

function neighboursOf({ tiling }: TileSpot, tile: Tile, sheets: readonly number[]): Neighbours {
  const at = (row: number, column: number) =>
    sheets[tiling.tiles.findIndex((each) => each.row === row && each.column === column)];
  const left = at(tile.row, tile.column - 1);
  const right = at(tile.row, tile.column + 1);
  const above = at(tile.row - 1, tile.column);
  const below = at(tile.row + 1, tile.column);
  return {
    ...(left === undefined ? {} : { left }),
    ...(right === undefined ? {} : { right }),
    ...(above === undefined ? {} : { above }),
    ...(below === undefined ? {} : { below }),
  };
}
