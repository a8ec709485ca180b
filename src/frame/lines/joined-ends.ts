import type { Mm } from '../../measure/units.ts';
import { byLine, dot, norm, plusTimes, unitOf, type Vector, wayTo } from '../../space/vector.ts';
import { IN_LINE, joinedTo } from '../nearness.ts';
import type { DrawnLine } from './drawn-line.ts';
import { writtenLength, writtenPlace } from './written-length.ts';

/** A tube to be: one line, or several in line that follow one another. */
export interface LineTube {
  /** The lines that it is made of; the first is the one that names it. */
  readonly pieces: readonly [DrawnLine, ...DrawnLine[]];
  /** Its two points, by their numbers. */
  readonly ends: readonly [number, number];
}

/** Where a point lies: at a place, or so far along a tube's axis from its first point. */
export interface Lying {
  readonly place: Vector;
  readonly on?: { readonly bar: LineTube; readonly at: Mm };
}

export interface JoinedLines {
  readonly bars: readonly LineTube[];
  /** By their numbers, those that a tube ends at. */
  readonly points: ReadonlyMap<number, Lying>;
  /** Too short to be tubes. */
  readonly short: readonly DrawnLine[];
  /** Between the points of another, which is taken. */
  readonly doubles: readonly DrawnLine[];
}

export interface JoinAsk {
  readonly snap: Mm;
  readonly unit: 'mm' | 'in';
  readonly keepPieces: boolean;
}

/** Where lines are: each of their ends as the number of a point, and where that is. */
interface Wires {
  readonly lines: readonly DrawnLine[];
  readonly ends: readonly (readonly [number, number])[];
  readonly at: readonly Vector[];
}

/** Shorter than this is no tube's axis. */
const SHORTEST: Mm = 1;

/**
 * Lines become tubes between points: ends nearer than the snap are one point, where the first of them is; an end on another line lies on
 * that tube. As written, no two points are nearer than the snap, so that a reader of the file joins no more of them.
 */
export function joinedLines(lines: readonly DrawnLine[], ask: JoinAsk): JoinedLines {
  const at = lines.flatMap(({ from, to }) => [from, to]);
  // Ends at the very same place are one point whatever the snap.
  const apart = Math.max(ask.snap, Number.MIN_VALUE);
  const found = joinedTo(new Map(at.map((place, i) => [i, writtenPlace(place, ask.unit)])), apart);
  let ends = lines.map((_, i) => [found.get(2 * i) ?? 2 * i, found.get(2 * i + 1) ?? 2 * i + 1] as const);
  for (;;) {
    const joined = asBars({ lines, ends, at }, ask);
    const places = new Map([...joined.points].map(([point, { place }]) => [point, place]));
    const nearer = joinedTo(places, apart);
    if (nearer.size === 0) return joined;
    // An end that was laid on a line may have come to lie beside another point.
    ends = ends.map(([from, to]) => [nearer.get(from) ?? from, nearer.get(to) ?? to]);
  }
}

function asBars(wires: Wires, ask: JoinAsk): JoinedLines {
  const { lines, ends, at } = wires;
  const short: DrawnLine[] = [];
  const doubles: DrawnLine[] = [];
  const single = new Map<string, LineTube>();
  for (const [i, line] of lines.entries()) {
    const [from, to] = ends[i] ?? [0, 0];
    const key = `${Math.min(from, to)} ${Math.max(from, to)}`;
    const isShort = from === to || norm(wayTo(at[from] ?? line.from, at[to] ?? line.to)) < SHORTEST;
    if (isShort) short.push(line);
    else if (single.has(key)) doubles.push(line);
    else single.set(key, { pieces: [line], ends: [from, to] });
  }
  const pieces = [...single.values()];
  const bars = ask.keepPieces ? pieces : inOnePiece(pieces, at, ask.snap);
  return { bars, points: laidOut(bars, at, ask), short, doubles };
}

/**
 * Pieces of one size in line that follow one another, as one. Where a line runs through the point, or two others are one there, they end.
 */
function inOnePiece(pieces: readonly LineTube[], at: readonly Vector[], snap: Mm): readonly LineTube[] {
  const next = followers(pieces, at, snap);
  const taken = new Set<LineTube>();
  return pieces.flatMap((first) => {
    if (taken.has(first)) return [];
    let whole = first;
    let inner: readonly number[] = [];
    taken.add(first);
    for (const side of [1, 0] as const) {
      for (let last = first; ; ) {
        const point = whole.ends[side];
        const follower = next.get(point)?.find((bar, _, pair) => bar !== last && pair.includes(last));
        if (!follower || taken.has(follower)) break;
        const [a, b] = follower.ends;
        const beyond = a === point ? b : a;
        const ends: LineTube['ends'] = side === 1 ? [whole.ends[0], beyond] : [beyond, whole.ends[1]];
        if (![...inner, point].every((each) => alongAxis(ends, at, each, snap) !== undefined)) break;
        inner = [...inner, point];
        whole = { pieces: [...whole.pieces, ...follower.pieces], ends };
        taken.add(follower);
        last = follower;
      }
    }
    return [whole];
  });
}

