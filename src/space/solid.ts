import type { Mm } from '../measure/units.ts';

/**
 * What a tube lands on, in the frame of one end: the tube's axis is the z axis, z is the setback, and the tube's
 * body lies towards large z. Every kind of header answers the same question.
 */
export interface Solid {
  /**
   * Where the line of the wall through (x, y), coming from the body, enters; undefined where it passes by. A solid that is slow to
   * enter need not find what lies no higher than `above`.
   */
  enter(x: Mm, y: Mm, above?: Mm): WallEntry | undefined;

  /**
   * The places on the straight way from one point of the wall's thickness to another, 0 to 1, of which one lies
   * deepest: the ends, a crest between, and where a line first passes by, for what it is trimmed to may lie deeper
   * than what is met beside it. A solid that knows better gives fewer. The square line asks this: its deepest point
   * can lie inside the wall.
   */
  crests(x0: Mm, y0: Mm, x1: Mm, y1: Mm): readonly number[];

  /** How far a point lies from the solid's surface; negative inside it. */
  distance(x: Mm, y: Mm, z: Mm): Mm;

  /** Where a point of the surface comes to lie when the surface is unrolled flat. */
  develop(x: Mm, y: Mm, z: Mm): Developed;

  /** No line enters it deeper than here: quicker to say, of a solid that is slow to enter. Undefined where the line passes by. */
  deepest?(x: Mm, y: Mm): Mm | undefined;

  /** Of a header that stops: whether all that it was cut to are planes, so that what is left of it is convex. */
  readonly convex?: boolean;

  /** Once round it, where a tube can land on its far side too: there `round` jumps by so much. */
  readonly girth?: Mm;
}

/** A point of an unrolled surface. */
export interface Developed {
  /** Round the header's outside from the side of the tube's body, positive towards y. */
  readonly round: Mm;
  /** Along the header's axis from the work point, positive the way the axis points. */
  readonly along: Mm;
}

/** The place after as many whole turns round as bring it nearest to another one. */
export function nearestTurn(place: Developed, near: Developed, girth: Mm | undefined): Developed {
  if (girth === undefined) return place;
  const turns = Math.round((near.round - place.round) / girth);
  return { round: place.round + turns * girth, along: place.along };
}

export interface WallEntry {
  readonly z: Mm;
  /** Outward unit normal of the solid's surface there. */
  readonly nx: number;
  readonly ny: number;
  readonly nz: number;
  /** Which smooth face of the solid was met: edges lie where this changes. Below `MISSED`. */
  readonly patch: number;
}

/** A header has fewer patches than this, missing it counted as one, the last. */
export const PATCHES = 32;
export const MISSED = PATCHES - 1;

/** A line that passes the solid by no more than this, in mm, is taken to touch it. */
export const TOUCH = 1e-9;
