import { tubeFactsOf } from '../job/sections.ts';
import { complain, type Spot } from '../job/text/desk.ts';
import type { Mm } from '../measure/units.ts';
import { crossProduct, dot, norm, plusTimes, squareTo, unitOf, type Vector, wayTo } from '../space/vector.ts';
import { asWritten } from '../words/said.ts';
import type { AskedFrame, AskedPoint, AskedTube, MirrorPlane, Named, PointAsk } from './asked.ts';
import { otherHalf, primed, unknownName, unprimed } from './names.ts';
import { joinedTo } from './nearness.ts';

/** Where every point of a frame is. */
export interface Places {
  readonly points: ReadonlyMap<string, Vector>;
  /** Names of points that were joined to another, each with that other's. */
  readonly joined: ReadonlyMap<string, string>;
  /** The place and the name of what a tube's end is laid on; undefined where it is complained about. */
  end(ask: PointAsk): { readonly place: Vector; readonly name: string } | undefined;
}

/**
 * Works out every point, with its other half where the frame has a mirror plane, and joins those that are nearer than the
 * snap to the first one, in the order of the file. Circles and unknown names are complained about.
 */
export function placesOfFrame(asked: AskedFrame): Places {
  const found = finderOf(asked);
  const written = new Set(asked.points.map(({ name }) => name));
  const all = new Map<string, Vector>();
  for (const { name } of asked.points) {
    const place = found(name);
    if (!place) continue;
    all.set(name, place);
    const twin = asked.plane && mirroredPlace(place, asked.plane);
    const hasOther = otherHalf(name, (each) => written.has(each)) !== name;
    if (twin && norm(wayTo(place, twin)) > ON_PLANE && !hasOther) all.set(primed(name), twin);
  }
  // Each keeps the place of the one to which it is joined.
  const joined = joinedTo(all, asked.snap);
  const points = new Map([...all].map(([name, place]) => [name, all.get(joined.get(name) ?? name) ?? place]));
  const writtenOut: Vector[] = [];
  const end = (ask: PointAsk): { place: Vector; name: string } | undefined => {
    if ('place' in ask) {
      const isNear = (place: Vector): boolean => norm(wayTo(place, ask.place)) < asked.snap;
      const near = [...points.values()].find(isNear) ?? writtenOut.find(isNear);
      if (!near) writtenOut.push(ask.place);
      return { place: near ?? ask.place, name: ask.place.map((mm) => Number(mm.toFixed(3))).join(' ') };
    }
    const place = points.get(ask.name);
    if (place) return { place, name: ask.name };
    if (!written.has(ask.name)) unknownName(ask, 'point', points.keys());
    return undefined;
  };
  return { points, joined, end };
}

/** A point of the plane is its own other half, and so is one as near to it as rounding leaves it. */
export const ON_PLANE: Mm = 1e-6;

export function mirroredPlace(place: Vector, { axis, at }: MirrorPlane): Vector {
  const [x, y, z] = place.map((mm, i) => (i === axis ? 2 * at - mm : mm));
  return [x ?? 0, y ?? 0, z ?? 0];
}

export function mirroredWay(way: Vector, { axis }: MirrorPlane): Vector {
  return mirroredPlace(way, { axis, at: 0 });
}

/** What each point is looked for among; the points that were worked out, and those and the tubes that are being worked out. */
interface Search {
  readonly plane: MirrorPlane | undefined;
  readonly points: ReadonlyMap<string, AskedPoint>;
  readonly tubes: ReadonlyMap<string, AskedTube>;
  readonly done: Map<string, Vector | undefined>;
  /** The outermost first; a tube is named, and is no point. */
  readonly under: { readonly label: string; readonly point: string }[];
}

/** Each point when it is first asked for, and those that it rests on before it. */
function finderOf({ points, tubes, plane }: AskedFrame): (name: string) => Vector | undefined {
  const search: Search = {
    plane,
    points: new Map(points.map((point) => [point.name, point])),
    tubes: new Map(tubes.map((tube) => [tube.name, tube])),
    done: new Map(),
    under: [],
  };
  return (name) => {
    const point = search.points.get(name);
    return point && find(search, point);
  };
}

