import type { Said } from '../measure/said.ts';
import type { Mm } from '../measure/units.ts';
import { grown, holds, overlapping } from './boxes.ts';
import type { Box, Mark, Point } from './drawing.ts';
import type { Turn } from './lettering.ts';
import { boxOf, cross, meetsBox, onWay, point, type Segment } from './path.ts';
import { linesAlong } from './strokes.ts';

/** One place where something may stand. */
export interface Candidate {
  readonly box: Box;
  /** A line that is drawn with it and may not run through other words. */
  readonly leader?: Segment | undefined;
  /** Whether it may lie across a guide line, which is then interrupted. */
  readonly overGuides?: boolean | undefined;
  /** What stands there, with its lower left corner at (left, bottom). */
  readonly draw: (left: Mm, bottom: Mm) => readonly Mark[];
}

/** What is taken on a drawing. Lines are kept by the cells that they pass, so that asking looks at few of them. */
export interface Field {
  readonly bounds: Box;
  readonly cells: Map<number, Barrier[]>;
  /** Boxes of words and signs already placed. */
  readonly taken: Box[];
  readonly guides: readonly Guide[];
}

/** A line that words keep away from. */
interface Barrier {
  readonly segment: Segment;
  readonly clear: Mm;
  /** Whether strokes stop at it too. */
  readonly fence: boolean;
}

/** An upright line that is interrupted where words lie across it; a firm one never is. */
export interface Guide {
  readonly x: Mm;
  readonly bottom: Mm;
  readonly top: Mm;
  readonly firm: boolean;
  /** A line to fold on. */
  readonly fold: boolean;
}

/** The side of a cell. */
const CELL: Mm = 6;

/** Between two boxes of words, and between words and a guide line. */
const APART: Mm = 0.6;

export function emptyField(bounds: Box, guides: readonly Guide[] = []): Field {
  return { bounds, cells: new Map(), taken: [], guides };
}

/** Words keep `clear` mm off these lines; strokes do not cross those that are a fence. */
export function addBarrier(field: Field, segments: readonly Segment[], clear: Mm, fence = false): void {
  for (const segment of segments) {
    const barrier = { segment, clear, fence };
    for (const piece of aslantPieces(segment)) {
      for (const cell of cellsOf(grown(boxOf(piece), clear + HAIR))) {
        const there = field.cells.get(cell);
        if (!there) field.cells.set(cell, [barrier]);
        else if (there.at(-1) !== barrier) there.push(barrier);
      }
    }
  }
}

/** A line that runs aslant in pieces of which none passes by more than two cells each way: the box of all of it holds many that it does not pass. */
function aslantPieces(segment: Segment): readonly Segment[] {
  const { from, to } = segment;
  const count = Math.ceil(Math.min(Math.abs(to.x - from.x), Math.abs(to.y - from.y)) / CELL);
  if (count < 2) return [segment];
  return Array.from({ length: count }, (_, i) => ({
    from: onWay(from, to, i / count),
    to: onWay(from, to, (i + 1) / count),
  }));
}

/** What a piece may lie off its line in the last bits. */
const HAIR: Mm = 1e-6;

/** The numbers of the cells that a box lies in. */
function cellsOf({ left, right, bottom, top }: Box): readonly number[] {
  const cells: number[] = [];
  const [lowest, highest] = [Math.floor(bottom / CELL), Math.floor(top / CELL)];
  for (let column = Math.floor(left / CELL); column <= Math.floor(right / CELL); column++)
    for (let row = lowest; row <= highest; row++) cells.push(column * ROWS + row);
  return cells;
}

/** In a column. Of a longer one two cells share a number, which costs a look and no more. */
const ROWS = 1 << 16;

/** Marks of a place, drawn before all words, which then keep off them. */
export function drawTicks(field: Field, ticks: readonly Segment[], fence = false): Mark[] {
  addBarrier(field, ticks, OFF_TICKS, fence);
  return linesAlong('guide', ticks);
}

const OFF_TICKS: Mm = 0.3;

/** Whether a box is clear of every line and every word, and of guides unless it may lie over those that are not firm. */
export function isFree(field: Field, box: Box, overGuides = false): boolean {
  for (const guide of field.guides) if ((guide.firm || !overGuides) && guideMeets(guide, box)) return false;
  return isClear(field, box);
}

