import type { Mm, Radians } from '../../measure/units.ts';
import type { Run, Section, WallPoint } from '../section.ts';

/** A round tube of this outside radius. Stations are angles. */
export function roundSection(radius: Mm): Section {
  const run: Run = { speed: radius, bend: 1 / radius };
  const turn = 2 * Math.PI;
  const girth = turn * radius;
  return {
    stations: 'angles',
    turn,
    girth,
    reach: radius,
    corners: [],
    cornersAt: () => [],
    towards: (angle) => angle,
    directionOf: (round) => round / radius,
    wayRound: (station, outside) => station * ((girth + turn * outside) / turn),
    at(station: Radians): WallPoint {
      const nx = Math.cos(station);
      const ny = Math.sin(station);
      return { x: radius * nx, y: radius * ny, nx, ny, straight: Number.POSITIVE_INFINITY, run };
    },
  };
}
