import { boundsOf, grown, isWithin } from '../../draw/boxes.ts';
import type { Box, Point } from '../../draw/drawing.ts';
import { distance, point, type Segment } from '../../draw/path.ts';
import type { Part } from '../../job/job.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import { pastClock, towardsClock } from '../../space/landing.ts';
import { wrapStation } from '../../space/section.ts';
import type { Developed } from '../../space/solid.ts';
import type { Language } from '../../words/language.ts';
import { pointInPolygon } from '../picture/hidden.ts';
import { type SideNames, sideNames } from '../wrap/sides.ts';
import type { HeaderFlat } from './flat.ts';
import type { Note } from './words.ts';

/** One end on one of its headers, laid flat. */
export interface Landed {
  readonly cope: Cope;
  readonly asked: Part;
  /** The header's place in the end's list. */
  readonly part: number;
  readonly flat: HeaderFlat;
  /** Whether the tube is vented through this header's wall. */
  readonly vented: boolean;
  /** Where its lines cross: at the work point or, of a frame, where the tube's centre line comes out. */
  readonly cross: Point;
  /** Whether its card tells where that goes on the header. */
  readonly isPlaced: boolean;
  /** Its mark. */
  readonly mark: Said;
  readonly words: Language;
}

/** What the notes of a footprint keep to: its edge, its outlines as closed shapes, and the ends of an open one. */
export interface Drawn {
  readonly edge: Box;
  /** The tube's outside. */
  readonly shape: readonly Point[];
  /** The tube's inside; empty without a wall. */
  readonly bore: readonly Point[];
  readonly clean: readonly Point[];
  /** None where the outline is closed. */
  readonly open: readonly OpenEnd[];
}

/** Where an outline ends, and on which header the tube's goes on, by its place in the list; none where it passes beside. */
export interface OpenEnd {
  readonly at: Point;
  readonly onto: number | undefined;
}

/** All words of a footprint, those that matter most first. Each outline is named by a line that leads to it. */
export function notesOf(landed: Landed, drawn: Drawn, title: Pick<Note, 'heading' | 'text'>): Note[] {
  const { edge, shape, open } = drawn;
  const { words } = landed;
  return [
    ...lineNotes(landed, edge),
    ...outlineNotes(landed, drawn),
    { ...title, near: point(edge.left + 24, edge.top - 4), where: (at) => !pointInPolygon(at, shape) },
    { fact: 'mark', text: landed.mark, near: point(edge.right - 14, edge.bottom + 3) },
    ...sideNotes(landed),
    ...wayNotes(landed, edge),
    ...open.map(({ at, onto }) => ({
      text:
        onto === undefined ? words.footprint.open : words.footprint.goesOn(words.card.headerName(onto + 1)),
      near: at,
    })),
    ...roundNotes(landed, edge),
  ];
}

/** Whether the sheet goes all round its header: one that does not would look torn off. A flat header has no round. */
function roundNotes({ flat, words: { footprint } }: Landed, edge: Box): Note[] {
  if (!Number.isFinite(flat.half)) return [];
  const isWhole = edge.top >= flat.half && edge.bottom <= -flat.half;
  const text = isWhole ? footprint.meetsBehind : footprint.partOfRound;
  return [{ text, near: point(edge.left + 16, edge.bottom + 3) }];
}

/** What the straight lines are. */
function lineNotes({ asked, flat, cross, isPlaced, words: { footprint } }: Landed, edge: Box): Note[] {
  const x = leans(asked) === 1 ? edge.left + 16 : edge.right - 16;
  const level = (y: Mm): Segment => ({ from: point(edge.left, y), to: point(edge.right, y) });
  const [fold] = flat.folds.filter((y) => y > edge.bottom && y < edge.top);
  return [
    {
      text: isPlaced ? footprint.along : footprint.facesTheTube,
      near: point(x, cross.y),
      line: level(cross.y),
    },
    {
      text: isPlaced ? footprint.cross : footprint.workPoint,
      near: point(cross.x, edge.bottom + 3),
      line: { from: point(cross.x, edge.bottom), to: point(cross.x, edge.top) },
    },
    ...(fold === undefined
      ? []
      : [{ text: footprint.fold, near: point(edge.right - 6, fold), line: level(fold) }]),
  ];
}

