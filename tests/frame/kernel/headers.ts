import type { Manifold } from 'manifold-3d';
import type { EndName, Job, Part } from '../../../src/job/job.ts';
import { along, crossOf, dotOf, type Place } from '../ray-march.ts';
import {
  barOf,
  beyondPlane,
  bodyOf,
  endAt,
  type Kernel,
  mitreWay,
  pointOf,
  type Stretch,
  seatOf,
} from './bars.ts';
import { joined, less, type SeenByRays, seen, shared } from './ray-spans.ts';
import { type Carved, isConvex, type Shapes, shapesIn } from './shapes.ts';

/**
 * What the ends of a frame are cut by, as the mesh kernel (manifold, Apache-2.0) alone makes it: each header as it stands after its own
 * cuts. It is told who lands on whom, and where the tubes stand. Flats can't be round, so there are two of each: one that lies
 * nowhere beyond the true header and one that it lies nowhere beyond. Solids are in use until `drop`.
 */
export interface MeshHeaders {
  /** Of an end: what is seen of each header. 'too deep' where one was cut by what was cut by what was cut by a header of its own. */
  at(tube: number, end: EndName, size: Size): readonly SeenByRays[] | 'too deep';
  drop(): void;
}

/** Within what is true, or beyond it. */
export type Size = 'within' | 'beyond';

/** The most that a flat lies within what is round, or beyond it, mm. */
export const FLATNESS = 0.004;

/** Further than any joint reaches, mm. */
const REACH = 250;
/** How far a bar runs on beyond the point at which it ends before it is cut. */
const BEYOND = 120;

/** A header as it stands, and the same as what is convex less what is convex: undefined where it was cut by what is not convex. */
interface Standing {
  readonly solid: SeenByRays;
  carved(): readonly Carved[] | undefined;
}

/** What is cut by more leaves less. */
const otherThan = (size: Size): Size => (size === 'within' ? 'beyond' : 'within');

/** Made once, and found again. */
interface Bench {
  readonly kernel: Kernel;
  readonly job: Job;
  readonly shapes: Shapes;
  kept(solid: Manifold): Manifold;
  /** Of a tube that ends at a joint; undefined where that can't be made. */
  stopped(tube: number, end: EndName, size: Size): Standing | undefined;
}

export function meshHeaders(kernel: Kernel, job: Job): MeshHeaders {
  const inUse: Manifold[] = [];
  const kept = (solid: Manifold): Manifold => {
    inUse.push(solid);
    return solid;
  };
  const known = new Map<string, { readonly made: Standing | undefined }>();
  const bench: Bench = {
    kernel,
    job,
    kept,
    shapes: shapesIn(kernel, kept),
    stopped: (tube, end, size) => {
      const key = `${tube} ${end} ${size}`;
      const found = known.get(key) ?? { made: stoppedAt(bench, tube, end, size) };
      known.set(key, found);
      return found.made;
    },
  };
  return {
    at: (tube, end, size) => headersOf(bench, tube, end, size)?.map(({ solid }) => solid) ?? 'too deep',
    drop: () => {
      for (const solid of inUse) solid.delete();
      inUse.length = 0;
      known.clear();
    },
  };
}

function headersOf(bench: Bench, tube: number, end: EndName, size: Size): readonly Standing[] | undefined {
  const seat = seatOf(bench.job, tube);
  const cut = bench.job.tubes[tube]?.ends[end];
  if (cut?.kind !== 'coped') return [];
  const made = cut.parts.map((part, i) =>
    headerOf(bench, { tube, end, header: seat.ends[end].headers[i] ?? -1 }, part, size),
  );
  const all = made.flatMap((each) => each ?? []);
  return all.length < made.length ? undefined : all;
}

interface Landing {
  readonly tube: number;
  readonly end: EndName;
  readonly header: number;
}

