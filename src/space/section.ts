import type { Mm, Radians } from '../measure/units.ts';

/**
 * The outline of the tube that is coped, walked to the right round its outside with the tube's B direction up.
 * A station says how far round; it starts at 0 on the spine and comes home after `turn`.
 */
export interface Section {
  /** A whole way round, in stations: 2 pi for a round tube. */
  readonly turn: number;
  /** A whole way round the outside. */
  readonly girth: Mm;
  /** How far the tube's outside reaches from its axis at most. */
  readonly reach: Mm;
  /** Stations where the outline so deep in the wall has a face meet a corner: lines round the tube break there. */
  cornersAt(depth: Mm): readonly number[];
  /** The station that lies in this direction from the axis, in radians from station 0. */
  towards(angle: Radians): number;
  /** The point of the outside at this station. */
  at(station: number): WallPoint;
}

/** A point in the plane square to the tube: x towards station 0, y towards a quarter turn. */
export interface WallPoint {
  readonly x: Mm;
  readonly y: Mm;
  /** Outward unit normal of the tube's outside at this station. The outside runs on towards (-ny, nx). */
  readonly nx: number;
  readonly ny: number;
  readonly run: Run;
}

/** How the outside runs on from a point. A face, or a corner, has one for all its points. */
export interface Run {
  /** How fast the point moves with the station. */
  readonly speed: number;
  /** How sharply the outside bends, 1/mm: 0 on a face. */
  readonly bend: number;
  /** Of a rectangular tube: what it is a side of. */
  readonly of: RectangleSize | undefined;
}

/** How fast a point of the wall moves with the station, `depth` further in. */
export function speedWithin({ speed, bend }: Run, depth: Mm): number {
  return speed * (1 - depth * bend);
}

/**
 * How deep, up to `depth`, the wall is followed straight in from a point of the outside: where the corner is rounder
 * than the wall is thick all the way, else as far as to the neighbouring face's wall.
 */
export function straightWithin(outer: WallPoint, depth: Mm): Mm {
  const { of } = outer.run;
  return of === undefined || depth <= of.corner ? depth : Math.min(depth, roomBeside(outer, of));
}

/** How deep it is to the neighbouring face's wall, in a corner to its centre. */
function roomBeside({ x, y, nx, ny }: WallPoint, { wide, deep, corner }: RectangleSize): Mm {
  if (nx === 0) return deep / 2 - Math.abs(x);
  return ny === 0 ? wide / 2 - Math.abs(y) : corner;
}

/**
 * The point of the wall `depth` further in from a point of the outside: along the normal, and beyond the centre of a
 * corner towards the inner edge, on which the points of the whole corner come to lie.
 */
export function inwards(outer: WallPoint, depth: Mm): WallPoint {
  const { x, y, nx, ny, run } = outer;
  const straight = straightWithin(outer, depth);
  const aslant = depth - straight;
  const speed = aslant > 0 ? 0 : speedWithin(run, depth);
  return {
    x: x - straight * nx - aslant * Math.sign(x),
    y: y - straight * ny - aslant * Math.sign(y),
    nx,
    ny,
    run: { ...run, speed },
  };
}

/** A round tube of this outside radius. Stations are angles. */
export function roundSection(radius: Mm): Section {
  const run: Run = { speed: radius, bend: 1 / radius, of: undefined };
  return {
    turn: 2 * Math.PI,
    girth: 2 * Math.PI * radius,
    reach: radius,
    cornersAt: () => [],
    towards: (angle) => angle,
    at(station: Radians): WallPoint {
      const nx = Math.cos(station);
      const ny = Math.sin(station);
      return { x: radius * nx, y: radius * ny, nx, ny, run };
    },
  };
}

export interface RectangleSize {
  /** Across station 0. */
  readonly wide: Mm;
  readonly deep: Mm;
  /** Outside radius of the corners. */
  readonly corner: Mm;
}

/**
 * A rectangular tube. Stations are mm round its outside from the spine, which runs along the middle of a wide face;
 * x is that face's outward normal.
 */
