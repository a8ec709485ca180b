import { across, boundsOf, grown, overlapping, upright } from '../../draw/boxes.ts';
import type { Box, Mark, Point } from '../../draw/drawing.ts';
import { TEXT, tellingOf, WORTH, words } from '../../draw/lettering.ts';
import { spelled } from '../../draw/letters.ts';
import { point } from '../../draw/path.ts';
import { unprimed } from '../../frame/names.ts';
import type { Job } from '../../job/job.ts';
import { drawn, lineOf, type Picture, type PictureWord } from '../../leaf/picture/picture.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import { crossProduct, dot, plusTimes, unitOf, type Vector } from '../../space/vector.ts';
import type { FrontBox } from '../../tiler/front.ts';
import type { StandingFrame } from '../../together/frame-notes.ts';
import { farEndOf, nameOfTube, placeInSpace, type StandingTube, stopAt } from '../../together/in-space.ts';
import type { asWritten } from '../../words/said.ts';

/** A frame from four sides on one sheet: from the front, from the side and from above, one over the other as they belong, and at an angle. */
export function viewBoxes(job: Job, frame: StandingFrame, room: Box): readonly FrontBox[] {
  const [width, height] = [across(room), upright(room) - 1];
  return [
    {
      width,
      height,
      draw: (at) => tellingOf({ place: 'list' }, drawViews(job, frame, at, width, height)),
    },
  ];
}

interface Look {
  readonly name: 'front' | 'side' | 'above' | 'angle';
  /** From the frame to the one who looks, of length 1, and what is up in the picture. */
  readonly toViewer: Vector;
  readonly up: Vector;
}

const LOOKS: readonly Look[] = [
  { name: 'front', toViewer: [0, -1, 0], up: [0, 0, 1] },
  { name: 'side', toViewer: [1, 0, 0], up: [0, 0, 1] },
  { name: 'above', toViewer: [0, 0, 1], up: [0, 1, 0] },
  { name: 'angle', toViewer: [0.51, -0.77, 0.39], up: [0, 0, 1] },
];

const TITLE_ROOM: Mm = 8;

function drawViews(job: Job, frame: StandingFrame, at: Point, width: Mm, height: Mm): Mark[] {
  const words = job.words.frame;
  const title = label(words.views(job.title), WORTH, { x: at.x, y: at.y - WORTH });
  const top = at.y - TITLE_ROOM;
  const twins = job.tubes.some(({ name }) => unprimed(name) !== name)
    ? [label(words.twins, TEXT, { x: at.x + width / 2, y: at.y - WORTH })]
    : [];
  const pictures = LOOKS.map((look) => ({ look, picture: pictureOf(job, frame, look) }));
  const named = pictures.flatMap(({ picture }) => picture.words.map(({ text }) => text));
  const times = new Map<Said, number>();
  for (const text of named) times.set(text, (times.get(text) ?? 0) + 1);
  return [
    title,
    ...twins,
    ...pictures.flatMap(({ look, picture: { lines, axes, words: names } }, i) => {
      const [column, row] = [i % 2, Math.floor(i / 2)];
      const cell: Box = {
        left: at.x + (column * width) / 2,
        right: at.x + ((column + 1) * width) / 2,
        top: top - (row * (height - TITLE_ROOM)) / 2,
        bottom: top - ((row + 1) * (height - TITLE_ROOM)) / 2,
      };
      const name = label(words.from[look.name], TEXT, { x: cell.left, y: cell.top - TEXT });
      // A name that stands in few of the pictures is given room before one that stands in all.
      const inNeed = names.toSorted((a, b) => (times.get(a.text) ?? 0) - (times.get(b.text) ?? 0));
      const picture = { lines, axes, words: inNeed };
      return [name, ...drawn(picture, { ...cell, top: cell.top - 1.5 * TEXT })];
    }),
  ];
}

function label(text: ReturnType<typeof asWritten>, size: Mm, at: Point): Mark {
  return words(spelled(text), 'heading', size, at);
}