function headerOf(
  { kernel, job, kept, stopped }: Bench,
  { tube, end, header }: Landing,
  { onto, stops }: Part,
  size: Size,
): Standing | undefined {
  const point = pointOf(seatOf(job, tube), end);
  if (onto.kind === 'mitre') {
    const block = kept(kernel.Manifold.cube(2 * REACH, true).translate(point));
    return asConvex(kept(beyondPlane(block, along([0, 0, 0], -1, mitreWay(job, tube, end, header)), point)));
  }
  const its = seatOf(job, header);
  if (stops) return stopped(header, endAt(its, point), size);
  const at = dotOf(along(point, -1, its.from), its.axis);
  return asConvex(kept(barOf(kernel, job, header, [at - REACH, at + REACH], flatsOf(size))));
}

const asConvex = (whole: Manifold): Standing => ({
  solid: seen(whole),
  carved: () => [{ whole, hollows: [] }],
});

const flatsOf =
  (size: Size) =>
  (radius: number): { many: number; corners: number } => {
    const many = Math.ceil(Math.PI / Math.acos(1 - FLATNESS / radius));
    return { many, corners: size === 'within' ? radius : radius / Math.cos(Math.PI / many) };
  };

/** Of each line along a tube what lies on the body's side of where it first meets a header; undefined where that can't be made. */
function stoppedAt(bench: Bench, tube: number, end: EndName, size: Size): Standing | undefined {
  const { kernel, job, kept, shapes } = bench;
  const seat = seatOf(job, tube);
  const [body, point] = [bodyOf(seat, end), pointOf(seat, end)];
  const stretch: Stretch = end === 'A' ? [-BEYOND, REACH] : [seat.length - REACH, seat.length + BEYOND];
  const long = kept(barOf(kernel, job, tube, stretch, flatsOf(size)));
  const cut = job.tubes[tube]?.ends[end];
  const { past = 0, headers } = seat.ends[end];
  if (cut?.kind !== 'coped') return asConvex(kept(beyondPlane(long, body, along(point, -past, body))));
  if (cut.parts[0].onto.kind === 'mitre')
    return asConvex(kept(beyondPlane(long, mitreWay(job, tube, end, headers[0] ?? -1), point)));
  const cutters = cuttersOf(bench, tube, end, otherThan(size));
  const shadows = cuttersOf(bench, tube, end, size);
  if (!cutters || !shadows) return undefined;
  // What passes beside them all is trimmed at the farthest of the planes through their axes.
  const above = headers.reduce((rest, header) => kept(aboveAxis(job, rest, header, body)), long);
  const shafts = shadows.map((each) => shapes.shaft(each, body));
  const whole = joined([seen(above), ...shafts.map((shaft) => shared(seen(long), seen(shaft)))]);
  const solid = less(whole, joined(cutters.map((each) => shapes.under(each, body))));
  const carved = (): readonly Carved[] | undefined => {
    if (!cutters.every(isConvex)) return undefined;
    const hollows = cutters.map((each) => shapes.swept(each.whole, along([0, 0, 0], -1, body)));
    const wholes = [above, ...shafts.map((shaft) => kept(long.intersect(shaft)))];
    return wholes.map((each) => ({ whole: each, hollows }));
  };
  return { solid, carved: onceMade(carved) };
}

function onceMade<Thing>(make: () => Thing): () => Thing {
  let made: { readonly thing: Thing } | undefined;
  return () => {
    made ??= { thing: make() };
    return made.thing;
  };
}

function cuttersOf(bench: Bench, tube: number, end: EndName, size: Size): readonly Carved[] | undefined {
  const carved = headersOf(bench, tube, end, size)?.map((each) => each.carved());
  return carved?.every((each) => each !== undefined) ? carved.flat() : undefined;
}

/** What of a solid lies towards `body` from the plane through a header's axis that is square to their own plane. */
function aboveAxis(job: Job, solid: Manifold, header: number, body: Place): Manifold {
  const { axis, from } = seatOf(job, header);
  const normal = crossOf(axis, crossOf(axis, body));
  return beyondPlane(solid, along([0, 0, 0], Math.sign(dotOf(normal, body)), normal), from);
}