/** What each outline is for. */
function outlineNotes(landed: Landed, drawn: Drawn): Note[] {
  const { edge, shape, clean } = drawn;
  const { footprint } = landed.words;
  if (shape.length === 0) return [];
  const ring = (at: Point): boolean => pointInPolygon(at, clean) && !pointInPolygon(at, shape);
  return [
    ...holeNote(landed, drawn),
    { text: footprint.outside, near: cornerOf(shape, edge), where: ring, leader: 'always' },
    {
      text: footprint.cleanTo,
      near: cornerOf(clean, edge),
      where: (at) => !pointInPolygon(at, clean),
      leader: 'always',
    },
  ];
}

/** What the tube's hole is here stands in it; where that is too small, a line leads into it, as always to where a vent is drilled. A sliver has no room for one. */
function holeNote(
  { cope, cross, vented, words: { footprint } }: Landed,
  { bore, shape, open }: Drawn,
): Note[] {
  const dashed = bore.length > 0;
  const hole = dashed ? bore : shape;
  const near = insideOf(hole, cross);
  if (!near || !(vented || dashed)) return [];
  const text = vented
    ? footprint.ventHere(footprint.vent(cope.thickness !== undefined, open.length === 0))
    : footprint.inside;
  const where = (at: Point): boolean => pointInPolygon(at, hole);
  return [{ text, near, where, leader: vented ? 'always' : 'elsewhere', whole: vented }];
}

const ROWS = 24;
const OFF_LINES: Mm = 2.5;

/**
 * The point of a grid's that lies furthest inside a shape, of equals the uppermost; off both cross lines where one does, so that a line that leads to it
 * runs on neither. Undefined where the shape is a sliver.
 */
function insideOf(shape: readonly Point[], cross: Point): Point | undefined {
  const { left, right, bottom, top } = boundsOf(shape);
  const grid = Array.from({ length: ROWS * ROWS }, (_, i) =>
    point(
      left + ((Math.floor(i / ROWS) + 0.5) / ROWS) * (right - left),
      bottom + (((i % ROWS) + 0.5) / ROWS) * (top - bottom),
    ),
  );
  const [deepest, ...others] = grid
    .filter((at) => pointInPolygon(at, shape))
    .map((at) => ({ at, clear: Math.min(...shape.map((rim) => distance(rim, at))) }))
    .filter(({ clear }) => clear > ON_SHEET)
    .sort((a, b) => Math.round(b.clear - a.clear) || b.at.y - a.at.y);
  if (!deepest) return undefined;
  const isOffLines = ({ at: { x, y } }: typeof deepest): boolean =>
    Math.min(Math.abs(x - cross.x), Math.abs(y - cross.y)) > OFF_LINES;
  return ([deepest, ...others].find(isOffLines) ?? deepest).at;
}

/** The point of a shape that is furthest to the lower right, of those that are on the sheet. */
function cornerOf(shape: readonly Point[], edge: Box): Point {
  const drawn = shape.filter((at) => isWithin(at, grown(edge, -ON_SHEET)));
  return drawn.reduce((a, b) => (b.x - b.y > a.x - a.y ? b : a), drawn[0] ?? point(0, 0));
}

/** Room for a leader's dot. */
const ON_SHEET: Mm = 1;

/** Towards which end of the long line the tube leans: where the angle is acute. */
function leans({ angle }: Part): 1 | -1 {
  return angle.rad <= Math.PI / 2 ? 1 : -1;
}

