import { boundsOf, grown } from '../../draw/boxes.ts';
import { broken } from '../../draw/breaking.ts';
import { type Label, labelOf, standingAt } from '../../draw/candidates.ts';
import type { Box, Mark, Point } from '../../draw/drawing.ts';
import type { FactName } from '../../draw/facts.ts';
import { type Block, TEXT } from '../../draw/lettering.ts';
import { distance, legsOf, onWay, point, type Segment } from '../../draw/path.ts';
import { addBarrier, type Candidate, emptyField, type Field, place, withRoom } from '../../draw/placer.ts';
import { simplified } from '../../draw/simplify.ts';
import { line, linesAlong, solid } from '../../draw/strokes.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';

/**
 * A picture's lines in true size, before it is brought to scale, and the words that go to places of it. Lines can be made as they are
 * asked for: of a large frame they are thousands.
 */
export interface Picture {
  readonly lines: Iterable<PictureLine>;
  readonly axes: Iterable<Segment>;
  readonly words: readonly PictureWord[];
}

/** A word, the place of the picture that it names, and the way that it lies from there. */
export interface PictureWord {
  readonly text: Said;
  readonly fact?: FactName;
  readonly at: Point;
  readonly way: Point;
  /** Whether a pointer leads from it to its place: always, or where it has no room beside it, on either side. */
  readonly led?: 'always' | 'elsewhere';
  /** It stands all to the right of this: on the other side it would name something else. */
  readonly rightOf?: Mm;
}

/** A line of a picture. */
export type PictureLine = readonly [Point, ...Point[]];

/** What shows of one thing, before anything hides it. */
export interface Outlines {
  readonly lines: readonly PictureLine[];
  readonly axes: readonly Segment[];
  /** All that it hides, where that is drawn. */
  readonly shape?: readonly Point[];
}

/** Points as a line. */
export function lineOf([first, ...rest]: readonly Point[]): PictureLine {
  return [first ?? point(0, 0), ...rest];
}

/** The centre of what is seen end on. */
export function crossAt({ x, y }: Point, size: Mm): Segment[] {
  return [
    { from: point(x - size, y), to: point(x + size, y) },
    { from: point(x, y - size), to: point(x, y + size) },
  ];
}

/** Where a tube is broken off: a line that swings to both sides. */
export function breakLine(from: Point, to: Point): [Point, ...Point[]] {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const swing = Array.from({ length: 12 }, (_, i) => {
    const t = (i + 1) / 12;
    const side = 0.08 * Math.sin(2 * Math.PI * t);
    return point(from.x + t * dx - side * dy, from.y + t * dy + side * dx);
  });
  return [from, ...swing];
}

/** Points that make no more than this of a difference to a picture are left out: a twentieth of its lines' width. */
const UNSEEN: Mm = 0.01;

/** Round the lines, room for words. */
const ROOM: Mm = 5;

/** A picture brought to scale, as large as its box lets it, its words clear of its lines; what has no room is left out. */
export function drawn(picture: Picture, box: Box): Mark[] {
  const { left, right, bottom: low, top: high } = boundsOf(pointsOf(picture));
  const wide = (box.right - box.left - 2 * ROOM) / (right - left);
  const tall = (box.top - box.bottom - 2 * ROOM) / (high - low);
  const scale = Math.min(wide, tall);
  const to = ({ x, y }: Point): Point => ({
    x: (box.left + box.right) / 2 + scale * (x - (left + right) / 2),
    y: (box.bottom + box.top) / 2 + scale * (y - (low + high) / 2),
  });
  const field = emptyField(box);
  const marks: Mark[] = [];
  for (const each of picture.lines) {
    const shown = simplified(lineOf(each.map(to)), UNSEEN);
    addBarrier(field, legsOf(shown), 0.4);
    marks.push(line('picture', ...shown));
  }
  for (const { from, to: end } of picture.axes) {
    const dashes = chain({ from: to(from), to: to(end) });
    addBarrier(field, dashes, 0.4);
    marks.push(...linesAlong('picture', dashes));
  }
  const words = picture.words.flatMap(({ text, fact = 'picture', at, way, led, rightOf }) => {
    const block: Block = { fact, lines: [text], size: TEXT };
    const least = rightOf === undefined ? box.left : to(point(rightOf, 0)).x;
    const put = (towards: Point) => placed(field, block, to(at), towards, least);
    const beside = led === 'always' ? undefined : put(way);
    if (beside || !led) return beside ?? [];
    const other = led === 'elsewhere' ? put(point(-way.x, -way.y)) : undefined;
    const lines = broken(text, TEXT, LED);
    return other ?? place(field, ledTo({ ...block, lines }, to(at), way)) ?? [];
  });
  return [...marks, ...words];
}

