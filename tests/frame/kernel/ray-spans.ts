import type { Manifold } from 'manifold-3d';
import { along, type Place } from '../ray-march.ts';

/** A straight way from one place on, of so many mm. */
export interface Ray {
  readonly from: Place;
  readonly way: Place;
  readonly length: number;
}

/** Where a ray goes into a solid or comes out of it, in mm along it, and the surface's outward normal there. */
interface Crossing {
  readonly at: number;
  readonly normal: Place;
}
/** From where to where a ray is inside. */
export interface Span {
  readonly into: Crossing;
  readonly out: Crossing;
}

/** A solid as rays see it: where they are inside, in order. So solids are joined and cut without the making of what comes of it. */
export type SeenByRays = (ray: Ray) => readonly Span[];

/** Further than any solid here reaches, mm: out there a ray is outside. */
const OUTSIDE = 3000;

export function seen(solid: Manifold): SeenByRays {
  return ({ from, way, length }) => {
    const whole = length + 2 * OUTSIDE;
    const hits = solid.rayCast([...along(from, -OUTSIDE, way)], [...along(from, length + OUTSIDE, way)]);
    return hits.flatMap(({ distance, normal }, i): Span[] => {
      const leaves = hits[i + 1];
      if (i % 2 > 0 || !leaves) return [];
      const into = crossingAt(distance * whole - OUTSIDE, normal);
      const out = crossingAt(leaves.distance * whole - OUTSIDE, leaves.normal);
      return out.at > 0 && into.at < length ? [{ into, out }] : [];
    });
  };
}

const crossingAt = (at: number, normal: readonly number[]): Crossing => ({
  at,
  normal: [normal[0] ?? 0, normal[1] ?? 0, normal[2] ?? 0],
});

export function joined(solids: readonly SeenByRays[]): SeenByRays {
  return (ray) => {
    const spans = solids.flatMap((each) => each(ray)).sort((a, b) => a.into.at - b.into.at);
    const all: Span[] = [];
    for (const span of spans) {
      const last = all.at(-1);
      if (!last || span.into.at > last.out.at) all.push(span);
      else if (span.out.at > last.out.at) all[all.length - 1] = { into: last.into, out: span.out };
    }
    return all;
  };
}

export function less(solid: SeenByRays, hollow: SeenByRays): SeenByRays {
  return (ray) => {
    const own = solid(ray);
    return own.length === 0
      ? []
      : hollow(ray).reduce((left, away) => left.flatMap((each) => lessOne(each, away)), own);
  };
}

function lessOne(span: Span, away: Span): readonly Span[] {
  const { into, out } = span;
  if (away.out.at <= into.at || away.into.at >= out.at) return [span];
  return [
    ...(away.into.at > into.at ? [{ into, out: turned(away.into) }] : []),
    ...(away.out.at < out.at ? [{ into: turned(away.out), out }] : []),
  ];
}

const turned = ({ at, normal }: Crossing): Crossing => ({ at, normal: [-normal[0], -normal[1], -normal[2]] });

/** What lies in both. */
export function shared(one: SeenByRays, other: SeenByRays): SeenByRays {
  return (ray) => {
    const own = one(ray);
    const its = own.length === 0 ? [] : other(ray);
    return own.flatMap((a) =>
      its.flatMap((b) => {
        const into = a.into.at > b.into.at ? a.into : b.into;
        const out = a.out.at < b.out.at ? a.out : b.out;
        return into.at < out.at ? [{ into, out }] : [];
      }),
    );
  };
}