/** The direction from the tube's axis in which the acute side lies. */
function acuteWay(asked: Part): number {
  return asked.clock.rad + (leans(asked) === 1 ? 0 : Math.PI);
}

/** A place so far off the long line has its name on the same side of it. */
const BESIDE: Mm = 1;

/**
 * What the arrow on the long line says. A square joint does not lean: there it shows which side of the tube lies that way, unless
 * that side is on this header and says so itself.
 */
function wayNotes({ cope, asked, part, flat, cross, words }: Landed, edge: Box): Note[] {
  // Not on the side of the line on which the acute side is named.
  const acute = unrolledAt(cope, part, stationTowards(cope, acuteWay(asked)));
  const up = acute && flat.to(acute).y < cross.y - BESIDE ? 3 : -3;
  const near = point(leans(asked) === 1 ? edge.right - 14 : edge.left + 14, cross.y + up);
  if (asked.angle.rad !== Math.PI / 2) return [{ text: words.footprint.leansThisWay, near }];
  const there = stationTowards(cope, asked.clock.rad);
  if (unrolledAt(cope, part, there)) return [];
  return [{ text: words.footprint.towards(tubesStation(cope, there, words)), near }];
}

/** Its length, half its width, and how far inside the sheet's edge its tip is, mm. */
const ARROW = { long: 4, half: 1.4, in: 0.8 } as const;

/** A tip on the long line, at the end towards which the tube leans: without it a footprint could be laid end for end. */
export function arrowOf(
  { asked, cross: { y } }: Landed,
  { left, right }: Box,
): readonly [Point, Point, Point] {
  const way = leans(asked);
  const tip = way === 1 ? right - ARROW.in : left + ARROW.in;
  const tail = tip - way * ARROW.long;
  return [point(tip, y), point(tail, y + ARROW.half), point(tail, y - ARROW.half)];
}

/** The acute and the obtuse side, just outside the outline, with the tube's stations there, where they are on this header. */
function sideNotes({ cope, asked, part, flat, words }: Landed): Note[] {
  const union = cope.end.parts.length > 1;
  const names = union ? unionSides(asked, words) : sideNames(asked, words);
  const acute = acuteWay(asked);
  return (
    [
      ['heel', 0],
      ['toe', Math.PI],
    ] as const
  ).flatMap(([side, turned]) => {
    const station = stationTowards(cope, acute + turned);
    const place = unrolledAt(cope, part, station);
    if (!place) return [];
    const { x, y } = flat.to(place);
    const name = names?.[side];
    const there = tubesStation(cope, station, words);
    const onward = side === 'heel' ? leans(asked) : -leans(asked);
    return [
      {
        text: name ? words.footprint.side(name, there) : there,
        near: point(x + 13 * onward, y + 3),
      },
    ];
  });
}

/** A union has no heel, but each of its headers has an acute side unless it is met square. */
function unionSides({ angle }: Part, { footprint }: Language): SideNames | undefined {
  if (angle.rad === Math.PI / 2) return undefined;
  return { heel: footprint.acuteSide, toe: footprint.obtuseSide };
}

/** The station that lies in a direction from the tube's axis. */
function stationTowards({ joint: { section } }: Cope, direction: number): number {
  return wrapStation(section.towards(direction), section.turn);
}

/** `tube's 35°`. */
function tubesStation({ joint: { section } }: Cope, station: number, words: Language): Said {
  return words.footprint.tubesStation(words.quantities.station(station, section.stations));
}

/** Where the outside of the tube meets this header at a station; undefined where it meets another one. */
function unrolledAt({ joint, touching }: Cope, part: number, station: number): Developed | undefined {
  const landing = joint.landings[part];
  const met = touching(station);
  if (!landing || met.part !== part) return undefined;
  const { x, y } = joint.section.at(station);
  const { solid, shift } = landing;
  return solid.develop(towardsClock(landing, x, y), pastClock(landing, x, y), met.setback - shift);
}