function* pointsOf({ lines, axes }: Picture): Iterable<Point> {
  for (const each of lines) yield* each;
  for (const { from, to } of axes) {
    yield from;
    yield to;
  }
}

/** A centre line: long dashes and short ones in turn. */
function chain({ from, to }: Segment): Segment[] {
  const length = distance(from, to);
  const at = (d: Mm): Point => onWay(from, to, Math.min(1, d / length));
  const dashes: Segment[] = [];
  for (let d = 0, i = 0; d < length; i++) {
    const dash = i % 2 === 0 ? 3 : 0.6;
    dashes.push({ from: at(d), to: at(d + dash) });
    d += dash + 0.8;
  }
  return dashes;
}

/** With room before and after it where there is any, for `48°` beside `heel` reads as one. */
function placed(field: Field, block: Block, at: Point, way: Point, least: Mm): readonly Mark[] | undefined {
  const places = around(labelOf(block), at, way).filter(({ box }) => box.left >= least);
  return place(field, roomy(places)) ?? place(field, places);
}

function* roomy(places: readonly Candidate[]): Iterable<Candidate> {
  for (const words of places) yield withRoom(words, APART, 0);
}

const APART: Mm = 1.6;

/** Words with a pointer are folded to this, and stand so far from their place at least. */
const LED: Mm = 16;
const POINTER: Mm = 4;

/** Places for words with a pointer to theirs. */
function* ledTo(block: Block, at: Point, way: Point): Iterable<Candidate> {
  const label = labelOf(block);
  for (const towards of [way, point(-way.x, -way.y)]) {
    for (const words of around(label, at, towards, POINTER)) {
      const { left, right, bottom, top } = grown(words.box, 0.8);
      const from = point(Math.min(right, Math.max(left, at.x)), Math.min(top, Math.max(bottom, at.y)));
      yield { ...words, leader: { from, to: at }, draw: (x, y) => [pointer(from, at), ...words.draw(x, y)] };
    }
  }
}

function pointer(from: Point, at: Point): Mark {
  const [dx, dy] = [(from.x - at.x) / distance(from, at), (from.y - at.y) / distance(from, at)];
  const barb = (side: number): Point => point(at.x + 2 * dx - side * dy, at.y + 2 * dy + side * dx);
  return solid('picture', at, barb(0.6), barb(-0.6));
}

/** Places for words round a point: nearest first, and at each distance nearest to the way they should lie. */
function around(label: Label, at: Point, way: Point, least: Mm = 1): readonly Candidate[] {
  const aim = Math.atan2(way.y, way.x);
  const ways = SWINGS.map((swing) => ({ c: Math.cos(aim + swing), s: Math.sin(aim + swing) }));
  return Array.from({ length: RINGS }, (_, ring) => least + ring).flatMap((away) =>
    ways.map(({ c, s }) =>
      standingAt(
        label,
        at.x + c * away + ((c - 1) * label.width) / 2,
        at.y + s * away + ((s - 1) * label.height) / 2,
      ),
    ),
  );
}

const SWINGS = [0, 0.4, -0.4, 0.8, -0.8, 1.3, -1.3];
const RINGS = 8;
