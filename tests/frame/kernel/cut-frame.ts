import type { Manifold } from 'manifold-3d';
import type { EndName, Job } from '../../../src/job/job.ts';
import { along, type Place } from '../ray-march.ts';
import {
  barOf,
  beyondPlane,
  bodyOf,
  endAt,
  inscribed,
  type Kernel,
  mitreWay,
  pointOf,
  seatOf,
} from './bars.ts';

/** A frame's tubes cut by the mesh kernel (manifold, Apache-2.0) alone: it is told who lands on whom, and where the tubes stand. */
export interface CutFrame {
  /** A tube of a round section, hollow, as the kernel cuts both its ends. */
  cutTube(tube: number, flats: number): Manifold;
  /** A closed surface of these points and triangles. */
  solidOf(points: readonly Place[], triangles: readonly (readonly [number, number, number])[]): Manifold;
}

/** How far a bar runs on beyond the points of its tube before it is cut. */
const BEYOND = 150;
/** Flats of what is landed on: inscribed, so that it lies up to 30 (1 - cos(pi / FLATS)) mm within the true one. */
const FLATS = 256;

export function cutFrame(kernel: Kernel, job: Job): CutFrame {
  const { Manifold, Mesh } = kernel;
  const long = (tube: number, flats: number, within = 0): Manifold =>
    barOf(kernel, job, tube, [-BEYOND, seatOf(job, tube).length + BEYOND], inscribed(flats, within));
  const cutAt = (bar: Manifold, tube: number, end: EndName): Manifold => {
    const seat = seatOf(job, tube);
    const { headers, past = 0 } = seat.ends[end];
    const cut = job.tubes[tube]?.ends[end];
    const [point, body] = [pointOf(seat, end), bodyOf(seat, end)];
    if (cut?.kind !== 'coped') return beyondPlane(bar, body, along(point, -past, body));
    if (cut.parts[0].onto.kind === 'mitre')
      return beyondPlane(bar, mitreWay(job, tube, end, headers[0] ?? -1), point);
    const left = cut.parts.reduce((rest, part, i) => {
      const header = headers[i] ?? -1;
      if (!part.stops) return rest.subtract(long(header, FLATS));
      return rest.subtract(cutAt(long(header, FLATS), header, endAt(seatOf(job, header), point)));
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
