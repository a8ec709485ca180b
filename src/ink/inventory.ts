import type { PDFRawStream } from 'pdf-lib';
import type { Box, Drawing, Point } from '../draw/drawing.ts';
import type { Sheet } from '../tiler/sheets.ts';
import { contentOf, type UsedGlyphs } from './content.ts';
import type { Store } from './stored.ts';

/** A drawing as PDF operators, stored, and how often the sheets show it. */
export interface InkedItem {
  readonly content: PDFRawStream;
  readonly box: Box;
  times: number;
}

/** A sheet with its drawings already written. */
export type ItemSheet = readonly {
  readonly item: InkedItem;
  readonly at: Point;
  readonly turn: 0 | 1;
  readonly clip: Box | undefined;
}[];

/** What all sheets show, and the glyphs that takes. */
export interface Inventory {
  readonly sheets: readonly ItemSheet[];
  readonly used: UsedGlyphs;
}

/**
 * Goes through the sheets once, in order, and writes each drawing the first time it is met. Only its stored content is
 * kept, a twentieth of what the drawing itself takes, so sheets made one by one need not all fit in memory. Throws where
 * two different drawings have one name: one of them would be printed in the other's place.
 */
export async function inventoryOf(store: Store, sheets: Iterable<Sheet>): Promise<Inventory> {
  const used: UsedGlyphs = new Map();
  const byDrawing = new WeakMap<Drawing, InkedItem>();
  const byName = new Map<string, InkedItem>();

  function itemOf(drawing: Drawing): InkedItem {
    const known = byDrawing.get(drawing);
    if (known !== undefined) return known;
    const content = contentOf(drawing, used);
    const namesake = byName.get(drawing.name);
    if (namesake !== undefined && !store.holds(namesake.content, content)) {
      throw new Error(`Two different drawings are named "${drawing.name}".`);
    }
    const item = namesake ?? { content: store.stream(content), box: drawing.box, times: 0 };
    byDrawing.set(drawing, item);
    byName.set(drawing.name, item);
    return item;
  }

  const written: ItemSheet[] = [];
  for (const { placements } of sheets) {
    await store.ready();
    written.push(
      placements.map(({ drawing, at, turn, clip }) => {
        const item = itemOf(drawing);
        item.times += 1;
        return { item, at, turn, clip };
      }),
    );
  }
  return { sheets: written, used };
}
