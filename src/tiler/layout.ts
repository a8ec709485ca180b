import type { SheetAsk } from '../job/job.ts';
import type { Printer } from '../job/paper/printer.ts';
import type { Leaf } from '../leaf/leaf.ts';
import type { Mm } from '../measure/units.ts';
import type { Language } from '../words/language.ts';
import { blocksOf, CardSizeError, type LeafBlock, type Tiled } from './blocks.ts';
import { type FrontPage, type FrontPages, layFront, widestSheets } from './front.ts';
import { type Furniture, furnish } from './furniture.ts';
import { type Filling, type Manner, pack, SEEN_AT_ONCE } from './pack.ts';
import { type Page, pagesOf } from './page.ts';

/** From the one that keeps most of the order to the ones that only save paper. */
const MANNERS: readonly Manner[] = [false, true].flatMap((largestFirst) =>
  (['no', 'may', 'rather'] as const).flatMap((turned) =>
    (['even', 'low'] as const).map((lean) => ({ largestFirst, turned, lean })),
  ),
);

/** What a set of sheets is called, the language it is said in, and what comes before its leaves. */
export interface SetNames {
  readonly job: string;
  readonly words: Language;
  readonly printer?: Printer;
  readonly front?: FrontPages;
}

/** One way to lay all leaves. */
export interface Layout {
  readonly page: Page;
  readonly furniture: Furniture;
  readonly front: readonly FrontPage[];
  readonly fillings: readonly Filling[];
  /** How much higher the fillings lie on the page than they say. */
  readonly lift: Mm;
}

/** A page of the set, empty: its furniture, and what comes before the leaves on such pages where that is asked for. */
export function bare(
  leaves: readonly Leaf[],
  page: Page,
  ask: SheetAsk,
  set: SetNames,
  fronted = true,
): Omit<Layout, 'fillings' | 'lift'> {
  const furniture = furnish(page, { ...set, paper: ask.paper.name, cautioned: set.front === undefined });
  const room = furniture.content;
  return {
    page,
    furniture,
    front: set.front && fronted ? layFront(set.front(room, widestSheets(leaves, room)), room) : [],
  };
}

/**
 * Fewest sheets; among equals fewest tiles, then the seams that disturb least, then leaves in their order and unturned, then an
 * upright page; where there are many leaves, their sheets alone count. Throws a RangeError where a leaf's card goes on no sheet of any way to lie.
 */
export function fewest(leaves: readonly Leaf[], ask: SheetAsk, set: SetNames): Layout {
  const many = leaves.length > SEEN_AT_ONCE;
  const tables = pagesOf(ask, set.printer).map((page) =>
    table(leaves, bare(leaves, page, ask, set, !many), set.words),
  );
  const usable = tables.flatMap((each) => ('blocks' in each ? [each] : []));
  const tiled = usable.some(({ blocks }) => blocks.some((block) => 'tilings' in block));
  const layouts = MANNERS.filter(({ lean }) => tiled || lean === 'even').flatMap((manner) =>
    usable.map(({ blocks, ...empty }) => {
      const fillings = pack(blocks, empty.furniture.content, manner);
      return { ...empty, fillings, lift: 0 };
    }),
  );
  const [best] = layouts.sort(
    (a, b) => sheets(a) - sheets(b) || tiles(a) - tiles(b) || seamCost(a) - seamCost(b),
  );
  if (best !== undefined) return many ? { ...best, ...bare(leaves, best.page, ask, set) } : best;
  throw tables.flatMap((each) => ('error' in each ? [each.error] : []))[0];
}

/** What all manners share of one way to lie; an error where a card fits no sheet of it. */
function table<Empty extends { readonly furniture: Furniture }>(
  leaves: readonly Leaf[],
  empty: Empty,
  words: Language,
): (Empty & { blocks: readonly (LeafBlock | Tiled)[] }) | { error: CardSizeError } {
  try {
    const { content } = empty.furniture;
    return { ...empty, blocks: leaves.flatMap((leaf) => blocksOf(leaf, content, words)) };
  } catch (error) {
    if (error instanceof CardSizeError) return { error };
    throw error;
  }
}

function sheets({ front, fillings }: Layout): number {
  return front.length + fillings.length;
}

/** How many tiles a layout cuts leaves into. */
export function tiles({ fillings }: Layout): number {
  return fillings.filter(({ tile }) => tile !== undefined).length;
}

function seamCost({ fillings }: Layout): number {
  const costs = fillings.map(({ tile }) => (tile?.index === 0 ? tile.tiling.cost : 0));
  return Math.round(costs.reduce((sum, cost) => sum + cost, 0));
}
