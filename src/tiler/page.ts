import type { SheetAsk } from '../job/job.ts';
import { LEAST_PRINTABLE } from '../job/paper.ts';
import type { Box } from '../leaf/drawing.ts';
import type { Mm } from '../measure/units.ts';
import { across, upright } from './boxes.ts';

/** A page as it is looked at, and the part of it inside the margins. Origin at its bottom left corner. */
export interface Page {
  readonly width: Mm;
  readonly height: Mm;
  readonly printable: Box;
}

/**
 * The ways a paper can lie, portrait first. A way that leaves less than 110 mm each way inside its margins is left out.
 * Throws a RangeError where none is left.
 */
export function pagesOf(ask: SheetAsk): readonly [Page, ...Page[]] {
  const [first, ...others] = [portrait(ask), landscape(ask)].filter(bigEnough);
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
  };
}
