import type { Box } from '../draw/drawing.ts';
import type { Leaf } from '../leaf/leaf.ts';
import type { Mm } from '../measure/units.ts';
import type { Placement } from '../tiler/sheets.ts';

/** Between a wrap and its card, and between one leaf and the next. */
const GAP: Mm = 10;

/** Leaves on one endless sheet: origin at its bottom left corner, y up. */
export interface SideBySide {
  readonly width: Mm;
  readonly height: Mm;
  readonly rows: readonly Row[];
}

/** One leaf: its wrap to the left, its card to the right of it, their tops level. */
export interface Row {
  readonly leaf: Leaf;
  readonly wrap: Placement;
  readonly card?: Placement;
}

/** Leaves below one another, the first on top, none cut or turned. No leaves make a sheet of no size. */
export function sideBySide(leaves: readonly Leaf[]): SideBySide {
  const height = leaves.reduce((sum, leaf, i) => sum + heightOf(leaf) + (i > 0 ? GAP : 0), 0);
  let width = 0;
  let top = height;
  const rows = leaves.map((leaf) => {
    const { wrap, card } = leaf;
    const cardLeft = wrap.box.right - wrap.box.left + GAP;
    const row = { leaf, wrap: placed(wrap, 0, top), ...(card && { card: placed(card, cardLeft, top) }) };
    width = Math.max(width, cardLeft + (card ? card.box.right - card.box.left : -GAP));
    top -= heightOf(leaf) + GAP;
    return row;
  });
  return { width, height, rows };
}

function placed(drawing: Leaf['wrap'], left: Mm, top: Mm): Placement {
  return { drawing, at: { x: left - drawing.box.left, y: top - drawing.box.top }, turn: 0 };
}

function heightOf({ wrap, card }: Leaf): Mm {
  return Math.max(tall(wrap.box), card ? tall(card.box) : 0);
}

function tall({ bottom, top }: Box): Mm {
  return top - bottom;
}
