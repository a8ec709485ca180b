import type { Box, Drawing, Point } from '../draw/drawing.ts';
import type { Mm } from '../measure/units.ts';

/** All the pages of one file: one size, one orientation, no rotation. */
export interface SheetSet {
  readonly width: Mm;
  readonly height: Mm;
  /** How everything on every page is stretched, for a printer that is off; as it stands where left out. */
  readonly stretch?: Stretched;
  /** In the order of the pages. They are walked through once, so they may be made one by one. */
  readonly sheets: Iterable<Sheet>;
}

/** A stretch of a page's contents that leaves one point of it where it is. */
export interface Stretched {
  readonly about: Point;
  readonly across: number;
  readonly up: number;
}

/** One page. Later placements lie over earlier ones. Origin at the page's bottom left corner. */
export interface Sheet {
  readonly placements: readonly Placement[];
}

/** A drawing laid on a sheet. */
export interface Placement {
  readonly drawing: Drawing;
  /** Where the drawing's origin comes to lie on the sheet. */
  readonly at: Point;
  /** Quarter turns of the drawing about its origin, counter-clockwise. */
  readonly turn: 0 | 1;
  /** What of the sheet it may ink, in sheet coordinates; all of it where left out. */
  readonly clip?: Box;
}