/** A line of a tube as it is seen. */
type Side = readonly [Vector, Vector];

/** A frame from one side. Of a large one the lines are tens of thousands, so they are kept as numbers. */
function pictureOf(job: Job, { standings }: StandingFrame, look: Look): Picture {
  const toViewer = unitOf(look.toViewer) ?? look.toViewer;
  const right = unitOf(crossProduct(look.up, toViewer)) ?? look.up;
  const up = crossProduct(toViewer, right);
  const flat = (place: Vector): Point => point(dot(place, right), dot(place, up));
  const size = Math.max(...standings.map(({ seat }) => seat.length));
  const hiddenOf = hider(standings, toViewer, flat);
  const [shown, hidden]: [number[], number[]] = [[], []];
  const words: PictureWord[] = [];
  for (const standing of standings) {
    const sides = sidesOf(standing, toViewer);
    const isHidden = hiddenOf(standing.tube, boundsOf(sides.flat().map(flat)));
    for (const [from, to] of sides) {
      for (const part of partsOf(from, to, size / 150, isHidden)) {
        const [a, b] = [flat(part.a), flat(part.b)];
        (part.hidden ? hidden : shown).push(a.x, a.y, b.x, b.y);
      }
    }
    words.push(...nameOf(job, standing, flat, toViewer, isHidden));
  }
  return {
    lines: fromRow(shown, (from, to) => lineOf([from, to])),
    axes: fromRow(hidden, (from, to) => ({ from, to })),
    words,
  };
}

/** What is made of every two points of a row of numbers, anew each time it is gone through. */
function fromRow<Line>(row: readonly number[], made: (from: Point, to: Point) => Line): Iterable<Line> {
  const at = (i: number): Point => point(row[i] ?? 0, row[i + 1] ?? 0);
  return {
    *[Symbol.iterator]() {
      for (let i = 0; i < row.length; i += 4) yield made(at(i), at(i + 2));
    },
  };
}

/** A tube's two sides as they are seen, and its ends. Seen end on it is a ring. */
function sidesOf(standing: StandingTube, toViewer: Vector): readonly Side[] {
  const { seat, solution } = standing;
  const ends = [stopAt(standing), farEndOf(standing)] as const;
  const across = unitOf(crossProduct(seat.axis, toViewer));
  if (!across || Math.abs(dot(seat.axis, toViewer)) > 0.999) {
    const outline = ringOf(solution.section).map(([x, y]) => placeInSpace(seat, ends[1], x, y));
    return outline.map((place, i) => [place, outline[(i + 1) % outline.length] ?? place]);
  }
  const reach = halfAcross(standing, across);
  const corner = (along: Mm, side: Mm): Vector => plusTimes(placeInSpace(seat, along, 0, 0), side, across);
  const [a, b, c, d] = [
    corner(ends[0], reach),
    corner(ends[1], reach),
    corner(ends[1], -reach),
    corner(ends[0], -reach),
  ];
  return [
    [a, b],
    [c, d],
    [b, c],
    [d, a],
  ];
}

const RING = 24;

function ringOf(section: StandingTube['solution']['section']): readonly (readonly [Mm, Mm])[] {
  return Array.from({ length: RING }, (_, i) => {
    const { x, y } = section.at((i * section.turn) / RING);
    return [x, y] as const;
  });
}

/** How far a tube's outside reaches from its axis this way. */
function halfAcross({ seat, solution }: StandingTube, way: Vector): Mm {
  const side = crossProduct(seat.axis, seat.spine);
  const [a, b] = [dot(way, seat.spine), dot(way, side)];
  return Math.max(...ringOf(solution.section).map(([x, y]) => a * x + b * y));
}

