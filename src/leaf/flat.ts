import type { EndName } from '../job/job.ts';
import type { Mm } from '../measure/units.ts';
import { homeStation } from '../saddle/peaks.ts';
import type { Point } from './drawing.ts';

/** How the end of a tube lies on paper: stations to the right from the seam, the tube's B direction up. */
export interface Flat {
  readonly end: EndName;
  /** The station of the left edge, and of the right one, a whole turn later. */
  readonly seam: number;
  readonly turn: number;
  /** Once round, of the bent paper's middle. */
  readonly width: Mm;
  /** How many mm one unit of station is. */
  readonly scale: Mm;
  /** Up, 1, at end A, where the body lies above the cut; down, -1, at end B. */
  readonly bodyWay: 1 | -1;
}

/** The flat of a tube whose outside is `girth` mm round. Paper of this thickness bends about its middle: W = pi (D + t). */
export function flatOf(end: EndName, girth: Mm, turn: number, seam: number, paperThickness: Mm): Flat {
  const width = girth + Math.PI * paperThickness;
  return { end, seam, turn, width, scale: width / turn, bodyWay: end === 'A' ? 1 : -1 };
}

/** Where a station lies between the left edge (0) and the right edge (width), mm. */
export function across(flat: Flat, station: number): Mm {
  return homeStation(station - flat.seam, flat.turn) * flat.scale;
}

/** The station at x mm from the left edge. */
export function stationAt(flat: Flat, x: Mm): number {
  return flat.seam + x / flat.scale;
}

/** How high a setback lies, mm from the work point's line. */
export function height(flat: Flat, setback: Mm): Mm {
  return flat.bodyWay * setback;
}

/** The place of a point of the cut, counted in stations that need not be home: the curve runs from seam to seam. */
export function placeOn(flat: Flat, station: number, setback: Mm): Point {
  return { x: (station - flat.seam) * flat.scale, y: flat.bodyWay * setback };
}
