import { broken } from '../../draw/breaking.ts';
import { type Label, standingAt } from '../../draw/candidates.ts';
import type { Box, Mark, Point } from '../../draw/drawing.ts';
import type { FactName } from '../../draw/facts.ts';
import { type Block, extentOf, lettered, TEXT } from '../../draw/lettering.ts';
import { distance, onWay, point, type Segment } from '../../draw/path.ts';
import { type Candidate, type Field, isFree, type Placed, placeAll, withRoom } from '../../draw/placer.ts';
import { solid } from '../../draw/strokes.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';

/** Words that belong near a point of a drawing. */
export interface Note {
  readonly text: Said;
  /** Larger words over the text. With them the fewest lines go before the nearest place. */
  readonly heading?: Said;
  /** What it states, where that is not of the footprint itself. */
  readonly fact?: FactName;
  readonly near: Point;
  /** A level or upright line that the words name: they stand hard by it, or a line leads from them to the point, which is on it. */
  readonly line?: Segment;
  /** Where the middle of the words may stand; anywhere if undefined. */
  readonly where?: (at: Point) => boolean;
  /** How a line leads from the words to the point: always, to a line that they name; or only if they stand elsewhere. */
  readonly leader?: 'always' | 'elsewhere';
  /** Whether a tile's seam keeps off the point: where tiles overlap it would be drawn twice. */
  readonly whole?: boolean;
}

/** Notes where they are free of lines and of each other; what found no room comes back in words. */
export function placeNotes(field: Field, notes: readonly Note[]): Placed {
  return placeAll(
    field,
    notes.map((note) => ({ places: placesFor(field, note), otherwise: note.text })),
  );
}

function* placesFor(field: Field, note: Note): Iterable<Candidate> {
  const { near, where, leader, line } = note;
  if (line) {
    yield* placesAlong(field, note, line);
    for (const words of placesNear(field, note)) yield* ledTo(words, near);
    return;
  }
  // Whether a place is free is soon known, and asked first; where it lies is not.
  const isThere = ({ box: { left, right, bottom, top } }: Candidate): boolean =>
    where === undefined || where(point((left + right) / 2, (bottom + top) / 2));
  for (const words of placesNear(field, note))
    if (isFree(field, words.box) && isThere(words)) yield* leader === 'always' ? ledTo(words, near) : [words];
  if (!leader || !where) return;
  for (const words of placesNear(field, note))
    if (isFree(field, words.box) && !isThere(words)) yield* ledTo(words, near);
}

/** Between words and their leader. */
const GAP: Mm = 0.4;

/** A leader shorter than this is taken for dirt. */
const SHORTEST: Mm = 1;

/** The words with a line from their edge to the point, which has a dot on it. */
function* ledTo(words: Candidate, to: Point): Iterable<Candidate> {
  const { left, right, bottom, top } = words.box;
  const edge = point(Math.min(Math.max(to.x, left), right), Math.min(Math.max(to.y, bottom), top));
  const long = distance(edge, to);
  if (long < SHORTEST + GAP) return;
  const from = onWay(edge, to, GAP / long);
  yield { ...words, leader: { from, to }, draw: (x, y) => [dotAt(to), ...words.draw(x, y)] };
}

function dotAt({ x, y }: Point): Mark {
  const corner = (i: number): Point =>
    point(x + DOT * Math.cos((i * Math.PI) / 4), y + DOT * Math.sin((i * Math.PI) / 4));
  return solid('guide', corner(0), ...[1, 2, 3, 4, 5, 6, 7].map(corner));
}

const DOT: Mm = 0.45;

const WIDTHS: readonly Mm[] = [60, 46, 30, 20, 13];

/** The words broken to one width after the other, where that makes more lines of them. */
function labelsOf({ text, heading, fact }: Note): Label[] {
  const stacks = WIDTHS.map((width): Block[] => [
    ...(heading ? [{ fact: 'name', lines: broken(heading, TEXT, width), size: TEXT } as const] : []),
    { fact: fact ?? (heading ? 'name' : 'footprint'), lines: broken(text, TEXT, width), size: TEXT },
  ]);
  const count = (stack: readonly Block[] = []): number =>
    stack.reduce((sum, { lines }) => sum + lines.length, 0);
  return stacks.filter((stack, i) => count(stack) !== count(stacks[i - 1])).map(stacked);
}

/** Blocks under one another. */
function stacked(blocks: readonly Block[]): Label {
  const extents = blocks.map(extentOf);
  const heightFrom = (first: number): Mm => extents.slice(first).reduce((sum, { height }) => sum + height, 0);
  return {
    width: Math.max(...extents.map(({ width }) => width)),
    height: heightFrom(0),
    draw: (x, y) => blocks.flatMap((block, i) => lettered(block, x, y + heightFrom(i + 1))),
  };
}

const REACHES: readonly Mm[] = [14, 22, 30, 40, 400];

function* placesNear({ bounds }: Field, note: Note): Iterable<Candidate> {
  const labels = labelsOf(note);
  const tries = note.heading
    ? labels.flatMap((label) => REACHES.map((reach) => ({ label, reach })))
    : REACHES.flatMap((reach) => labels.map((label) => ({ label, reach })));
  for (const { label, reach } of tries)
    yield* nearestFirst(bounds, label, note.near, reach, Math.min(3, Math.max(1, reach / 40)));
}

/** Between words and the line that they name. */
const HARD_BY: Mm = 0.9;

/** Between such words and what lies across their line. */
const OFF_OTHERS: Mm = 1.2;

/** Places hard by a level or upright line, on either side of it, those near the point first: in more lines there before further off. */
function* placesAlong({ bounds }: Field, note: Note, { from, to }: Segment): Iterable<Candidate> {
  const level = from.y === to.y;
  const labels = labelsOf(note);
  for (const { label, reach } of [NEAR, FAR].flatMap((reach) => labels.map((label) => ({ label, reach })))) {
    const sides = level
      ? { bottoms: [from.y - HARD_BY - label.height, from.y + HARD_BY] }
      : { lefts: [from.x + HARD_BY, from.x - HARD_BY - label.width] };
    for (const words of nearestFirst(bounds, label, note.near, reach, 1, sides))
      yield withRoom(words, OFF_OTHERS, level ? 0 : 1);
  }
}

/** From the point that words belong near; and as far as any sheet reaches. */
const NEAR: Mm = 16;
const FAR: Mm = 1e4;

/** Places for a label within so much of a point each way, in steps, its middle nearest to the point first; of some only these sides. */
function* nearestFirst(
  { left, right, bottom, top }: Box,
  label: Label,
  near: Point,
  reach: Mm,
  step: Mm,
  sides: { readonly lefts?: readonly Mm[]; readonly bottoms?: readonly Mm[] } = {},
): Iterable<Candidate> {
  const [x, y] = [near.x - label.width / 2, near.y - label.height / 2];
  const lefts = sides.lefts ?? grid(left, right - label.width, x, reach, step);
  const bottoms = sides.bottoms ?? grid(bottom, top - label.height, y, reach, step);
  const places = lefts.flatMap((at) =>
    bottoms.map((foot) => ({ at, foot, away: Math.hypot(at - x, foot - y) })),
  );
  places.sort((a, b) => a.away - b.away);
  for (const { at, foot } of places) yield standingAt(label, at, foot);
}

function grid(from: Mm, to: Mm, middle: Mm, reach: Mm, step: Mm): Mm[] {
  const [low, high] = [Math.max(from, middle - reach), Math.min(to, middle + reach)];
  if (high < low) return [];
  return Array.from({ length: Math.floor((high - low) / step) + 1 }, (_, i) => low + i * step);
}