function find(search: Search, point: AskedPoint): Vector | undefined {
  const { done, under } = search;
  const { name } = point;
  if (done.has(name)) return done.get(name);
  if (under.some((each) => each.point === name)) return circle(search, point);
  under.push({ label: name, point: name });
  const place = work(search, point);
  under.pop();
  done.set(name, place);
  return place;
}

function circle({ under }: Search, { spot, name }: AskedPoint): undefined {
  const from = under.findIndex(({ point }) => point === name);
  const members = under.slice(from).map(({ label }) => label);
  complain(spot, 'circle', spot.desk.words.job.frame.circle([...members, name].map(asWritten)));
}

function work(search: Search, { way, spot }: AskedPoint): Vector | undefined {
  switch (way.kind) {
    case 'at':
      return way.place;
    case 'between': {
      const [from, to] = way.of.map((named) => pointAt(search, named));
      return from && to && plusTimes(from, way.share, wayTo(from, to));
    }
    case 'from': {
      const from = pointAt(search, way.from);
      return from && plusTimes(from, 1, way.by);
    }
    case 'on':
      return onNamedTube(search, way, spot);
  }
}

function pointAt(search: Search, named: Named): Vector | undefined {
  const { plane, points } = search;
  const point = points.get(named.name);
  if (point) return find(search, point);
  const original = plane && points.get(unprimed(named.name));
  const place = original && find(search, original);
  if (place) return mirroredPlace(place, plane);
  return original ? undefined : unknownName(named, 'point', points.keys());
}

type OnTube = Extract<AskedPoint['way'], { readonly kind: 'on' }>;

function onNamedTube(search: Search, way: OnTube, spot: Spot): Vector | undefined {
  const { plane, tubes, under } = search;
  const tube = tubes.get(way.tube.name);
  const original = tube ?? (plane && tubes.get(unprimed(way.tube.name)));
  if (!original) return unknownName(way.tube, 'tube', tubes.keys());
  under.push({ label: original.name, point: '' });
  // On a mirror image it is as far along the original, seen in the mirror.
  const out = way.out && !tube && plane ? mirroredWay(way.out, plane) : way.out;
  const place = onTube(search, original, { at: way.at.mm, out, spot });
  under.pop();
  return place && !tube && plane ? mirroredPlace(place, plane) : place;
}

interface PlaceOnTube {
  readonly at: Mm;
  readonly out: Vector | undefined;
  readonly spot: Spot;
}

function onTube(search: Search, tube: AskedTube, { at, out, spot }: PlaceOnTube): Vector | undefined {
  const [from, to] = tube.along.map((end) => ('place' in end ? end.place : pointAt(search, end)));
  const axis = from && to && unitOf(wayTo(from, to));
  if (!axis) return undefined;
  const { words, bareUnit } = spot.desk;
  const { frame } = words.job;
  const long = norm(wayTo(from, to));
  if (at > long + 1e-6) return complain(spot, 'beyond', frame.beyond(asWritten(tube.name), long, bareUnit));
  const place = plusTimes(from, at, axis);
  if (!out) return place;
  const square = squareTo(axis, out);
  if (!square) return complain(spot, 'out', frame.outAlong(asWritten(tube.name)));
  return plusTimes(place, reachOf(tube, axis, square), square);
}

/** How far a tube's outside lies from its axis this way. */
function reachOf(tube: AskedTube, axis: Vector, way: Vector): Mm {
  const outline = tubeFactsOf(tube.section).outline();
  const spine = spineOf(axis, tube.face?.way) ?? way;
  const station = outline.towards(stationAngle(axis, spine, way));
  const { x, y } = outline.at(station);
  return Math.hypot(x, y);
}

/** Nearer to upright than this a tube's spine faces back: half a degree. */
const PLUMB = Math.cos((0.5 * Math.PI) / 180);

/** The way that a tube's spine faces: as a wide face is told to look, else up, or of a tube that stands plumb back. */
export function spineOf(axis: Vector, face: Vector | undefined): Vector | undefined {
  if (face) return squareTo(axis, face);
  return squareTo(axis, Math.abs(axis[2]) >= PLUMB ? [0, 1, 0] : [0, 0, 1]);
}

/** The angle of a way from the spine, right-handed about the axis, in (-pi, pi]. */
export function stationAngle(axis: Vector, spine: Vector, way: Vector): number {
  return Math.atan2(dot(way, crossProduct(axis, spine)), dot(way, spine));
}