/** At each point the first two pieces of one size that go on in line there. */
function followers(
  pieces: readonly LineTube[],
  at: readonly Vector[],
  snap: Mm,
): ReadonlyMap<number, readonly LineTube[]> {
  const meeting = new Map<number, LineTube[]>();
  for (const bar of pieces) {
    for (const end of bar.ends) {
      const there = meeting.get(end);
      if (there) there.push(bar);
      else meeting.set(end, [bar]);
    }
  }
  const around = boxesOf(pieces, at, snap);
  const next = new Map<number, readonly LineTube[]>();
  for (const [point, bars] of meeting) {
    const pair = inLineAt(point, bars, at);
    if (!pair || around(point).some(({ ends }) => alongAxis(ends, at, point, snap) !== undefined)) continue;
    next.set(point, pair);
  }
  return next;
}

/** The first two of one size that go on in line at a point where they meet. No list is made of all pairs: thousands may meet. */
function inLineAt(
  point: number,
  bars: readonly LineTube[],
  at: readonly Vector[],
): readonly [LineTube, LineTube] | undefined {
  const bodies = bars.map(({ ends: [a, b] }) => direction(at, point, a === point ? b : a));
  for (const [i, one] of bars.entries()) {
    const [a, { size }] = [bodies[i], one.pieces[0]];
    for (let j = i + 1; a && j < bars.length; j++) {
      const [b, other] = [bodies[j], bars[j]];
      if (b && other && dot(a, b) <= -IN_LINE && other.pieces[0].size === size) return [one, other];
    }
  }
  return undefined;
}

function direction(at: readonly Vector[], from: number, to: number): Vector | undefined {
  const [a, b] = [at[from], at[to]];
  return a && b && unitOf(wayTo(a, b));
}

/** How far along an axis between two points a third lies, nearer to it than the snap and further than that from both. */
function alongAxis(
  [first, last]: LineTube['ends'],
  at: readonly Vector[],
  point: number,
  snap: Mm,
): Mm | undefined {
  const [from, to, place] = [at[first], at[last], at[point]];
  if (!from || !to || !place || point === first || point === last) return undefined;
  return footOn(from, to, place, snap);
}

const AXES = [0, 1, 2] as const;

/** Of bars those in whose box, wider by the snap, a point lies: of thousands few, which is soon seen. */
function boxesOf(
  bars: readonly LineTube[],
  at: readonly Vector[],
  snap: Mm,
): (point: number) => readonly LineTube[] {
  const sides = bars.flatMap(({ ends: [first, last] }) => {
    const [from, to] = [at[first] ?? [0, 0, 0], at[last] ?? [0, 0, 0]];
    return AXES.flatMap((axis) => [
      Math.min(from[axis], to[axis]) - snap,
      Math.max(from[axis], to[axis]) + snap,
    ]);
  });
  const boxes = Float64Array.from(sides);
  const isIn = (own: Mm, side: number): boolean => own >= (boxes[side] ?? 0) && own <= (boxes[side + 1] ?? 0);
  return (point) => {
    const [x, y, z] = at[point] ?? [Number.NaN, 0, 0];
    return bars.filter((_, i) => isIn(x, 6 * i) && isIn(y, 6 * i + 2) && isIn(z, 6 * i + 4));
  };
}

function footOn(from: Vector, to: Vector, place: Vector, snap: Mm): Mm | undefined {
  const axis = unitOf(wayTo(from, to));
  if (!axis) return undefined;
  const { along, off } = byLine(from, axis, place);
  const isBetween = along > snap && along < norm(wayTo(from, to)) - snap;
  return isBetween && norm(off) <= snap ? along : undefined;
}

/** Points on tubes whose points are on tubes, and so on: as many as a frame's reader follows with ease. */
const DEEPEST = 200;

/** Every point that a tube ends at: on the first tube that it lies on, unless that rests on it, else where it was drawn. */
function laidOut(
  bars: readonly LineTube[],
  at: readonly Vector[],
  { snap, unit }: JoinAsk,
): ReadonlyMap<number, Lying> {
  const around = boxesOf(bars, at, snap);
  const done = new Map<number, Lying>();
  const under = new Set<number>();
  const lie = (point: number): Lying | undefined => {
    const known = done.get(point);
    if (known || under.has(point) || under.size > DEEPEST) return known;
    under.add(point);
    let lying: Lying = { place: writtenPlace(at[point] ?? [0, 0, 0], unit) };
    for (const bar of around(point)) {
      if (alongAxis(bar.ends, at, point, snap) === undefined) continue;
      const on = onBar(bar, point);
      if (!on) continue;
      lying = on;
      break;
    }
    under.delete(point);
    done.set(point, lying);
    return lying;
  };
  const onBar = (bar: LineTube, point: number): Lying | undefined => {
    const [from, to, place] = [lie(bar.ends[0])?.place, lie(bar.ends[1])?.place, at[point]];
    const along = from && to && place && footOn(from, to, place, snap);
    const axis = from && to && unitOf(wayTo(from, to));
    if (along === undefined || !axis) return undefined;
    const { mm } = writtenLength(along, unit);
    return { place: plusTimes(from, mm, axis), on: { bar, at: mm } };
  };
  const used = [...new Set(bars.flatMap(({ ends }) => ends))];
  return new Map(
    used
      .sort((a, b) => a - b)
      .flatMap((point) => {
        const lying = lie(point);
        return lying ? [[point, lying] as const] : [];
      }),
  );
}
