import type { FrameNote } from '../job/job.ts';
import { plainNumbers } from '../job/plain-numbers.ts';
import type { Desk } from '../job/text/desk.ts';
import { dot } from '../space/vector.ts';
import { asWritten } from '../words/said.ts';
import type { AskedFrame, PointAsk, PointWay } from './asked.ts';
import { IN_LINE } from './nearness.ts';
import type { Stood } from './stood.ts';

/** An end of a tube on another one, so far from that one's first point. */
interface OnTube {
  readonly point: string;
  readonly way: Extract<PointWay, { kind: 'on' }>;
  readonly tube: Stood;
}

/** Lengths that are written alike. */
const SAME = 1e-6;

/**
 * Tubes between two that are parallel and of one size but run opposite ways in the file, as far along the one as along the other: level
 * they would be if both ran one way.
 */
export function otherSenseNotes(
  { words, bareUnit }: Desk,
  { points }: AskedFrame,
  standing: readonly Stood[],
): readonly FrameNote[] {
  const ways = new Map(points.map(({ name, way }) => [name, way]));
  const byName = new Map(standing.map((tube) => [tube.name, tube]));
  const onTube = (ask: PointAsk): OnTube[] => {
    const way = 'name' in ask ? ways.get(ask.name) : undefined;
    const tube = way?.kind === 'on' ? byName.get(way.tube.name) : undefined;
    return 'name' in ask && way?.kind === 'on' && tube ? [{ point: ask.name, way, tube }] : [];
  };
  return standing.flatMap((own): FrameNote[] => {
    const [one, other] = own.asked.along.flatMap(onTube);
    if (!one || !other || !isOtherSense(one, other)) return [];
    const isSquare = Math.abs(dot(own.axis, one.tube.axis)) < SAME;
    if (isSquare) return [];
    const places = [one, other].map(({ point, tube }) => ({
      point: asWritten(point),
      from: asWritten(tube.along[0]),
      tube: asWritten(tube.name),
    }));
    const text = words.frame.otherSense(asWritten(own.name), places, one.way.at.mm, bareUnit);
    return [{ code: 'sense', tubes: [own.place, one.tube.place, other.tube.place], text }];
  });
}

function isOtherSense({ tube: a, way }: OnTube, { tube: b, way: its }: OnTube): boolean {
  const isSize = plainNumbers(a.asked.section, 6) === plainNumbers(b.asked.section, 6);
  return isSize && dot(a.axis, b.axis) < -IN_LINE && Math.abs(way.at.mm - its.at.mm) < SAME;
}
