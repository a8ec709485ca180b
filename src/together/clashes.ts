import type { EndName } from '../job/job.ts';
import type { Mm } from '../measure/units.ts';
import { type Bounds, boundsRound, meetingPairs } from '../space/bounds.ts';
import { setbackAt } from '../space/landing.ts';
import { withinOutline } from '../space/section.ts';
import { dot, norm, plusTimes, type Vector, wayTo } from '../space/vector.ts';
import { inTube, placeInSpace, type StandingTube } from './in-space.ts';

/** Two tubes that are in one another's way after all cuts, and where most. */
export interface Clash {
  readonly tubes: readonly [number, number];
  readonly at: Vector;
  /** The least move that parts them there. */
  readonly depth: Mm;
}

/** Tubes that touch are in nobody's way. */
const TOUCHING: Mm = 0.2;

/** Every two tubes of a frame that have a point deeper than 0.2 mm inside both, as filled. */
export function clashesIn(standings: readonly StandingTube[]): readonly Clash[] {
  const found: Clash[] = [];
  for (const [i, j] of meetingPairs(standings.map((standing) => boundsOf(standing)))) {
    const [one, another] = [standings[Math.min(i, j)], standings[Math.max(i, j)]];
    const clash = one && another && !isSleeve(one, another) ? clashOf(one, another) : undefined;
    if (clash) found.push(clash);
  }
  return found;
}

function boundsOf({ seat, solution }: StandingTube): Bounds {
  const { reach } = solution.section;
  const past = (end: EndName): Mm => Math.abs(seat.ends[end].past ?? 0) + reach;
  const from = plusTimes(seat.from, -past('A'), seat.axis);
  return boundsRound(from, plusTimes(seat.from, seat.length + past('B'), seat.axis), reach);
}

function isSleeve(a: StandingTube, b: StandingTube): boolean {
  const sits = (one: StandingTube, other: StandingTube): boolean =>
    (['A', 'B'] as const).some((end) => one.seat.ends[end].inside === other.tube);
  return sits(a, b) || sits(b, a);
}

const ALONG = 24;
const AROUND = 8;
const RINGS = [0, 0.45, 0.85];

function clashOf(one: StandingTube, other: StandingTube): Clash | undefined {
  const stretch = nearStretch(one, other);
  if (!stretch) return undefined;
  const [from, to] = stretch;
  const [inOne, inOther] = [depthIn(one), depthIn(other)];
  // What is no deeper than `above` in the other is not looked for in the one: of most places that halves the work.
  const both = (place: Vector, above = Number.NEGATIVE_INFINITY): number => {
    const depth = inOther(place);
    return depth > above ? Math.min(inOne(place), depth) : depth;
  };
  const { reach } = one.solution.section;
  let best: { place: Vector; depth: Mm } | undefined;
  for (let i = 0; i <= ALONG; i++) {
    for (const ring of RINGS) {
      for (let turn = 0; turn < (ring === 0 ? 1 : AROUND); turn++) {
        const angle = (turn * 2 * Math.PI) / AROUND;
        const along = from + ((to - from) * i) / ALONG;
        const place = placeInSpace(
          one.seat,
          along,
          ring * reach * Math.cos(angle),
          ring * reach * Math.sin(angle),
        );
        const depth = both(place, best?.depth);
        if (!best || depth > best.depth) best = { place, depth };
      }
    }
  }
  if (!best) return undefined;
  const deepest = climbed(both, best.place, Math.max(reach / 4, (to - from) / ALONG));
  if (both(deepest) <= TOUCHING) return undefined;
  const sum = (place: Vector): number => inOne(place) + inOther(place);
  const at = climbed(
    (place) => (both(place) > 0 ? sum(place) : Number.NEGATIVE_INFINITY),
    deepest,
    reach / 4,
  );
  return { tubes: [one.tube, other.tube], at, depth: sum(at) };
}

/** Where one's axis is near enough to the other's for their outsides to meet. */
function nearStretch(one: StandingTube, other: StandingTube): readonly [Mm, Mm] | undefined {
  const { seat } = one;
  const room = one.solution.section.reach + other.solution.section.reach;
  const c = dot(seat.axis, other.seat.axis);
  const gap = wayTo(other.seat.from, seat.from);
  // The squared way from a point of one's axis to the other's endless axis is a + 2 b t + q t t.
  const [along, beside] = [dot(gap, seat.axis), dot(gap, other.seat.axis)];
  const q = 1 - c * c;
  const b = along - c * beside;
  const a = dot(gap, gap) - beside * beside - room * room;
  const past = room + Math.max(...(['A', 'B'] as const).map((end) => Math.abs(seat.ends[end].past ?? 0)));
  const [low, high] = [-past, seat.length + past];
  if (q < 1e-9) return a > 0 ? undefined : [low, high];
  const root = b * b - q * a;
  if (root <= 0) return undefined;
  const [from, to] = [Math.max(low, (-b - Math.sqrt(root)) / q), Math.min(high, (-b + Math.sqrt(root)) / q)];
  return from < to ? [from, to] : undefined;
}

/** How deep a place lies inside a tube as it is cut, filled; less than 0 outside. */
function depthIn({ seat, solution }: StandingTube): (place: Vector) => Mm {
  const { section } = solution;
  const beyond = (end: EndName): ((along: Mm, x: Mm, y: Mm) => Mm) => {
    const cope = solution.ends[end];
    const landings = cope?.kind === 'coped' ? (cope.joint.rooted ?? cope.joint).landings : undefined;
    return (along, x, y) => {
      const setback = end === 'A' ? along - seat.ends.A.workPoint : seat.ends.B.workPoint - along;
      return landings ? setback - setbackAt(landings, x, y) : setback;
    };
  };
  const [own, pastA, pastB] = [inTube(seat), beyond('A'), beyond('B')];
  return (place) => {
    const { along, x, y } = own(place);
    const within = withinOutline(section, x, y);
    if (within <= 0) return within;
    return Math.min(within, pastA(along, x, y), pastB(along, x, y));
  };
}

/** Uphill by steps that are halved, along the axes of space and across them. What is no higher than `above` need not be told exactly. */
function climbed(height: (place: Vector, above?: number) => number, start: Vector, reach: Mm): Vector {
  let [at, best] = [start, height(start)];
  for (let step = reach; step > 1e-4; ) {
    const way = WAYS.find((each) => height(plusTimes(at, step, each), best) > best);
    if (way) {
      at = plusTimes(at, step, way);
      best = height(at);
    } else step /= 2;
  }
  return at;
}

const SIGNS = [-1, 0, 1];
const WAYS: readonly Vector[] = SIGNS.flatMap((x) =>
  SIGNS.flatMap((y) => SIGNS.map((z): Vector => [x, y, z])),
).filter((way) => norm(way) > 0);
