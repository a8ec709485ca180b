import { broken } from '../../draw/breaking.ts';
import type { Mark, Point } from '../../draw/drawing.ts';
import { type Block, extentOf, lettered, PLAIN, SMALL } from '../../draw/lettering.ts';
import { distance, onWay, point, type Segment } from '../../draw/path.ts';
import { type Candidate, type Field, isFree, place, withRoom } from '../../draw/placer.ts';
import { line, solid } from '../../draw/strokes.ts';
import type { Mm } from '../../measure/units.ts';

/** Words that belong near a point of a drawing. */
export interface Note {
  readonly text: string;
  /** Larger words over the text. With them the fewest lines go before the nearest place. */
  readonly heading?: string;
  readonly near: Point;
  /** A level or upright line that the words name: they stand hard by it, or a line leads from them to the point, which is on it. */
  readonly line?: Segment;
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
    const { heading: _, ...plain } = note;
    // A heading that finds no room stands on the card in any case; what is under it may still be placed.
    const found =
      place(field, placesFor(field, note)) ?? (note.heading && place(field, placesFor(field, plain)));
    if (found) marks.push(...found);
    else beside.push(note.heading ? `${note.heading}, ${note.text}` : note.text);
  }
  return { marks, beside };
}

function* placesFor(field: Field, note: Note): Iterable<Candidate> {
  const { near, where, leader, line } = note;
  if (line) {
    yield* placesAlong(field, note, line);
    for (const words of placesNear(field, note)) yield* ledTo(words, near);
    return;
  }
  // Whether a place is free is soon known; where it lies is not.
  const inPlace = (words: Candidate): boolean =>
    isFree(field, words.box) && (where === undefined || where(middleOfBox(words)));
  for (const words of placesNear(field, note)) {
    if (!inPlace(words)) continue;
    if (leader !== 'always') yield words;
    else yield* ledTo(words, near);
  }
  if (!leader || !where) return;
  for (const words of placesNear(field, note))
    if (isFree(field, words.box) && !where(middleOfBox(words))) yield* ledTo(words, near);
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
  const long = distance(edge, to);
  if (long < SHORTEST + GAP) return;
  const from = onWay(edge, to, GAP / long);
  yield {
    ...words,
    leader: { from, to },
    draw: (x, y) => [line('guide', from, to), dotAt(to), ...words.draw(x, y)],
  };
}

function dotAt({ x, y }: Point): Mark {
  const corner = (i: number): Point =>
    point(x + DOT * Math.cos((i * Math.PI) / 4), y + DOT * Math.sin((i * Math.PI) / 4));
  return solid('guide', corner(0), ...[1, 2, 3, 4, 5, 6, 7].map(corner));
}

const DOT: Mm = 0.45;

const WIDTHS: readonly Mm[] = [60, 46, 30, 20, 13];

/** Words under one another, which may differ in size. */
type Stack = readonly Block[];

/** The words broken to one width after the other, where that makes more lines of them. */
function stacksOf({ text, heading }: Note): Stack[] {
  const stacks = WIDTHS.map(
    (width): Stack => [
      ...(heading ? [{ lines: broken(heading, PLAIN, width), size: PLAIN }] : []),
      { lines: broken(text, SMALL, width), size: SMALL },
    ],
  );
  const count = (stack: Stack | undefined): number =>
    (stack ?? []).reduce((sum, { lines }) => sum + lines.length, 0);
  return stacks.filter((stack, i) => count(stack) !== count(stacks[i - 1]));
}

const REACHES: readonly Mm[] = [14, 40, 400];

function* placesNear(field: Field, note: Note): Iterable<Candidate> {
  const stacks = stacksOf(note);
  const tries = note.heading
    ? stacks.flatMap((stack) => REACHES.map((reach) => ({ stack, reach })))
    : REACHES.flatMap((reach) => stacks.map((stack) => ({ stack, reach })));
  for (const { stack, reach } of tries) yield* placesWithin(field, stack, note.near, reach);
}

/** Between words and the line that they name. */
const HARD_BY: Mm = 0.9;

/** Between such words and what lies across their line. */
const OFF_OTHERS: Mm = 1.2;

/** Places hard by a level or upright line, on either side of it, those near the point first. */
function* placesAlong({ bounds }: Field, note: Note, { from, to }: Segment): Iterable<Candidate> {
  const level = from.y === to.y;
  for (const stack of stacksOf(note)) {
    const { width, height } = sizeOf(stack);
    const [x, y] = [note.near.x - width / 2, note.near.y - height / 2];
    const places = level
      ? grid(bounds.left, bounds.right - width, x, FAR, 1).flatMap((left) =>
          [from.y - HARD_BY - height, from.y + HARD_BY].map((bottom) => ({ left, bottom })),
        )
      : grid(bounds.bottom, bounds.top - height, y, FAR, 1).flatMap((bottom) =>
          [from.x + HARD_BY, from.x - HARD_BY - width].map((left) => ({ left, bottom })),
        );
    const away = ({ left, bottom }: { left: Mm; bottom: Mm }): Mm => Math.hypot(left - x, bottom - y);
    places.sort((a, b) => away(a) - away(b));
    for (const { left, bottom } of places)
      yield withRoom(stacked(stack, left, bottom), OFF_OTHERS, level ? 0 : 1);
  }
}

/** As far as any sheet reaches. */
const FAR: Mm = 1e4;

/** Rows of places within so much of a point, the nearest first. */
function* placesWithin({ bounds }: Field, stack: Stack, near: Point, reach: Mm): Iterable<Candidate> {
  const { width, height } = sizeOf(stack);
  const step = Math.min(3, Math.max(1, reach / 40));
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
  for (const { left, bottom } of places) yield stacked(stack, left, bottom);
}

function sizeOf(stack: Stack): { readonly width: Mm; readonly height: Mm } {
  const extents = stack.map(extentOf);
  return {
    width: Math.max(...extents.map(({ width }) => width)),
    height: extents.reduce((sum, { height }) => sum + height, 0),
  };
}

function stacked(stack: Stack, left: Mm, bottom: Mm): Candidate {
  const { width, height } = sizeOf(stack);
  const draw: Candidate['draw'] = (x, y) =>
    stack.flatMap((block, i) => lettered(block, x, y + sizeOf(stack.slice(i + 1)).height));
  return { box: { left, bottom, right: left + width, top: bottom + height }, draw };
}

function grid(from: Mm, to: Mm, middle: Mm, reach: Mm, step: Mm): Mm[] {
  const [low, high] = [Math.max(from, middle - reach), Math.min(to, middle + reach)];
  if (high < low) return [];
  return Array.from({ length: Math.floor((high - low) / step) + 1 }, (_, i) => low + i * step);
}
