import type { Point } from '../../src/draw/drawing.ts';
import type { EndName } from '../../src/job/job.ts';

/** A round tube on a round header, in mm and radians, by the numbers of the job file. */
export interface Landing {
  readonly radius: number;
  readonly wall: number;
  readonly header: number;
  readonly angle: number;
  readonly clock: number;
  readonly offset: number;
}

/** Which line of the end is cut to, as a setback at a station. */
export type Line = (landing: Landing, station: number) => number;

/**
 * Setback of a point at `rho` from the tube's axis: where a line along the tube enters the header's cylinder, from the
 * quadratic equation of line and cylinder. Written apart from the program's own solids.
 */
export function setbackAt({ header, angle, clock, offset }: Landing, rho: number, station: number): number {
  const x = rho * Math.cos(station - clock);
  const y = rho * Math.sin(station - clock) - offset;
  return (x * Math.cos(angle) + Math.sqrt(Math.max(0, header ** 2 - y ** 2))) / Math.sin(angle);
}

/** Where the tube's outer surface meets the header. */
export function outside(landing: Landing, station: number): number {
  return setbackAt(landing, landing.radius, station);
}

/** The greatest setback within the wall, by trying it at 600 depths: flat enough there to be exact to 1e-5 mm. */
export function square(landing: Landing, station: number): number {
  const depths = Array.from({ length: 601 }, (_, i) => landing.radius - (landing.wall * i) / 600);
  return Math.max(...depths.map((rho) => setbackAt(landing, rho, station)));
}

/** Once round the bent paper: it bends about its middle, so a 0.10 mm paper is 0.10 mm wider round. */
export function girthOfPaper({ radius }: Landing): number {
  return Math.PI * (2 * radius + 0.1);
}

/** Where a leaf lies, by what a person lays it by: its spine, its base edge, and how far that is from the work point. */
export interface Lie {
  readonly end: EndName;
  readonly spine: number;
  readonly baseEdge: number;
  readonly baseSetback: number;
}

/** A point of the flat pattern: stations run to the right, end A's body lies above its cut, end B's below. */
export function onPaper(lie: Lie, landing: Landing, line: Line, station: number): Point {
  const intoBody = lie.baseSetback - line(landing, station);
  return {
    x: lie.spine + (station / (2 * Math.PI)) * girthOfPaper(landing),
    y: lie.end === 'A' ? lie.baseEdge - intoBody : lie.baseEdge + intoBody,
  };
}
