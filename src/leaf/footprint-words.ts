import type { Mm } from '../measure/units.ts';
import type { Mark, Point } from './drawing.ts';
import { type Block, extentOf, folded, SMALL } from './lettering.ts';
import { fillOf, point, strokeOf } from './path.ts';
import { type Candidate, type Field, place, wordsOf } from './placer.ts';

/** Words that belong near a point of a drawing. */
export interface Note {
  readonly text: string;
  readonly near: Point;
  readonly size?: Mm;
  /** Where the middle of the words may stand; anywhere if undefined. */
  readonly where?: (at: Point) => boolean;
  /** How a line leads from the words to the point: always, to a line that they name; or only if they stand elsewhere. */
  readonly leader?: 'always' | 'elsewhere';
}

/** Notes where they are free of lines and of each other; what found no room comes back in words. */
export function placeNotes(field: Field, notes: readonly Note[]): { marks: Mark[]; beside: string[] } {
  const marks: Mark[] = [];
  const beside: string[] = [];
  for (const note of notes) {
    const found = place(field, placesFor(field, note));
    if (found) marks.push(...found);
    else beside.push(note.text);
  }
  return { marks, beside };
}

function* placesFor(field: Field, note: Note): Iterable<Candidate> {
  const { near, where, leader } = note;
  const inPlace = where ?? (() => true);
  for (const words of placesNear(field, note)) {
    if (!inPlace(middleOfBox(words))) continue;
    if (leader !== 'always') yield words;
    else yield* ledTo(words, near);
  }
  if (!leader || !where) return;
  for (const words of placesNear(field, note)) if (!where(middleOfBox(words))) yield* ledTo(words, near);
}

function middleOfBox({ box: { left, right, bottom, top } }: Candidate): Point {
  return point((left + right) / 2, (bottom + top) / 2);
}

/** Between words and their leader. */
const GAP: Mm = 0.4;

/** A leader shorter than this is taken for dirt. */
const SHORTEST: Mm = 1;

/** The words with a line from their edge to the point, which has a dot on it. */
function* ledTo(words: Candidate, to: Point): Iterable<Candidate> {
  const { left, right, bottom, top } = words.box;
  const edge = point(Math.min(Math.max(to.x, left), right), Math.min(Math.max(to.y, bottom), top));
  const long = Math.hypot(to.x - edge.x, to.y - edge.y);
  if (long < SHORTEST + GAP) return;
  const t = GAP / long;
  const from = point(edge.x + t * (to.x - edge.x), edge.y + t * (to.y - edge.y));
  yield {
    ...words,
    leader: { from, to },
    draw: (x, y) => [strokeOf('guide', [from, to]), dotAt(to), ...words.draw(x, y)],
  };
}

function dotAt({ x, y }: Point): Mark {
  const corner = (i: number): Point =>
    point(x + DOT * Math.cos((i * Math.PI) / 4), y + DOT * Math.sin((i * Math.PI) / 4));
  return fillOf('guide', [corner(0), ...[1, 2, 3, 4, 5, 6, 7].map(corner)]);
}

const DOT: Mm = 0.45;

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