export function rectangularSection(size: RectangleSize): Section {
  const sides = sidesOf(size);
  const girth = sides.reduce((sum, side) => sum + side.length, 0);
  const { wide, deep, corner } = size;
  const meetings = sides
    .slice(0, -1)
    .map((_, i) => sides.slice(0, i + 1).reduce((sum, side) => sum + side.length, 0));
  return {
    turn: girth,
    girth,
    reach: Math.hypot(wide / 2 - corner, deep / 2 - corner) + corner,
    cornersAt(depth: Mm): readonly number[] {
      const beyond = depth - corner;
      return beyond > 0 ? meetings.flatMap((at) => [at - beyond, at, at + beyond]) : meetings;
    },
    towards: (angle) => stationTowards(angle, girth, at),
    at,
  };

  function at(station: Mm): WallPoint {
    let way = station - girth * Math.floor(station / girth);
    for (const side of sides) {
      if (way <= side.length) return side.at(way);
      way -= side.length;
    }
    return side0(sides).at(0);
  }
}

/** Halves the way round until the outline's point lies in this direction, which grows all the way. */
function stationTowards(angle: Radians, girth: Mm, at: Section['at']): Mm {
  const turns = Math.floor(angle / (2 * Math.PI));
  const wanted = angle - 2 * Math.PI * turns;
  let low = 0;
  let high = girth;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    const { x, y } = at(middle);
    const direction = Math.atan2(y, x);
    if ((direction < 0 ? direction + 2 * Math.PI : direction) < wanted) low = middle;
    else high = middle;
  }
  return low + girth * turns;
}

/** A face or a corner, walked from its beginning. */
interface Side {
  readonly length: Mm;
  at(way: Mm): WallPoint;
}

function side0([first]: readonly Side[]): Side {
  if (!first) throw new Error('a rectangle has sides');
  return first;
}

/** The half face right of the spine, then corner and face in turn, and last the half face left of the spine. */
function sidesOf(size: RectangleSize): readonly Side[] {
  const { wide, deep, corner } = size;
  const alongWide = wide - 2 * corner;
  const alongDeep = deep - 2 * corner;
  const sides: Side[] = [faceSide(size, 0, deep / 2, 0, alongWide / 2)];
  for (let quarter = 0; quarter < 4; quarter++) {
    const [out, along, next, nextLength] =
      quarter % 2 === 0
        ? [deep / 2, alongWide / 2, wide / 2, alongDeep]
        : [wide / 2, alongDeep / 2, deep / 2, alongWide];
    if (corner > 0) sides.push(cornerSide(size, quarter, out - corner, along));
    const length = quarter === 3 ? nextLength / 2 : nextLength;
    sides.push(faceSide(size, quarter + 1, next, -nextLength / 2, length));
  }
  return sides;
}

/** A face `out` from the axis, whose outward normal is turned by so many quarters; it starts at `from` across. */
function faceSide(of: RectangleSize, quarter: number, out: Mm, from: Mm, length: Mm): Side {
  const run: Run = { speed: 1, bend: 0, of };
  return {
    length,
    at: (way) => turnedPoint(quarter, { x: out, y: from + way, nx: 1, ny: 0, run }),
  };
}

/** The corner after the face of this quarter. */
function cornerSide(of: RectangleSize, quarter: number, out: Mm, across: Mm): Side {
  const radius = of.corner;
  const run: Run = { speed: 1, bend: 1 / radius, of };
  return {
    length: (Math.PI / 2) * radius,
    at: (way) => {
      const nx = Math.cos(way / radius);
      const ny = Math.sin(way / radius);
      const x = out + radius * nx;
      const y = across + radius * ny;
      return turnedPoint(quarter, { x, y, nx, ny, run });
    },
  };
}

const QUARTERS = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
] as const;

function turnedPoint(quarter: number, { x, y, nx, ny, run }: WallPoint): WallPoint {
  const [cos, sin] = QUARTERS[quarter & 3] ?? QUARTERS[0];
  return {
    x: x * cos - y * sin,
    y: x * sin + y * cos,
    nx: nx * cos - ny * sin,
    ny: nx * sin + ny * cos,
    run,
  };
}
