import type { Mark } from '../../draw/drawing.ts';
import { type Block, extentOf, lettered, TEXT } from '../../draw/lettering.ts';
import { widthOf } from '../../draw/letters.ts';
import { point, type Segment } from '../../draw/path.ts';
import { line } from '../../draw/strokes.ts';
import type { Mm } from '../../measure/units.ts';
import { type Body, baseHeight } from './body.ts';
import { height, stationAt } from './flat.ts';

/** How far the tab reaches beyond the right edge, to lie under the left one. */
export const TAB: Mm = 10;

const TICK: Mm = 2.5;
const TAPER: Mm = 2;

/** The base edge and the two seam edges. */
export function edgeSegments(body: Body): readonly [base: Segment, left: Segment, right: Segment] {
  const { flat, cope } = body;
  const top = baseHeight(body);
  const cut = height(flat, cope.cut(flat.seam).setback);
  return [
    { from: point(0, top), to: point(flat.width, top) },
    { from: point(0, cut), to: point(0, top) },
    { from: point(flat.width, cut), to: point(flat.width, top) },
  ];
}

/** Short ticks at the same heights on both edges: they meet when the wrap is true. The one at the base is double. */
export function tickSegments(body: Body): Segment[] {
  const { flat, cope, base } = body;
  const length = base - cope.cut(flat.seam).setback;
  const count = Math.max(2, Math.min(9, Math.round(length / 20)));
  const downs = Array.from({ length: count }, (_, i) => ((i + 0.5) * length) / count);
  return [...downs, (downs[0] ?? 0) + 1.5].flatMap((down) => {
    const y = height(flat, base - down);
    return [
      { from: point(0, y), to: point(TICK, y) },
      { from: point(flat.width - TICK, y), to: point(flat.width, y) },
    ];
  });
}

/**
 * The tab, and as many words along it as it has room for. It starts on the body's side of the cut it will lie under, so
 * that it hides no cut line.
 */
export function tabMarks(body: Body): Mark[] {
  const { flat, base } = body;
  const start = tabStart(body);
  const y = (setback: Mm): Mm => height(flat, setback);
  const w = flat.width;
  const outline = line(
    'outline',
    point(w, y(base - 0.5)),
    point(w + TAB, y(base - 0.5 - TAPER)),
    point(w + TAB, y(start + TAPER)),
    point(w, y(start)),
  );
  const room = base - start - 2 * TAPER - 2;
  const text = body.words.leaf.tab.find((phrase) => widthOf(phrase, TEXT) <= room);
  if (text === undefined) return [outline];
  const block: Block = { fact: 'tab', lines: [text], size: TEXT };
  const { width, height: high } = extentOf(block);
  const bottom = y((base + start) / 2) - width / 2;
  return [outline, ...lettered(block, w + (TAB - high) / 2, bottom, 1)];
}

function tabStart({ flat, cope }: Body): Mm {
  const steps = Array.from({ length: 11 }, (_, i) => (i * TAB) / 10);
  return Math.max(...steps.map((x) => cope.cut(stationAt(flat, x)).setback)) + 1.5;
}
