import type { Mm, Radians } from '../../measure/units.ts';
import type { Corner, Run, Section, WallPoint } from '../section.ts';

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
  const corners = cornersBetween(meetings, corner > 0 ? 2 : 1);
  return {
    stations: 'mm',
    turn: girth,
    girth,
    reach: Math.hypot(wide / 2 - corner, deep / 2 - corner) + corner,
    corners,
    cornersAt(depth: Mm): readonly number[] {
      const beyond = depth - corner;
      return beyond > 0 ? meetings.flatMap((at) => [at - beyond, at, at + beyond]) : meetings;
    },
    towards: (angle) => stationTowards(angle, girth, at),
    directionOf(round: Mm): Radians {
      const { x, y } = at(round);
      return Math.atan2(y, x);
    },
    wayRound: (station, outside) => station + outside * turnedAt(corners, station, girth),
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

/** The corners of a tube whose sides meet at these stations, so many meetings to a corner. */
function cornersBetween(meetings: readonly Mm[], each: 1 | 2): readonly Corner[] {
  return meetings.flatMap((from, i) =>
    i % each === 0 ? [{ from, to: meetings[i + each - 1] ?? from }] : [],
  );
}

/** How far the outside has turned since the spine, for any number of turns: a quarter turn at each corner. */
function turnedAt(corners: readonly Corner[], station: Mm, girth: Mm): Radians {
  const turns = Math.floor(station / girth);
  const home = station - turns * girth;
  const shares = corners.map(({ from, to }) => (home >= to ? 1 : Math.max(0, (home - from) / (to - from))));
  return (Math.PI / 2) * (turns * corners.length + shares.reduce((sum, share) => sum + share, 0));
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
function sidesOf({ wide, deep, corner }: RectangleSize): readonly Side[] {
  const alongWide = wide - 2 * corner;
  const alongDeep = deep - 2 * corner;
  const face = (quarter: number, from: Mm, length: Mm): Side =>
    quarter % 2 === 0
      ? faceSide(deep / 2, wide / 2, corner, quarter, from, length)
      : faceSide(wide / 2, deep / 2, corner, quarter, from, length);
  const sides: Side[] = [face(0, 0, alongWide / 2)];
  for (let quarter = 0; quarter < 4; quarter++) {
    const [out, along, next] =
      quarter % 2 === 0 ? [deep / 2, alongWide / 2, alongDeep] : [wide / 2, alongDeep / 2, alongWide];
    if (corner > 0) sides.push(cornerSide(corner, quarter, out - corner, along));
    sides.push(face(quarter + 1, -next / 2, quarter === 3 ? next / 2 : next));
  }
  return sides;
}

/**
 * A face `out` from the axis, whose outward normal is turned by so many quarters. It starts at `from` across; its neighbours'
 * outsides lie `half` across.
 */
function faceSide(out: Mm, half: Mm, corner: Mm, quarter: number, from: Mm, length: Mm): Side {
  const run: Run = { speed: 1, bend: 0 };
  return {
    length,
    at: (way) => {
      const y = from + way;
      const straight = Math.max(corner, half - Math.abs(y));
      return turnedPoint(quarter, { x: out, y, nx: 1, ny: 0, straight, run });
    },
  };
}

/** The corner after the face of this quarter: its wall goes straight in to its centre. */
function cornerSide(radius: Mm, quarter: number, out: Mm, across: Mm): Side {
  const run: Run = { speed: 1, bend: 1 / radius };
  return {
    length: (Math.PI / 2) * radius,
    at: (way) => {
      const nx = Math.cos(way / radius);
      const ny = Math.sin(way / radius);
      const x = out + radius * nx;
      const y = across + radius * ny;
      return turnedPoint(quarter, { x, y, nx, ny, straight: radius, run });
    },
  };
}

const QUARTERS = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
] as const;

function turnedPoint(quarter: number, { x, y, nx, ny, straight, run }: WallPoint): WallPoint {
  const [cos, sin] = QUARTERS[quarter & 3] ?? QUARTERS[0];
  return {
    x: x * cos - y * sin,
    y: x * sin + y * cos,
    nx: nx * cos - ny * sin,
    ny: nx * sin + ny * cos,
    straight,
    run,
  };
}