/** Whether a box is within bounds and clear of every line and every word, wherever the guides are. */
export function isClear(field: Field, box: Box): boolean {
  if (!holds(field.bounds, box)) return false;
  const near = grown(box, APART);
  for (const other of field.taken) if (overlapping(near, other)) return false;
  return !isMet(field, box, (barrier) => isTouched(barrier, box));
}

/** Most are not near: that is told first, and by no box of their own, for the lines of a large frame are tens of thousands. */
function isTouched({ segment, clear }: Barrier, box: Box): boolean {
  const { from, to } = segment;
  const isNear =
    Math.min(from.x, to.x) - clear < box.right &&
    box.left < Math.max(from.x, to.x) + clear &&
    Math.min(from.y, to.y) - clear < box.top &&
    box.bottom < Math.max(from.y, to.y) + clear;
  return isNear && meetsBox(segment, grown(box, clear));
}

/** Whether a straight piece keeps clear of all words, and crosses no fence. */
export function isOpen(field: Field, segment: Segment): boolean {
  const box = boxOf(segment);
  const near = grown(box, APART);
  for (const other of field.taken) {
    if (overlapping(near, other) && meetsBox(segment, grown(other, APART))) return false;
  }
  return !isMet(field, box, (barrier) => barrier.fence && cross(barrier.segment, segment));
}

/** Whether a barrier of those about a box is one that meets. */
function isMet({ cells }: Field, box: Box, meets: (barrier: Barrier) => boolean): boolean {
  return cellsOf(box).some((cell) => cells.get(cell)?.some(meets));
}

/** Takes the first candidate that is free and gives its marks; undefined where none is. */
export function place(field: Field, candidates: Iterable<Candidate>): readonly Mark[] | undefined {
  for (const { box, leader, overGuides, draw } of candidates) {
    if (!isFree(field, box, overGuides)) continue;
    if (leader && field.taken.some((other) => meetsBox(leader, grown(other, APART)))) continue;
    field.taken.push(box);
    if (leader) addBarrier(field, [leader], APART);
    return [...(leader ? linesAlong('guide', [leader]) : []), ...draw(box.left, box.bottom)];
  }
  return undefined;
}

/** What is to be placed: the places that may be tried for it, the best first, and what is said elsewhere if it finds none. */
export interface Wish {
  readonly places: Iterable<Candidate>;
  readonly otherwise?: Said;
}

/** What was placed, and in words what found no room. */
export interface Placed {
  readonly marks: readonly Mark[];
  readonly beside: readonly Said[];
}

/** Places one wish after the other, those that matter most first. */
export function placeAll(field: Field, wishes: readonly Wish[]): Placed {
  const marks: Mark[] = [];
  const beside: Said[] = [];
  for (const { places, otherwise } of wishes) {
    const found = place(field, places);
    if (found) marks.push(...found);
    else if (otherwise !== undefined) beside.push(otherwise);
  }
  return { marks, beside };
}

/** The parts of a guide that are left when the words across it have their room. */
export function openParts(field: Field, guide: Guide): [Point, Point][] {
  const gaps = field.taken
    .filter((box) => guideMeets(guide, box))
    .map((box) => [box.bottom - APART, box.top + APART] as const)
    .sort((a, b) => a[0] - b[0]);
  const parts: [Point, Point][] = [];
  let from = guide.bottom;
  for (const [bottom, top] of [...gaps, [guide.top, guide.top] as const]) {
    const to = Math.min(bottom, guide.top);
    if (to - from > SHORTEST) parts.push([point(guide.x, from), point(guide.x, to)]);
    from = Math.max(from, top);
  }
  return parts;
}

/** A shorter part of a guide is taken for dirt. */
const SHORTEST: Mm = 0.5;

function guideMeets({ x, bottom, top }: Guide, box: Box): boolean {
  const near = grown(box, APART);
  return x > near.left && x < near.right && bottom < near.top && top > near.bottom;
}

/** The same words with so much room before and after them: two notes in one row with no more than a space between read as one. */
export function withRoom(words: Candidate, by: Mm, turn: Turn): Candidate {
  const [aside, up] = turn === 0 ? [by, 0] : [0, by];
  const { box, leader, overGuides, draw } = words;
  return {
    box: { left: box.left - aside, bottom: box.bottom - up, right: box.right + aside, top: box.top + up },
    leader,
    overGuides,
    draw: (x, y) => draw(x + aside, y + up),
  };
}
