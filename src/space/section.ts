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
  /** The point of the wall at this station, `depth` in from the outside, square to it. */
  at(station: number, depth: Mm): WallPoint;
}

/** A point in the plane square to the tube: x towards station 0, y towards a quarter turn. */
export interface WallPoint {
  readonly x: Mm;
  readonly y: Mm;
  /** How fast it moves with the station, at the same depth. */
  readonly dx: number;
  readonly dy: number;
  /** Outward unit normal of the tube's outside at this station. */
  readonly nx: number;
  readonly ny: number;
}

/** A round tube of this outside radius. Stations are angles. */
export function roundSection(radius: Mm): Section {
  return {
    turn: 2 * Math.PI,
    girth: 2 * Math.PI * radius,
    reach: radius,
    at(station: Radians, depth: Mm): WallPoint {
      const rho = radius - depth;
      const cos = Math.cos(station);
      const sin = Math.sin(station);
      return { x: rho * cos, y: rho * sin, dx: -rho * sin, dy: rho * cos, nx: cos, ny: sin };
    },
  };
}
