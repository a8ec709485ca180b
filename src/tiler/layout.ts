import type { SheetAsk } from '../job/job.ts';
import type { Printer } from '../job/paper/printer.ts';
import type { Leaf } from '../leaf/leaf.ts';
import type { Mm } from '../measure/units.ts';
import type { Language } from '../words/language.ts';
import { type Furniture, furnish, type SheetWords } from './furniture.ts';
import { CardSizeError, type Filling, type PackStrategy, pack, type Shape, shapeOf } from './pack.ts';
import { type Page, pagesOf } from './page.ts';

/** From the one that keeps most of the order to the ones that only save paper. */
const MANNERS: readonly PackStrategy[] = [true, false].flatMap((inOrder) =>
  [true, false].flatMap((apart) =>
    [false, true].flatMap((mayTurn) =>
      (['even', 'low'] as const).map((lean) => ({ inOrder, apart, mayTurn, lean })),
    ),
  ),
);

/** What a set of sheets is called, and the language it is said in. */
export interface SetNames {
  readonly job: string;
  readonly words: Language;
  /** Whether the first sheet carries the cautions. */
  readonly cautioned?: boolean;
}

/** One way to lay all leaves. */
export interface Layout {
  readonly page: Page;
  readonly furniture: Furniture;
  readonly fillings: readonly Filling[];
  /** How much higher the fillings lie on the page than they say. */
  readonly lift: Mm;
}

/**
 * Fewest sheets; among equals fewest tiles, then fewest cards away from their wraps, then as few tubes and hands on one sheet as
 * can be, then each card beside its own wrap, then the seams that disturb least, then leaves in their order, then an upright page.
 */
export function fewest(leaves: readonly Leaf[], ask: SheetAsk, set: SetNames, printer?: Printer): Layout {
  const named = { ...set, paper: ask.paper.name, ...(printer && { printer }) };
  const tables = pagesOf(ask, printer).map((page) => table(leaves, page, named));
  const usable = tables.flatMap((each) => ('shapes' in each ? [each] : []));
  const tiled = usable.some(({ shapes }) => shapes.some((shape) => 'tilings' in shape));
  const several = new Set(leaves.map(({ of }) => of)).size > 1;
  const tried = MANNERS.filter(({ lean, apart }) => (tiled || lean === 'even') && (several || !apart));
  const layouts = tried.flatMap((manner) =>
    usable.map(({ page, furniture, shapes }) => ({
      page,
      furniture,
      fillings: pack(shapes, furniture.content, manner),
      lift: 0,
    })),
  );
  const [best] = layouts.sort(
    (a, b) =>
      a.fillings.length - b.fillings.length ||
      tiles(a) - tiles(b) ||
      cardsElsewhere(a) - cardsElsewhere(b) ||
      ownersShared(a) - ownersShared(b) ||
      cardsAway(a) - cardsAway(b) ||
      seamCost(a) - seamCost(b),
  );
  if (best !== undefined) return best;
  throw tables.flatMap((each) => ('error' in each ? [each.error] : []))[0];
}

/** Everything about one orientation that all manners share; an error where a card fits no sheet of it. */
function table(
  leaves: readonly Leaf[],
  page: Page,
  named: SheetWords,
): { page: Page; furniture: Furniture; shapes: Shape[] } | { error: CardSizeError } {
  const furniture = furnish(page, named);
  try {
    return { page, furniture, shapes: leaves.map((leaf) => shapeOf(leaf, furniture.content, named.words)) };
  } catch (error) {
    if (error instanceof CardSizeError) return { error };
    throw error;
  }
}

/** How many tiles a layout cuts leaves into. */
export function tiles({ fillings }: Layout): number {
  return fillings.filter(({ tile }) => tile !== undefined).length;
}

/** How many cards lie on another sheet than any of their wrap. */
function cardsElsewhere({ fillings }: Layout): number {
  return fillings.reduce((sum, { cardsApart: strays }) => sum + strays, 0);
}

/** How many more tubes and hands its sheets hold than one each. */
function ownersShared({ fillings }: Layout): number {
  return fillings.reduce((sum, { owners }) => sum + Math.max(0, owners.size - 1), 0);
}

/** How many cards lie neither right of their wraps nor under them. */
function cardsAway({ fillings }: Layout): number {
  return fillings.reduce((sum, { cardsAway: loose }) => sum + loose, 0);
}

function seamCost({ fillings }: Layout): number {
  const costs = fillings.map(({ tile }) => (tile?.index === 0 ? tile.tiling.cost : 0));
  return Math.round(costs.reduce((sum, cost) => sum + cost, 0));
}
