import loadModule, { type Manifold, type ManifoldToplevel } from 'manifold-3d';
import type { EndName, Job, Seat } from '../../src/job/job.ts';
import { along, crossOf, dotOf, type Place, unitAlong } from './ray-march.ts';

/** A frame's tubes cut by the mesh kernel (manifold, Apache-2.0) alone: it is told who lands on whom, and where the tubes stand. */
export interface MeshFrame {
  /** A tube of a round section, hollow, as the kernel cuts both its ends. */
  cutTube(tube: number, flats: number): Manifold;
  /** A closed surface of these points and triangles. */
  solidOf(points: readonly Place[], triangles: readonly (readonly [number, number, number])[]): Manifold;
}

/** How far a bar runs on beyond the points of its tube before it is cut. */
const BEYOND = 150;
/** Flats of what is landed on: inscribed, so that it lies up to 30 (1 - cos(pi / FLATS)) mm within the true one. */
const FLATS = 256;
const PER_CORNER = 24;

export async function meshFrame(): Promise<(job: Job) => MeshFrame> {
  const module = await loadModule();
  module.setup();
  return (job) => frameIn(module, job);
}

function frameIn({ Manifold, Mesh }: ManifoldToplevel, job: Job): MeshFrame {
  const seatOf = (tube: number): Seat => {
    const seat = job.frame?.seats[tube];
    if (!seat) throw new Error('no such tube');
    return seat;
  };
  const stand = (bar: Manifold, { spine, axis, from }: Seat): Manifold =>
    bar.transform([...spine, 0, ...crossOf(axis, spine), 0, ...axis, 0, ...along(from, -BEYOND, axis), 1]);
  const long = (tube: number, flats: number, within = 0): Manifold => {
    const seat = seatOf(tube);
    const height = seat.length + 2 * BEYOND;
    const section = job.tubes[tube]?.section;
    if (section?.kind === 'round') {
      const radius = section.od.mm / 2 - within;
      return stand(Manifold.cylinder(height, radius, radius, flats), seat);
    }
    if (section?.kind !== 'rectangular') throw new Error('no such section');
    const { wide, deep, corner } = section;
    // The spine looks out of the middle of a wide face.
    const [x, y] = [deep.mm / 2 - corner.mm, wide.mm / 2 - corner.mm];
    const outline = [
      [x, y],
      [-x, y],
      [-x, -y],
      [x, -y],
    ].flatMap(([cx = 0, cy = 0], quarter) =>
      Array.from({ length: PER_CORNER + 1 }, (_, i): [number, number] => {
        const angle = ((quarter + i / PER_CORNER) * Math.PI) / 2;
        return [cx + corner.mm * Math.cos(angle), cy + corner.mm * Math.sin(angle)];
      }),
    );
    return stand(Manifold.extrude([outline], height), seat);
  };
  const cutAt = (bar: Manifold, tube: number, end: EndName): Manifold => {
    const seat = seatOf(tube);
    const { headers, past = 0 } = seat.ends[end];
    const cut = job.tubes[tube]?.ends[end];
    const point = end === 'A' ? seat.from : along(seat.from, seat.length, seat.axis);
    const body: Place = end === 'A' ? seat.axis : [-seat.axis[0], -seat.axis[1], -seat.axis[2]];
    // How far off the plane lies counts along a normal of length 1.
    const trimmed = (way: Place, at: Place): Manifold =>
      bar.trimByPlane(unitAlong(way), dotOf(unitAlong(way), at));
    if (cut?.kind !== 'coped') return trimmed(body, along(point, -past, body));
    if (cut.parts[0].onto.kind === 'mitre') {
      const other = seatOf(headers[0] ?? -1);
      const isStart = Math.hypot(...along(other.from, -1, point)) < 1e-6;
      return trimmed(along(body, isStart ? -1 : 1, other.axis), point);
    }
    const left = cut.parts.reduce((rest, part, i) => {
      const header = headers[i] ?? -1;
      if (!part.stops) return rest.subtract(long(header, FLATS));
      const its = seatOf(header);
      const own = Math.hypot(...along(its.from, -1, point)) < 1e-6 ? 'A' : 'B';
      return rest.subtract(cutAt(long(header, FLATS), header, own));
    }, bar);
    return left.decompose().reduce((most, piece) => (piece.volume() > most.volume() ? piece : most));
  };
  return {
    cutTube: (tube, flats) => {
      const wall = job.tubes[tube]?.wall?.mm ?? 0;
      const hollow = long(tube, flats).subtract(long(tube, flats, wall));
      return cutAt(cutAt(hollow, tube, 'A'), tube, 'B');
    },
    solidOf: (points, triangles) =>
      new Manifold(
        new Mesh({
          numProp: 3,
          vertProperties: new Float32Array(points.flat()),
          triVerts: new Uint32Array(triangles.flat()),
        }),
      ),
  };
}
