import { headerFrame, type Placement } from '../outside/solids/implicit-solids.ts';

// Lines along the wall, followed from the tube's body until they are inside a header that is no more than an inequality.
// Stations in radians from the spine, lengths in mm, setbacks positive towards the body. Nothing of the program is used.

/** What is landed on: how far outside it, or outside the half space behind its trim plane, a point lies. */
export interface Target {
  readonly solid: Outside;
  readonly trim: Outside;
  /** The setback from which a line is followed: everything of interest lies nearer. */
  readonly from: number;
  readonly bodySide: 1 | -1;
}

type Outside = (x: number, y: number, z: number) => number;

/** A round header of this outside radius, for a tube of that radius. */
export function targetAt(placement: Placement, radius: number, tube: number): Target {
  const { origin, along, up } = headerFrame(placement);
  const [ox, oy, oz] = origin;
  const [hx, hy, hz] = along;
  // The trim plane goes through the work point, along the header's axis and square to the offset's plane.
  const [nx, ny, nz] = up;
  return {
    solid: (x, y, z) => {
      // Asked for millions of times: no arrays.
      const dx = x - ox;
      const dy = y - oy;
      const dz = z - oz;
      const cx = dy * hz - dz * hy;
      const cy = dz * hx - dx * hz;
      const cz = dx * hy - dy * hx;
      return Math.sqrt(cx * cx + cy * cy + cz * cz) - radius;
    },
    trim: (x, y, z) => x * nx + y * ny + z * nz,
    // Behind this any line of the tube has left the header: twice the radii, along the slanted axis.
    from: (4 * (radius + tube)) / Math.sin(placement.angle),
    bodySide: placement.end === 'A' ? 1 : -1,
  };
}

export interface Landed {
  readonly setback: number;
  readonly contact: boolean;
}

/** Where the line of the wall at this station and radius first enters the header, else its trim plane. */
export function landed({ solid, trim, from, bodySide }: Target, station: number, radius: number): Landed {
  const x = radius * Math.cos(station);
  const y = radius * Math.sin(station);
  const met = firstInside((setback) => solid(x, y, setback * bodySide), from);
  if (met !== undefined) return { setback: met, contact: true };
  const trimmed = firstInside((setback) => trim(x, y, setback * bodySide), from);
  if (trimmed === undefined) throw new Error(`no trim plane across the line at station ${station}`);
  return { setback: trimmed, contact: false };
}

/** No step is shorter: a solid thinner than this along a line may be passed by. */
const LEAST_STEP = 1e-3;

/** Steps as long as the way to the surface, from the body's side, then the crossing between the last two. */
function firstInside(outside: (setback: number) => number, from: number): number | undefined {
  let before = from;
  let wayBefore = 0;
  for (let here = from; here > -from; ) {
    const way = outside(here);
    if (way <= 0) return crossing(outside, here, way, before, wayBefore);
    [before, wayBefore] = [here, way];
    here -= Math.max(LEAST_STEP, way);
  }
  return undefined;
}

/** False position, with the kept end's weight halved (the Illinois rule), until the bracket is 1e-10 mm wide. */
function crossing(
  outside: (setback: number) => number,
  in0: number,
  wayIn0: number,
  out0: number,
  wayOut0: number,
) {
  let [inside, wayIn, clear, wayClear] = [in0, wayIn0, out0, wayOut0];
  let at = inside;
  for (let round = 0; round < 60 && clear - inside > 1e-10 && wayIn < 0; round++) {
    at = (inside * wayClear - clear * wayIn) / (wayClear - wayIn);
    const way = outside(at);
    if (Math.abs(way) < 1e-13) return at;
    if (way <= 0) [inside, wayIn, wayClear] = [at, way, wayClear / 2];
    else [clear, wayClear, wayIn] = [at, way, wayIn / 2];
  }
  return at;
}
