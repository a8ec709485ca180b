import type { Mm, Radians } from '../measure/units.ts';

/**
 * The outline of the tube that is coped, walked to the right round its outside with the tube's B direction up.
 * A station says how far round; it starts at 0 on the spine and comes home after `turn`.
 */
export interface Section {
  /** What a station counts: the angle from the spine, or mm round the outside. */
  readonly stations: 'angles' | 'mm';
  /** A whole way round, in stations: 2 pi for a round tube. */
  readonly turn: number;
  /** A whole way round the outside. */
  readonly girth: Mm;
  /** How far the tube's outside reaches from its axis at most. */
  readonly reach: Mm;
  /** Its corners in order from the spine: paper is folded there. */
  readonly corners: readonly Corner[];
  /** Stations where the outline so deep in the wall has a face meet a corner: lines round the tube break there. */
  cornersAt(depth: Mm): readonly number[];
  /** The station that lies in this direction from the axis, in radians from station 0. */
  towards(angle: Radians): number;
  /** The direction from the axis, from station 0, of the point that lies so far round the outside. */
  directionOf(round: Mm): Radians;
  /**
   * How far round a station lies from the spine, for any number of turns, on an outline so far outside the tube: paper
   * round it bends about its middle.
   */
  wayRound(station: number, outside: Mm): Mm;
  /** The point of the outside at this station. */
  at(station: number): WallPoint;
}

/** From the station where one face ends to that where the next begins: the same where the corner is sharp. */
export interface Corner {
  readonly from: number;
  readonly to: number;
}

/** A point in the plane square to the tube: x towards station 0, y towards a quarter turn. */
export interface WallPoint {
  readonly x: Mm;
  readonly y: Mm;
  /** Outward unit normal of the tube's outside at this station. The outside runs on towards (-ny, nx). */
  readonly nx: number;
  readonly ny: number;
  /**
   * How deep the wall goes straight in from here: endless, or of a tube with square corners, whose inner edges may be
   * sharp, as far as to the neighbouring face's wall.
   */
  readonly straight: Mm;
  readonly run: Run;
}

/** How the outside runs on from a point. A face, or a corner, has one for all its points. */
export interface Run {
  /** How fast the point moves with the station. */
  readonly speed: number;
  /** How sharply the outside bends, 1/mm: 0 on a face. */
  readonly bend: number;
}

/** How fast a point of the wall moves with the station, `depth` further in. */
export function speedWithin({ speed, bend }: Run, depth: Mm): number {
  return speed * (1 - depth * bend);
}

/** How deep, up to `depth`, the wall is followed straight in from a point of the outside. */
export function straightWithin({ straight }: WallPoint, depth: Mm): Mm {
  return Math.min(depth, straight);
}

/**
 * Where the wall lies `depth` further in from a point of the outside: along the normal, and beyond the centre of a corner
 * towards the inner edge, on which the points of the whole corner come to lie.
 */
export function placeWithin(outer: WallPoint, depth: Mm): { readonly x: Mm; readonly y: Mm } {
  const { x, y, nx, ny } = outer;
  const straight = straightWithin(outer, depth);
  const aslant = depth - straight;
  return { x: x - straight * nx - aslant * Math.sign(x), y: y - straight * ny - aslant * Math.sign(y) };
}

/** The point of the wall there. */
export function inwards(outer: WallPoint, depth: Mm): WallPoint {
  const { nx, ny, run } = outer;
  const straight = straightWithin(outer, depth);
  const speed = straight < depth ? 0 : speedWithin(run, depth);
  return {
    ...placeWithin(outer, depth),
    nx,
    ny,
    straight: outer.straight - straight,
    run: { ...run, speed },
  };
}

/** The same station in [0, turn), with a hair below a whole turn taken as 0. */
export function wrapStation(station: number, turn: number): number {
  const home = ((station % turn) + turn) % turn;
  return turn - home < 1e-12 * turn ? 0 : home;
}

/** How deep a place lies inside the outline, roughly where that has corners; less than 0 outside. */
export function withinOutline(section: Section, x: Mm, y: Mm): Mm {
  const wall = section.at(section.towards(Math.atan2(y, x)));
  return (wall.x - x) * wall.nx + (wall.y - y) * wall.ny;
}
