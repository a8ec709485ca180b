import type { Mm } from '../measure/units.ts';
import { grown, holds, overlapping } from './boxes.ts';
import type { Box, Mark, Point } from './drawing.ts';
import { type Block, extentOf, lettered, type Turn } from './lettering.ts';
import { boxOf, cross, meetsBox, type Segment } from './path.ts';

/** One place where something may stand. */
export interface Candidate {
  readonly box: Box;
  /** A line that goes with it and may not run through other words. */
  readonly leader?: Segment;
  /** Whether it may lie across a guide line, which is then interrupted. */
  readonly overGuides?: boolean;
  /** What stands there, with its lower left corner at (left, bottom). */
  readonly draw: (left: Mm, bottom: Mm) => readonly Mark[];
}

/** What is taken on a drawing. Lines are kept by columns, so that asking looks at few of them. */
export interface Field {
  readonly bounds: Box;
  readonly columns: Map<number, Barrier[]>;
  /** Boxes of words and signs already placed. */
  readonly taken: Box[];
  readonly guides: readonly Guide[];
}

/** A line that words keep away from. */
interface Barrier {
  readonly segment: Segment;
  readonly reach: Box;
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

const COLUMN: Mm = 6;

const NONE: readonly Barrier[] = [];

/** Between two boxes of words, and between words and a guide line. */
const APART: Mm = 0.6;

export function emptyField(bounds: Box, guides: readonly Guide[] = []): Field {
  return { bounds, columns: new Map(), taken: [], guides };
}

/** Words keep `clear` mm off these lines; strokes do not cross those that are a fence. */
export function addBarrier(field: Field, segments: readonly Segment[], clear: Mm, fence = false): void {
  for (const segment of segments) {
    const reach = grown(boxOf(segment), clear);
    const barrier = { segment, reach, clear, fence };
    for (let column = columnOf(reach.left); column <= columnOf(reach.right); column++) {
      const there = field.columns.get(column);
      if (there) there.push(barrier);
      else field.columns.set(column, [barrier]);
    }
  }
}

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
  for (let column = columnOf(box.left); column <= columnOf(box.right); column++) {
    for (const barrier of field.columns.get(column) ?? NONE) if (isTouched(barrier, box)) return false;
  }
  return true;
}

function isTouched({ segment, reach, clear }: Barrier, box: Box): boolean {
  return overlapping(reach, box) && meetsBox(segment, grown(box, clear));
}

/** Whether a straight piece keeps clear of all words, and crosses no fence. */
export function isOpen(field: Field, segment: Segment): boolean {
  const box = boxOf(segment);
  const near = grown(box, APART);
  for (const other of field.taken) {
    if (overlapping(near, other) && meetsBox(segment, grown(other, APART))) return false;
  }
  for (let column = columnOf(box.left); column <= columnOf(box.right); column++) {
    for (const barrier of field.columns.get(column) ?? NONE) {
      if (barrier.fence && cross(barrier.segment, segment)) return false;
    }
  }
  return true;
}

/** Takes the first candidate that is free and gives its marks; undefined where none is. */
export function place(field: Field, candidates: Iterable<Candidate>): readonly Mark[] | undefined {
  for (const { box, leader, overGuides, draw } of candidates) {
    if (!isFree(field, box, overGuides)) continue;
    if (leader && field.taken.some((other) => meetsBox(leader, grown(other, APART)))) continue;
    field.taken.push(box);
    if (leader) addBarrier(field, [leader], APART);
    return draw(box.left, box.bottom);
  }
  return undefined;
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
    if (to - from > 0.5)
      parts.push([
        { x: guide.x, y: from },
        { x: guide.x, y: to },
      ]);
    from = Math.max(from, top);
  }
  return parts;
}

function guideMeets({ x, bottom, top }: Guide, box: Box): boolean {
  return (
    x > box.left - APART && x < box.right + APART && bottom < box.top + APART && top > box.bottom - APART
  );
}

/** Words wherever they may be tried: a candidate with the lower left corner of their turned box at (left, bottom). */
export function wordsOf(block: Block, turn: Turn = 0): (left: Mm, bottom: Mm) => Candidate {
  const { width, height } = extentOf(block);
  const [w, h] = turn === 0 ? [width, height] : [height, width];
  const draw: Candidate['draw'] = (x, y) => lettered(block, x, y, turn);
  return (left, bottom) => ({ box: { left, bottom, right: left + w, top: bottom + h }, draw });
}

/** The same words with so much room before and after them: two notes in one row with no more than a space between read as one. */
export function withRoom(words: Candidate, by: Mm, turn: Turn): Candidate {
  const [aside, up] = turn === 0 ? [by, 0] : [0, by];
  const { left, bottom, right, top } = words.box;
  return {
    ...words,
    box: { left: left - aside, bottom: bottom - up, right: right + aside, top: top + up },
    draw: (x, y) => words.draw(x + aside, y + up),
  };
}

function columnOf(x: Mm): number {
  return Math.floor(x / COLUMN);
}
