import { across, upright } from '../draw/boxes.ts';
import type { Box, Mark, Point } from '../draw/drawing.ts';
import type { Subject } from '../draw/facts.ts';
import type { Leaf } from '../leaf/leaf.ts';
import type { Mm } from '../measure/units.ts';
import { takesTurned } from './free-room.ts';

/** What is read before leaves are cut, and stays whole: a ticket, a row of a list. */
export interface FrontBox {
  /** As wide as the room or, to stand beside another, no more than `halfOf` it. */
  readonly width: Mm;
  readonly height: Mm;
  /** White over it, where it does not stand at the head of a page. */
  readonly white?: Mm;
  /** It stays with what follows it. */
  readonly heading?: boolean;
  /** What stands over it where it heads a page and goes on from another: whose it is. */
  readonly whose?: FrontBox;
  /** Its marks, under a top left corner; asked for when its page is drawn, and all leaves have their sheets. */
  readonly draw: (topLeft: Point, sheetsOf: SheetsOf) => readonly Mark[];
}

/** A leaf or footprint, and the number of a sheet that it or a tile of it lies on. */
export interface OnSheet {
  readonly of: Subject;
  readonly sheet: number;
}

/** Where the leaves and footprints of a tube lie, by its name. */
export type SheetsOf = (tube: string) => readonly OnSheet[];

/**
 * The boxes that come before the leaves, made for the room that a sheet's furniture leaves, and for as much of it as the numbers of the
 * leaves' sheets may take.
 */
export type FrontPages = (room: Box, widest?: SheetsOf) => readonly FrontBox[];

/** Leaves and their sheets by their tubes; of what is on a card the leaf tells. */
export function byTube(laid: Iterable<OnSheet>): SheetsOf {
  const found = new Map<string, OnSheet[]>();
  for (const each of laid) {
    const { tube, place } = each.of;
    if (tube === undefined || place === 'card') continue;
    const own = found.get(tube);
    if (own) own.push(each);
    else found.set(tube, [each]);
  }
  return (tube) => found.get(tube) ?? [];
}

/** A set of so many sheets for each of its leaves would be of large tubes alone. */
const SHEETS_OF_ONE = 8;

/** Before sheets are known, numbers that are as wide as theirs and follow on none: of a leaf that no sheet takes whole, of its first and last. */
export function widestSheets(leaves: readonly Leaf[], room: Box): SheetsOf {
  const number = Number('8'.repeat(`${SHEETS_OF_ONE * leaves.length}`.length));
  const tiles = leaves.flatMap(({ wrap: { of, box } }) => {
    const isWhole = takesTurned(room, { width: across(box), height: upright(box) });
    return of ? Array.from({ length: isWhole ? 1 : 2 }, () => of) : [];
  });
  return byTube(tiles.map((of, i) => ({ of, sheet: number - 2 * (i % MOST_APART) })));
}

/** So many numbers of two digits follow on none; no end has more leaves. */
const MOST_APART = 40;

/** A page of boxes: its marks are drawn when they are asked for. */
export type FrontPage = (sheetsOf: SheetsOf) => readonly Mark[];

/** Between two boxes side by side. */
const GUTTER: Mm = 6;

/** Half of a room's width: two boxes of it stand side by side. */
export function halfOf(room: Box): Mm {
  return (across(room) - GUTTER) / 2;
}

/** Boxes in their order, side by side where they are narrow, on as few pages as that takes. One too high for a page has one of its own. */
export function layFront(boxes: readonly FrontBox[], room: Box): readonly FrontPage[] {
  const pages: { readonly box: FrontBox; readonly at: Point }[][] = [];
  let [left, top, foot] = [room.right, room.bottom, Number.NEGATIVE_INFINITY];
  for (const [place, box] of boxes.entries()) {
    const isBeside = left + box.width <= room.right + 1e-9 && top - box.height >= room.bottom - 1e-9;
    if (!isBeside) {
      [left, top] = [room.left, foot - (box.white ?? 0)];
      if (top - heightFrom(boxes, place) < room.bottom - 1e-9 && foot < room.top) {
        pages.push([]);
        top = room.top;
        foot = room.top;
        const { whose } = box;
        if (whose && upright(room) >= whose.height + heightFrom(boxes, place)) {
          pages.at(-1)?.push({ box: whose, at: { x: left, y: top } });
          top -= whose.height;
        }
      }
    }
    pages.at(-1)?.push({ box, at: { x: left, y: top } });
    left += box.width + GUTTER;
    foot = Math.min(foot, top - box.height);
  }
  return pages.map((page) => (sheetsOf) => page.flatMap(({ box, at }) => box.draw(at, sheetsOf)));
}

/** How high a box is with all that it stays with. */
function heightFrom(boxes: readonly FrontBox[], place: number): Mm {
  const box = boxes[place];
  if (box === undefined) return 0;
  return box.height + (box.heading ? heightFrom(boxes, place + 1) : 0);
}