/** Of each tube, whether a place of it lies behind another: only those are looked at that lie over some of its box in the picture. */
function hider(
  standings: readonly StandingTube[],
  toViewer: Vector,
  flat: (place: Vector) => Point,
): (tube: number, box: Box) => (place: Vector) => boolean {
  const bands = standings.map((standing) => {
    const { seat, solution, tube } = standing;
    const [from, to] = [stopAt(standing), farEndOf(standing)].map((along) => placeInSpace(seat, along, 0, 0));
    const way = unitOf(crossProduct(seat.axis, toViewer));
    const half = way ? halfAcross(standing, way) : solution.section.reach;
    const [a, b] = [flat(from ?? seat.from), flat(to ?? seat.from)];
    const box = grown(boundsOf([a, b]), half);
    return { tube, a, b, half, box, from: from ?? seat.from, to: to ?? seat.from };
  });
  const isHiddenBy = (place: Vector, over: typeof bands): boolean => {
    const at = flat(place);
    const depth = dot(place, toViewer);
    return over.some(({ a, b, half, from, to }) => {
      const [dx, dy] = [b.x - a.x, b.y - a.y];
      const square = dx * dx + dy * dy;
      const share = square < 1e-9 ? 0 : ((at.x - a.x) * dx + (at.y - a.y) * dy) / square;
      if (share < 0 || share > 1) return false;
      const its = dot(from, toViewer) + share * (dot(to, toViewer) - dot(from, toViewer));
      if (its <= depth + 0.2 * half) return false;
      return Math.hypot(at.x - a.x - share * dx, at.y - a.y - share * dy) < 0.98 * half;
    });
  };
  return (own, box) => {
    const over = bands.filter((band) => band.tube !== own && overlapping(band.box, box));
    return (place) => isHiddenBy(place, over);
  };
}

interface SeenPart {
  readonly hidden: boolean;
  readonly a: Vector;
  readonly b: Vector;
}

/** A line in the parts that show and those that something hides, to within `grain`. */
function partsOf(
  from: Vector,
  to: Vector,
  grain: Mm,
  isHidden: (place: Vector) => boolean,
): readonly SeenPart[] {
  const way = plusTimes(to, -1, from);
  const steps = Math.max(1, Math.ceil(Math.hypot(...way) / grain));
  const at = (i: number): Vector => plusTimes(from, i / steps, way);
  const parts: SeenPart[] = [];
  for (let i = 0; i < steps; i++) {
    const hidden = isHidden(at(i + 0.5));
    const last = parts.at(-1);
    if (last && last.hidden === hidden) parts[parts.length - 1] = { ...last, b: at(i + 1) };
    else parts.push({ hidden, a: at(i), b: at(i + 1) });
  }
  return parts;
}

const NAME_LOOKS = 32;

/** The middle of the longest stretch of a tube's axis that nothing hides; undefined where that is too short to be told. */
function middleSeen(standing: StandingTube, isHidden: (place: Vector) => boolean): Vector | undefined {
  const [from, to] = [stopAt(standing), farEndOf(standing)];
  const at = (look: number): Vector =>
    placeInSpace(standing.seat, from + ((to - from) * look) / NAME_LOOKS, 0, 0);
  let best = { begins: 0, count: 0 };
  let count = 0;
  for (let look = 0; look < NAME_LOOKS; look++) {
    count = isHidden(at(look + 0.5)) ? 0 : count + 1;
    if (count > best.count) best = { begins: look + 1 - count, count };
  }
  return best.count > 2 ? at(best.begins + best.count / 2) : undefined;
}

/** A tube's name, beside what is seen of it from its side. */
function nameOf(
  job: Job,
  standing: StandingTube,
  flat: (place: Vector) => Point,
  toViewer: Vector,
  isHidden: (place: Vector) => boolean,
): PictureWord[] {
  const { seat, tube } = standing;
  if (Math.abs(dot(seat.axis, toViewer)) > 0.95) return [];
  const middle = middleSeen(standing, isHidden);
  if (!middle) return [];
  const [a, b] = [flat([0, 0, 0]), flat(seat.axis)];
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const way = dx >= 0 ? { x: -dy, y: dx } : { x: dy, y: -dx };
  return [{ text: nameOfTube(job, tube), at: flat(middle), way, led: 'elsewhere' }];
}
