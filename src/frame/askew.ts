import type { FrameNote } from '../job/job.ts';
import type { Desk } from '../job/text/desk.ts';
import { type Mm, radians } from '../measure/units.ts';
import { norm, type Vector, wayTo } from '../space/vector.ts';
import { asWritten } from '../words/said.ts';
import type { AskedFrame, PointAsk } from './asked.ts';
import type { Stood } from './stood.ts';

/** Lengths that are written alike. */
const SAME: Mm = 1e-6;
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
    .filter(({ by }) => Math.abs(by) > SAME)
    .sort((a, b) => Math.abs(b.by) - Math.abs(a.by));
  return lean && others.length === 0 && Math.abs(lean.by) < most ? lean : undefined;
}

/** The one point beside a plane square to an axis, in which all others lie. */
function besidePlane(
  written: ReadonlyMap<string, Vector>,
): (AlongAxis & { readonly name: string }) | undefined {
  const all = [...written];
  const extent = Math.max(...[0, 1, 2].map((axis) => rangeOf(all.map(([, place]) => place[axis] ?? 0))));
  for (const axis of [0, 1, 2]) {
    for (const [name, place] of all) {
      const rest = all.flatMap(([other, at]) => (other === name ? [] : [at[axis] ?? 0]));
      const by = (place[axis] ?? 0) - (rest[0] ?? 0);
      const isBeside = Math.abs(by) > SAME && Math.abs(by) < BESIDE_A_PLANE * extent;
      if (rest.length >= IN_A_PLANE && isBeside && rangeOf(rest) < SAME) return { name, axis, by };
    }
  }
  return undefined;
}

function rangeOf(values: readonly Mm[]): Mm {
  return Math.max(...values) - Math.min(...values);
}
