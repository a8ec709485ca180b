import type { Mm, Radians } from '../measure/units.ts';
import type { Profile, Top } from './profile.ts';
import { TOUCH } from './solid.ts';

export interface BoxSize {
  /** Along w before it is rolled. */
  readonly wide: Mm;
  /** Square to w and to the axis. */
  readonly deep: Mm;
  /** Outside radius of the corners; 0 for sharp ones. */
  readonly corner: Mm;
  /** Turns the body's side towards w. */
  readonly roll: Radians;
}

/** The outline of a rectangular tube: four faces, each followed by a corner's arc. */
export function boxProfile(size: BoxSize): Profile {
  const stretches = upperSide(size);
  const { roll, corner } = size;
  const coreDeep = size.deep / 2 - corner;
  const coreWide = size.wide / 2 - corner;
  const cos = Math.cos(roll);
  const sin = Math.sin(roll);
  const lowest = stretches[0]?.from ?? 0;
  const highest = stretches.at(-1)?.to ?? 0;

  const top = (q: Mm): Top | undefined => {
    if (q < lowest - TOUCH || q > highest + TOUCH) return undefined;
    const home = Math.min(highest, Math.max(lowest, q));
    const stretch = stretches.find(({ from, to }) => home <= to && to > from) ?? stretches.at(-1);
    const met = stretch?.at(home);
    // Spread into a new object, it had a shape of its own each time, and what was compiled for the others was thrown away a hundred times over.
    const isBeside = met !== undefined && home !== q && met.np < UPRIGHT;
    return isBeside ? { p: met.p, np: 0, nq: Math.sign(q), patch: met.patch } : met;
  };
  const middle = top(0)?.p ?? 0;
  const walk = wayRound(coreDeep, coreWide, corner);
  const roundFromFace = (p: Mm, q: Mm): Mm => walk(p * cos + q * sin, q * cos - p * sin);
  const girth = 4 * (coreDeep + coreWide) + 2 * Math.PI * corner;
  const start = roundFromFace(middle, 0);

  return {
    top,
    leaning(angle: Radians): Mm | undefined {
      const stretch = stretches.find(({ first, last }) => angle >= first && angle <= last);
      return stretch?.leaning(angle);
    },
    sideLimits: [lowest - 2 * TOUCH, highest + 2 * TOUCH],
    distance(p: Mm, q: Mm): Mm {
      const a = Math.abs(p * cos + q * sin) - coreDeep;
      const b = Math.abs(q * cos - p * sin) - coreWide;
      return Math.hypot(Math.max(a, 0), Math.max(b, 0)) + Math.min(Math.max(a, b), 0) - corner;
    },
    round(p: Mm, q: Mm): Mm {
      const way = roundFromFace(p, q) - start;
      return way - girth * Math.round(way / girth);
    },
  };
}

/** A normal whose part towards p is less than this, where a line just touches a round corner, is square to p but for rounding. */
const UPRIGHT = 1e-7;

/** A face or an arc as it shows from above: its reach in q, the lean of its normals, and its points. */
interface Stretch {
  readonly from: Mm;
  readonly to: Mm;
  readonly first: Radians;
  readonly last: Radians;
  at(q: Mm): Top;
  leaning(angle: Radians): Mm;
}

/** What of the outline faces the body, from the least q to the greatest. */
function upperSide({ wide, deep, corner, roll }: BoxSize): readonly Stretch[] {
  const found: Stretch[] = [];
  const halves = [deep / 2, wide / 2] as const;
  for (let quarter = -3; quarter <= 3; quarter++) {
    const lean = roll - 2 * Math.PI * Math.round(roll / (2 * Math.PI)) + (quarter * Math.PI) / 2;
    const out = halves[quarter & 1] ?? 0;
    const side = halves[(quarter + 1) & 1] ?? 0;
    const patch = 2 * (quarter & 3);
    if (Math.abs(lean) < Math.PI / 2 - LEVEL) found.push(face(lean, out, side - corner, patch));
    const arc = cornerArc(lean, out - corner, side - corner, corner, patch + 1);
    if (arc) found.push(arc);
  }
  return found;
}

/** A face whose normal leans within this of square to p is seen edge on. */
const LEVEL: Radians = 1e-12;

function face(lean: Radians, out: Mm, reach: Mm, patch: number): Stretch {
  const np = Math.cos(lean);
  const nq = Math.sin(lean);
  const from = out * nq - reach * np;
  const to = out * nq + reach * np;
  return {
    from,
    to,
    first: lean,
    last: lean,
    at: (q) => ({ p: (out - nq * q) / np, np, nq, patch }),
    leaning: () => (from + to) / 2,
  };
}

/** The corner between the face of this lean and the next one round, as far as it shows. */
function cornerArc(lean: Radians, out: Mm, reach: Mm, radius: Mm, patch: number): Stretch | undefined {
  const first = Math.max(lean, -Math.PI / 2);
  const last = Math.min(lean + Math.PI / 2, Math.PI / 2);
  if (last - first <= LEVEL) return undefined;
  const centreP = out * Math.cos(lean) - reach * Math.sin(lean);
  const centreQ = out * Math.sin(lean) + reach * Math.cos(lean);
  return {
    from: centreQ + radius * Math.sin(first),
    to: centreQ + radius * Math.sin(last),
    first,
    last,
    at: (q) => {
      const nq = radius === 0 ? 0 : Math.min(1, Math.max(-1, (q - centreQ) / radius));
      const np = Math.sqrt((1 - nq) * (1 + nq));
      return { p: centreP + radius * np, np, nq, patch };
    },
    leaning: (angle) => centreQ + radius * Math.sin(angle),
  };
}

/** The way round a rectangle with round corners from the middle of its first face; points are a out and b along. */
function wayRound(coreDeep: Mm, coreWide: Mm, corner: Mm): (a: Mm, b: Mm) => Mm {
  const quarter = (Math.PI / 2) * corner;
  const half = 2 * coreWide + 2 * coreDeep + 2 * quarter;
  const way = (a: Mm, b: Mm): Mm => {
    const above = a - coreDeep;
    const below = -a - coreDeep;
    const beside = b - coreWide;
    if (above > 0 && beside > 0) return coreWide + corner * Math.atan2(beside, above);
    if (below > 0 && beside > 0)
      return coreWide + quarter + 2 * coreDeep + corner * Math.atan2(below, beside);
    if (beside >= above && beside >= below) return coreWide + quarter + coreDeep - a;
    return above >= below ? b : half - b;
  };
  return (a, b) => (b < 0 ? -way(a, -b) : way(a, b));
}
