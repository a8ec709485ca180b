import { moved, turned, upright } from '../draw/boxes.ts';
import type { SheetAsk } from '../job/job.ts';
import type { Leaf } from '../leaf/leaf.ts';
import type { Mm } from '../measure/units.ts';
import { BARS_LENGTH } from './bars.ts';
import { bare, fewest, type Layout, type SetNames, tiles } from './layout.ts';
import type { Filling } from './pack.ts';
import { pagesOf } from './page.ts';

/** As long as a bench takes. Pages off a roll are longer only where a leaf would have to be cut for it. */
const HANDY: Mm = 1200;
/** Left inside the furniture at the least where pages of words come before the leaves; else there is room for the bars to read up. */
const ROOM_FOR_FRONT: Mm = 240;

/**
 * Lays leaves on pages off a roll: as long as the fullest needs, to a whole millimetre, and all of one length.
 */
export function layOnRoll(leaves: readonly Leaf[], ask: SheetAsk, set: SetNames): Layout {
  const handy = fewest(leaves, ofLength(ask, HANDY), set);
  if (tiles(handy) === 0) return cutOff(leaves, handy, ask, set);
  const longest = fewest(leaves, ask, set);
  return cutOff(leaves, tiles(longest) < tiles(handy) ? longest : handy, ask, set);
}

function ofLength(ask: SheetAsk, height: Mm): SheetAsk {
  return { ...ask, paper: { ...ask.paper, height } };
}

/** The same layout on pages that end under what lies lowest, and leave room for the bars to read up. */
function cutOff(leaves: readonly Leaf[], layout: Layout, ask: SheetAsk, set: SetNames): Layout {
  const least = set.front ? ROOM_FOR_FRONT : BARS_LENGTH;
  const { content, printable, height, stretch } = { ...layout.page, content: layout.furniture.content };
  const lowest = Math.min(...layout.fillings.map(lowestOf));
  const spare = Math.max(0, Math.min(lowest - content.bottom, upright(content) - least));
  const ofPaper = spare / Math.min(1, 1 / (stretch?.up ?? 1));
  const [page] = pagesOf(ofLength(ask, height - Math.floor(ofPaper)), set.printer);
  return { ...layout, ...bare(leaves, page, ask, set), lift: page.printable.top - printable.top };
}

/** How far down a sheet is used. */
function lowestOf({ placements, tile }: Filling): Mm {
  const feet = placements.map(({ drawing, at, turn, clip }) => {
    return clip === undefined ? moved(turned(drawing.box, turn), at).bottom : clip.bottom;
  });
  const block = tile?.tiling.tiles[tile.index]?.block;
  return Math.min(...feet, ...(tile && block ? [moved(block, tile.offset).bottom] : []));
}
