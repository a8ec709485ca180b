import loadModule, { type Manifold, type ManifoldToplevel } from 'manifold-3d';
import type { EndName, Job, Seat } from '../../../src/job/job.ts';
import { along, crossOf, dotOf, type Place, unitAlong } from '../ray-march.ts';

export type Kernel = Pick<ManifoldToplevel, 'Manifold' | 'Mesh'>;

export async function loadKernel(): Promise<Kernel> {
  const module = await loadModule();
  module.setup();
  return module;
}

/** How what is round becomes flats: so many all round, of which the corners lie so far from the middle. */
export type Flats = (radius: number) => { readonly many: number; readonly corners: number };

/** So many flats with their corners on the round, the flats within it; fewer round the corner of a box. */
export const inscribed =
  (many: number, within = 0): Flats =>
  (radius) => ({ many: radius < SMALL ? Math.min(many, ROUND_CORNERS) : many, corners: radius - within });

/** On a radius of 5 mm as many flats lie 0.003 mm within the round. */
const ROUND_CORNERS = 96;
const SMALL = 8;

/** Along a tube's axis from its first point, mm. */
export type Stretch = readonly [from: number, to: number];

/** A tube where it stands, filled and uncut, over a stretch of its axis. */
export function barOf(
  { Manifold }: Kernel,
  job: Job,
  tube: number,
  [from, to]: Stretch,
  flats: Flats,
): Manifold {
  const seat = seatOf(job, tube);
  const { spine, axis } = seat;
  const stand = (bar: Manifold): Manifold =>
    bar.transform([...spine, 0, ...crossOf(axis, spine), 0, ...axis, 0, ...along(seat.from, from, axis), 1]);
  const section = job.tubes[tube]?.section;
  if (section?.kind === 'round') {
    const { many, corners } = flats(section.od.mm / 2);
    return stand(Manifold.cylinder(to - from, corners, corners, many));
  }
  if (section?.kind !== 'rectangular') throw new Error('no such section');
  const { wide, deep, corner } = section;
  // The spine looks out of the middle of a wide face.
  const [x, y] = [deep.mm / 2 - corner.mm, wide.mm / 2 - corner.mm];
  const { many, corners } = flats(corner.mm);
  const perCorner = Math.ceil(many / 4);
  const outline = [
    [x, y],
    [-x, y],
    [-x, -y],
    [x, -y],
  ].flatMap(([cx = 0, cy = 0], quarter) =>
    Array.from({ length: perCorner + 1 }, (_, i): [number, number] => {
      const angle = ((quarter + i / perCorner) * Math.PI) / 2;
      return [cx + corners * Math.cos(angle), cy + corners * Math.sin(angle)];
    }),
  );
  return stand(Manifold.extrude([outline], to - from));
}

export function seatOf(job: Job, tube: number): Seat {
  const seat = job.frame?.seats[tube];
  if (!seat) throw new Error('no such tube');
  return seat;
}

export const bodyOf = ({ axis }: Seat, end: EndName): Place =>
  end === 'A' ? axis : [-axis[0], -axis[1], -axis[2]];

export const pointOf = (seat: Seat, end: EndName): Place =>
  end === 'A' ? seat.from : along(seat.from, seat.length, seat.axis);

/** Of a tube that ends at a place, which end that is. */
export const endAt = (seat: Seat, at: Place): EndName =>
  Math.hypot(...along(seat.from, -1, at)) < 1e-6 ? 'A' : 'B';

/** What of a solid lies this way from a plane through a place: how far off that is counts along a normal of length 1. */
export function beyondPlane(solid: Manifold, way: Place, at: Place): Manifold {
  const normal = unitAlong(way);
  return solid.trimByPlane(normal, dotOf(normal, at));
}

/** The way across the plane in which an end is mitred with another tube, into its own body. */
export function mitreWay(job: Job, tube: number, end: EndName, other: number): Place {
  const [seat, its] = [seatOf(job, tube), seatOf(job, other)];
  return along(bodyOf(seat, end), -1, bodyOf(its, endAt(its, pointOf(seat, end))));
}
