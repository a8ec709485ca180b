import type { EndName } from '../job/job.ts';
import { tubeFactsOf } from '../job/sections.ts';
import { complain } from '../job/text/desk.ts';
import type { Mm } from '../measure/units.ts';
import type { Section } from '../space/section.ts';
import { byLine, norm, scaledBy, unitOf, type Vector, wayTo } from '../space/vector.ts';
import { asWritten } from '../words/said.ts';
import type { AskedEnd, AskedFrame, AskedTube, Named, PointAsk } from './asked.ts';
import { otherHalf, primed } from './names.ts';
import { mirroredPlace, mirroredWay, ON_PLANE, type Places, spineOf } from './places.ts';

/** A tube where it stands: its axis from one point to another, and the way that its spine faces. */
export interface Stood {
  readonly asked: AskedTube;
  readonly name: string;
  /** Its place among the tubes of the frame. */
  readonly place: number;
  readonly along: readonly [from: string, to: string];
  readonly from: Vector;
  readonly to: Vector;
  readonly axis: Vector;
  readonly length: Mm;
  readonly spine: Vector;
  readonly outline: Section;
}

type Unplaced = Omit<Stood, 'place'>;

export type StoodEnd = { readonly tube: Stood; readonly end: EndName };

export function pointOf({ tube, end }: StoodEnd): Vector {
  return end === 'A' ? tube.from : tube.to;
}

/** From an end into its tube's body. */
export function bodyOf({ tube, end }: StoodEnd): Vector {
  return end === 'A' ? tube.axis : scaledBy(tube.axis, -1);
}

export function askedEnd({ tube, end }: StoodEnd): AskedEnd {
  return tube.asked.ends[end];
}

/** Every tube of a frame where it stands, each mirror image right after its original. */
export function standingsOf(asked: AskedFrame, places: Places): readonly Stood[] {
  const written = new Set(asked.tubes.map(({ name }) => name));
  const pairs = asked.tubes.flatMap((tube) => {
    const own = stand(tube, places);
    if (!own) return [];
    const { name } = tube;
    const hasOther = otherHalf(name, (each) => written.has(each)) !== name;
    const twin = hasOther ? undefined : twinOf(own, asked, places);
    return [{ own, twin }];
  });
  const names = new Set(pairs.flatMap(({ own, twin }) => (twin ? [own.name, twin.name] : [own.name])));
  return pairs
    .flatMap(({ own, twin }) => (twin ? [own, withNamesPrimed(twin, names)] : [own]))
    .map((each, place) => ({ ...each, place }));
}

function stand(asked: AskedTube, places: Places): Unplaced | undefined {
  const [from, to] = asked.along.map((ask) => places.end(ask));
  if (!from || !to) return undefined;
  const { frame } = asked.spot.desk.words.job;
  const axis = unitOf(wayTo(from.place, to.place));
  const length = norm(wayTo(from.place, to.place));
  if (!axis || length < 1) return complain(asked.along[1].spot, 'no-length', frame.noLength);
  const spine = spineOf(axis, asked.face?.way);
  if (!spine) return complain(asked.face?.spot ?? asked.spot, 'face', frame.faceAlong);
  return {
    asked,
    name: asked.name,
    along: [from.name, to.name],
    from: from.place,
    to: to.place,
    axis,
    length,
    spine,
    outline: tubeFactsOf(asked.section).outline(),
  };
}

/** The mirror image of a tube; undefined of one that is its own. */
function twinOf(own: Unplaced, { plane }: AskedFrame, places: Places): Unplaced | undefined {
  if (!plane) return undefined;
  const { asked } = own;
  const reflect = (ask: PointAsk): PointAsk => {
    if ('place' in ask) return { ...ask, place: mirroredPlace(ask.place, plane) };
    return { ...ask, name: otherHalf(ask.name, (each) => places.points.has(each)) };
  };
  const name = primed(own.name);
  const twin: AskedTube = {
    ...asked,
    name,
    along: [reflect(asked.along[0]), reflect(asked.along[1])],
    ...(asked.face && { face: { ...asked.face, way: mirroredWay(asked.face.way, plane) } }),
    ends: { A: mirroredAsk(asked.ends.A, plane), B: mirroredAsk(asked.ends.B, plane) },
  };
  const stood = stand(twin, places);
  if (!stood || isSame(own, stood)) return undefined;
  if (liesAlong(own, stood)) {
    const { frame } = asked.spot.desk.words.job;
    return complain(asked.spot, 'mirror', frame.alongTwin(asWritten(own.name)));
  }
  return stood;
}

function mirroredAsk(end: AskedEnd, plane: NonNullable<AskedFrame['plane']>): AskedEnd {
  const { cut, seam } = end;
  return {
    ...end,
    ...(cut.kind === 'flat' && { cut: { ...cut, way: mirroredWay(cut.way, plane) } }),
    ...(seam && { seam: 'rad' in seam ? { ...seam, rad: -seam.rad } : { ...seam, mm: -seam.mm } }),
  };
}

type Axis = Pick<Stood, 'from' | 'to' | 'axis' | 'length'>;

function isSame(a: Axis, b: Axis): boolean {
  const near = (one: Vector, other: Vector): boolean => norm(wayTo(one, other)) <= ON_PLANE;
  return (near(a.from, b.from) && near(a.to, b.to)) || (near(a.from, b.to) && near(a.to, b.from));
}

/** Whether two tubes lie in one line and over one another. */
function liesAlong(a: Axis, b: Axis): boolean {
  const [start, end] = [byLine(a.from, a.axis, b.from), byLine(a.from, a.axis, b.to)];
  const [first, last] = [Math.min(start.along, end.along), Math.max(start.along, end.along)];
  const inLine = norm(start.off) <= ON_PLANE && norm(end.off) <= ON_PLANE;
  return inLine && Math.min(a.length, last) - Math.max(0, first) > ON_PLANE;
}

/** The names that a mirror image's keys give are those of mirror images where there are such. */
function withNamesPrimed(twin: Unplaced, names: ReadonlySet<string>): Unplaced {
  const other = (named: Named): Named => ({
    ...named,
    name: otherHalf(named.name, (each) => names.has(each)),
  });
  const end = (ask: AskedEnd): AskedEnd => ({
    ...ask,
    ...(ask.cut.kind === 'onto' && { cut: { ...ask.cut, names: ask.cut.names.map(other) } }),
    ...(ask.inside && { inside: other(ask.inside) }),
  });
  const { asked } = twin;
  const ends = { A: end(asked.ends.A), B: end(asked.ends.B) };
  return { ...twin, asked: { ...asked, after: asked.after.map(other), ends } };
}
