import { across, upright } from '../draw/boxes.ts';
import type { Box } from '../draw/drawing.ts';
import type { SheetAsk } from '../job/job.ts';
import { LEAST_PRINTABLE } from '../job/paper/paper.ts';
import type { Printer } from '../job/paper/printer.ts';
import type { Mm } from '../measure/units.ts';
import type { Stretched } from './sheets.ts';

/** Room for half a line's width, at the margins and where a tile is clipped: its outermost lines keep all of it. */
export const LINE_ROOM: Mm = 0.3;

/** A page as it is looked at, and the part of it inside the margins. Origin at its bottom left corner. */
export interface Page {
  readonly width: Mm;
  readonly height: Mm;
  /** In the millimetres that come out of the printer, whatever it makes of those that are drawn. */
  readonly printable: Box;
  /** The paper lies on its side: what is across on the page is up on the paper. */
  readonly sideways: boolean;
  readonly stretch?: Stretched;
}

/**
 * The ways a paper can lie, portrait first; a roll lies one way, as long as a page can be. A way that leaves less than 110 mm
 * each way inside its margins is left out. For a printer that is off, contents are laid out at their true size and the pages
 * stretch them by what it falls short, about the middle of the printable part, which they do not leave.
 * Throws a RangeError where no way is left.
 */
export function pagesOf(ask: SheetAsk, printer?: Printer): readonly [Page, ...Page[]] {
  const ways = ask.paper.roll ? [portrait(ask)] : [portrait(ask), landscape(ask)];
  const [first, ...others] = ways.map((page) => drawnFor(page, printer)).filter(bigEnough);
  if (first === undefined) {
    throw new RangeError(
      `${ask.paper.name} leaves less than ${LEAST_PRINTABLE} mm inside its margins, and a sheet needs that each way.`,
    );
  }
  return ask.paper.width === ask.paper.height ? [first] : [first, ...others];
}

function bigEnough(page: Page): boolean {
  return Math.min(across(page.printable), upright(page.printable)) >= LEAST_PRINTABLE - 1e-9;
}

/** The same page for a printer: what it draws short is drawn larger, so there is less room for what comes out. */
function drawnFor(page: Page, printer: Printer | undefined): Page {
  if (printer === undefined) return page;
  const { left, bottom, right, top } = page.printable;
  const about = { x: (left + right) / 2, y: (bottom + top) / 2 };
  const [alongWidth, alongHeight] = page.sideways
    ? [printer.up.factor, printer.across.factor]
    : [printer.across.factor, printer.up.factor];
  const [wide, high] = [Math.min(1, alongWidth), Math.min(1, alongHeight)];
  return {
    ...page,
    printable: {
      left: about.x + (left - about.x) * wide,
      bottom: about.y + (bottom - about.y) * high,
      right: about.x + (right - about.x) * wide,
      top: about.y + (top - about.y) * high,
    },
    stretch: { about, across: 1 / alongWidth, up: 1 / alongHeight },
  };
}

function portrait({ paper, margins }: SheetAsk): Page {
  return {
    width: paper.width,
    height: paper.height,
    printable: {
      left: margins.left.mm,
      bottom: margins.bottom.mm,
      right: paper.width - margins.right.mm,
      top: paper.height - margins.top.mm,
    },
    sideways: false,
  };
}

/**
 * Margins belong to the paper as the printer pulls it in, upright. Whether a driver turns a sideways page to the left or
 * to the right can't be known, so the paper's foot may become either side of the page: both sides take the
 * larger of head and foot, and the page's head and foot the larger of the paper's sides.
 */
function landscape({ paper, margins }: SheetAsk): Page {
  const ends = Math.max(margins.top.mm, margins.bottom.mm);
  const sides = Math.max(margins.left.mm, margins.right.mm);
  return {
    width: paper.height,
    height: paper.width,
    printable: { left: ends, bottom: sides, right: paper.height - ends, top: paper.width - sides },
    sideways: true,
  };
}
