import type { FrameNote } from '../job/job.ts';
import type { Desk } from '../job/text/desk.ts';
import { type Mm, radians } from '../measure/units.ts';
import { norm, type Vector, wayTo } from '../space/vector.ts';
import { asWritten } from '../words/said.ts';
import type { AskedFrame, PointAsk } from './asked.ts';
import { USUAL_SNAP } from './nearness.ts';
import type { Stood } from './stood.ts';

/** Of more tubes than one point has none is out of true by mistake: a frame that was measured, or drawn so. */
const MOST_ASKEW = 4;
/** A tube that leans by more is meant to: common practice, no source. */
const LEAST_LEAN = radians(1);
/** A point further than this part of the frame's extent from a plane of all others is meant to be: common practice, no source. */
const BESIDE_A_PLANE = 0.1;
/** So many points at least make a plane that a further one was meant to lie in. */
const IN_A_PLANE = 3;

/**
 * What was written so nearly true that it was mostly meant to be: a tube between two points written in numbers that is a degree or less out
 * of level, of plumb or of square, and the one point that lies beside a plane of the frame's axes in which all others lie.
 */
export function askewNotes(
  { words, bareUnit }: Desk,
  { points }: AskedFrame,
  standing: readonly Stood[],
): readonly FrameNote[] {
  const written = new Map(points.flatMap(({ name, way }) => (way.kind === 'at' ? [[name, way.place]] : [])));
  const beside = besidePlane(written);
  const isWritten = (ask: PointAsk): boolean =>
    'place' in ask || (written.has(ask.name) && ask.name !== beside?.name);
  const leaning = standing.flatMap(({ asked, name, place, along, from, to }): FrameNote[] => {
    const lean = asked.name === name && asked.along.every(isWritten) ? leanOf(wayTo(from, to)) : undefined;
    if (!lean) return [];
    const [start, end] = along.map(asWritten);
    const text = words.frame.outOfTrue(asWritten(name), [start, end], lean, bareUnit);
    return [{ code: 'askew', tubes: [place], text }];
  });
  if (leaning.length > MOST_ASKEW) return [];
  if (!beside) return leaning;
  const tubes = standing.flatMap(({ along, place }) => (along.includes(beside.name) ? [place] : []));
  const text = words.frame.besidePlane(asWritten(beside.name), beside, bareUnit);
  return [...leaning, { code: 'askew', tubes, text }];
}

/** How far something lies along one of the frame's axes, x, y and z. */
export interface AlongAxis {
  readonly axis: number;
  readonly by: Mm;
}

/** The lean of a tube that runs all but along an axis. */
function leanOf(way: Vector): AlongAxis | undefined {
  const main = [0, 1, 2].reduce(
    (best, i) => (Math.abs(way[i] ?? 0) > Math.abs(way[best] ?? 0) ? i : best),
    0,
  );
  const most = Math.tan(LEAST_LEAN) * norm(way);
  const [lean, ...others] = [0, 1, 2]
    .filter((axis) => axis !== main)
    .map((axis): AlongAxis => ({ axis, by: way[axis] ?? 0 }))
    .filter(({ by }) => Math.abs(by) > USUAL_SNAP)
    .sort((a, b) => Math.abs(b.by) - Math.abs(a.by));
  return lean && others.length === 0 && Math.abs(lean.by) < most ? lean : undefined;
}

/** The one point beside a plane square to an axis, in which all others lie: on that axis it is the first or the last of all. */
function besidePlane(
  written: ReadonlyMap<string, Vector>,
): (AlongAxis & { readonly name: string }) | undefined {
  const axes = [0, 1, 2].map((axis) =>
    [...written].map(([name, place]) => ({ name, at: place[axis] ?? 0 })).sort((a, b) => a.at - b.at),
  );
  const extent = Math.max(...axes.map((points) => rangeOf(points)));
  const odd = axes.flatMap((points, axis) =>
    [points.slice(0, 1), points.slice(-1)].flatMap(([point], place) => {
      const rest = place === 0 ? points.slice(1) : points.slice(0, -1);
      const by = (point?.at ?? 0) - (rest[0]?.at ?? 0);
      const isBeside = Math.abs(by) > USUAL_SNAP && Math.abs(by) < BESIDE_A_PLANE * extent;
      const isPlane = rest.length >= IN_A_PLANE && rangeOf(rest) < USUAL_SNAP;
      return point && isBeside && isPlane ? [{ name: point.name, axis, by }] : [];
    }),
  );
  return odd[0];
}

/** From the first to the last of points in their order. */
function rangeOf(points: readonly { readonly at: Mm }[]): Mm {
  return (points.at(-1)?.at ?? 0) - (points[0]?.at ?? 0);
}
