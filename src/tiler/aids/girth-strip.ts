import type { Mark, Point } from '../../draw/drawing.ts';
import { PLAIN, SMALL, words } from '../../draw/lettering.ts';
import { DESCENT, widthOf } from '../../draw/letters.ts';
import { line, solid } from '../../draw/strokes.ts';
import type { Said } from '../../measure/said.ts';
import { MM_PER_INCH, type Mm } from '../../measure/units.ts';
import { inchFraction } from '../../measure/write.ts';
import type { Language } from '../../words/language.ts';
import { asWritten } from '../../words/said.ts';

/** One strip of a girth scale: it shows the girths from `from` to `to`, mm from the zero edge. */
export interface Strip {
  readonly number: number;
  readonly from: Mm;
  readonly to: Mm;
  /** Of the paper. */
  readonly thickness: Mm;
  /** The girth at which the next strip is laid on. */
  readonly next?: Mm;
}

export const STRIP_HEIGHT: Mm = 20;

/** The smallest tube that paper wraps round well. */
const SMALLEST_TUBE: Mm = 10;
/** Marks nearer to a strip's end than this would run into it. */
const FROM_END: Mm = 0.6;

/** How one of the two scales is divided: the step of its marks, and their lengths by how many steps they are. */
interface Division {
  readonly step: Mm;
  readonly marks: readonly { readonly every: number; readonly length: Mm }[];
  readonly labelled: number;
  readonly label: (diameter: Mm) => string;
}

const IN_MM: Division = {
  step: 0.5,
  marks: [
    { every: 10, length: 4.6 },
    { every: 2, length: 3.2 },
    { every: 1, length: 1.8 },
  ],
  labelled: 10,
  label: (diameter) => `${Math.round(diameter)}`,
};

const IN_INCHES: Division = {
  step: MM_PER_INCH / 32,
  marks: [
    { every: 8, length: 4.6 },
    { every: 4, length: 3.8 },
    { every: 2, length: 3 },
    { every: 1, length: 1.8 },
  ],
  labelled: 8,
  label: (diameter) => inchFraction(diameter),
};

/** One strip with its lower left corner at `at`: mm hang from its upper edge, inches stand on its lower one. */
export function girthStrip(strip: Strip, at: Point, { aids: { girth: say } }: Language): Mark[] {
  const length = strip.to - strip.from;
  const place = (girth: Mm, up: Mm): Point => ({ x: at.x + girth - strip.from, y: at.y + up });
  const [top, foot] = [at.y + STRIP_HEIGHT, at.y];
  const right = at.x + length;
  const edges: Mark[] = [
    line('outline', { x: at.x, y: top }, { x: right, y: top }),
    line('outline', { x: at.x, y: foot }, { x: right, y: foot }),
    line('outline', { x: right, y: foot }, { x: right, y: top }),
  ];
  const start = strip.number === 1 ? zeroEdge(at, say) : trimEdge(say.trim(strip.number), at);
  const last = strip.next === undefined ? [] : layOn(say.layOn(strip.number + 1), place(strip.next, 0));
  return [
    ...edges,
    ...start,
    ...last,
    ...scale(strip, IN_MM, (girth, depth) => place(girth, STRIP_HEIGHT - depth), -1),
    ...scale(strip, IN_INCHES, place, 1),
  ];
}

function scale(
  { from, to, thickness, next }: Strip,
  { step, marks, labelled, label }: Division,
  place: (girth: Mm, deep: Mm) => Point,
  way: 1 | -1,
): Mark[] {
  const girthOf = (count: number) => Math.PI * (count * step + thickness);
  const countAt = (girth: Mm) => (girth / Math.PI - thickness) / step;
  const first = Math.ceil(Math.max(SMALLEST_TUBE / step, countAt(from + FROM_END)) - 1e-9);
  const end = Math.floor(countAt(to - FROM_END) + 1e-9);
  const counts = Array.from({ length: Math.max(0, end - first + 1) }, (_, index) => first + index);
  return counts.flatMap((count) => {
    const girth = girthOf(count);
    const deep = marks.find(({ every }) => count % every === 0)?.length ?? 0;
    const mark = line('guide', place(girth, 0), place(girth, deep));
    if (count % labelled !== 0) return [mark];
    const text = label(count * step);
    const half = widthOf(text, PLAIN) / 2;
    const middle = clearOf([from, next ?? to, to], girth, half + FROM_END);
    if (Math.abs(middle - girth) > half) return [mark];
    const base = place(middle - half, deep + 0.9 + (way < 0 ? PLAIN * 0.76 : DESCENT * 0.3 * PLAIN));
    return [mark, words(asWritten(text), 'aid', PLAIN, base)];
  });
}

/** Where the middle of a label comes to lie when it is moved off the lines that it would touch. */
function clearOf(lines: readonly Mm[], wish: Mm, room: Mm): Mm {
  return lines.reduce((middle, at) => {
    if (Math.abs(middle - at) >= room) return middle;
    return wish > at || at === lines[0] ? at + room : at - room;
  }, wish);
}

function zeroEdge(at: Point, { zeroEdge: name, diameter, scales }: Language['aids']['girth']): Mark[] {
  const middle = at.y + STRIP_HEIGHT / 2;
  return [
    line('cut', at, { x: at.x, y: at.y + STRIP_HEIGHT }),
    words(name, 'aid', SMALL, { x: at.x - 1.4, y: middle - widthOf(name, SMALL) / 2 }, 1),
    words(diameter, 'aid', PLAIN, { x: at.x + 4, y: middle + 1.2 }),
    words(scales, 'aid', SMALL, { x: at.x + 4, y: middle - 2.6 }),
  ];
}

function trimEdge(text: Said, at: Point): Mark[] {
  const foot = at.y + (STRIP_HEIGHT - widthOf(text, SMALL)) / 2;
  return [
    line('registration', { x: at.x, y: at.y - 2 }, { x: at.x, y: at.y + STRIP_HEIGHT + 2 }),
    words(text, 'aid', SMALL, { x: at.x - 1.4, y: foot }, 1),
  ];
}

/** The line that the next strip is laid on. Its words and their arrow come before it, where that strip does not hide them. */
function layOn(text: Said, at: Point): Mark[] {
  const middle = at.y + STRIP_HEIGHT / 2;
  const tip = at.x - POINTER.off;
  const neck = tip - POINTER.head;
  const tail = tip - POINTER.long;
  return [
    line('registration', { x: at.x, y: at.y - 2 }, { x: at.x, y: at.y + STRIP_HEIGHT + 2 }),
    line('registration', { x: tail, y: middle }, { x: neck, y: middle }),
    solid(
      'registration',
      { x: tip, y: middle },
      { x: neck, y: middle + POINTER.half },
      { x: neck, y: middle - POINTER.half },
    ),
    words(text, 'aid', PLAIN, { x: tail - 1 - widthOf(text, PLAIN), y: middle - PLAIN * 0.36 }),
  ];
}

/** The arrow: its length, that of its head, half the head's width, and how far off the line its tip stops, mm. */
const POINTER = { long: 6, head: 2.4, half: 0.9, off: 0.3 } as const;
