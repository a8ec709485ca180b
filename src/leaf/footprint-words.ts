import type { Mm } from '../measure/units.ts';
import type { Mark, Point } from './drawing.ts';
import { type Block, extentOf, folded, SMALL } from './lettering.ts';
import { type Candidate, type Field, place, wordsOf } from './placer.ts';

/** Words that belong near a point of a drawing. */
export interface Note {
  readonly text: string;
  readonly near: Point;
  readonly size?: Mm;
}

/** Notes where they are free of lines and of each other; what found no room comes back in words. */
export function placeNotes(field: Field, notes: readonly Note[]): { marks: Mark[]; beside: string[] } {
  const marks: Mark[] = [];
  const beside: string[] = [];
  for (const note of notes) {
    const found = place(field, placesNear(field, note));
    if (found) marks.push(...found);
    else beside.push(note.text);
  }
  return { marks, beside };
}

const WIDTHS: readonly Mm[] = [46, 30, 20, 13];

function* placesNear(field: Field, { text, near, size = SMALL }: Note): Iterable<Candidate> {
  const blocks = WIDTHS.map((width): Block => ({ lines: folded(text, size, width), size }));
  const fewest = blocks.filter(({ lines }, i) => lines.length !== blocks[i - 1]?.lines.length);
  for (const reach of [14, 40, 400]) {
    for (const block of fewest) yield* placesWithin(field, block, near, reach);
  }
}

/** Rows of places within so much of a point, the nearest first. */
function* placesWithin({ bounds }: Field, block: Block, near: Point, reach: Mm): Iterable<Candidate> {
  const { width, height } = extentOf(block);
  const step = Math.max(1, reach / 40);
  const lefts = grid(bounds.left, bounds.right - width, near.x - width / 2, reach, step);
  const bottoms = grid(bounds.bottom, bounds.top - height, near.y - height / 2, reach, step);
  const places = lefts.flatMap((left) =>
    bottoms.map((bottom) => ({
      left,
      bottom,
      away: Math.hypot(left + width / 2 - near.x, bottom + height / 2 - near.y),
    })),
  );
  places.sort((a, b) => a.away - b.away);
  const at = wordsOf(block);
  for (const { left, bottom } of places) yield at(left, bottom);
}

function grid(from: Mm, to: Mm, middle: Mm, reach: Mm, step: Mm): Mm[] {
  const [low, high] = [Math.max(from, middle - reach), Math.min(to, middle + reach)];
  if (high < low) return [];
  return Array.from({ length: Math.floor((high - low) / step) + 1 }, (_, i) => low + i * step);
}
