import { USUAL_SNAP } from '../frame/nearness.ts';
import type { Frame } from '../job/job.ts';
import type { Mm } from '../measure/units.ts';
import { norm, plusTimes, type Vector, wayTo } from '../space/vector.ts';

/** Four points of a frame with a tube along each side, square to one another: its diagonals are alike where it is built so. */
export interface TubedRectangle {
  /** By name, once round. */
  readonly corners: readonly [string, string, string, string];
  readonly diagonal: Mm;
}

/** Every rectangle of tubes that run from corner to corner, each once, in the order of the tubes. */
export function rectanglesOf({ points, seats }: Frame): readonly TubedRectangle[] {
  const next = new Map<string, Set<string>>();
  for (const { along } of seats) {
    if (!along.every((name) => points.has(name))) continue;
    for (const [one, other] of [along, along.toReversed()]) {
      if (one === undefined || other === undefined) continue;
      next.set(one, (next.get(one) ?? new Set()).add(other));
    }
  }
  const found = new Map<string, TubedRectangle>();
  for (const [a, around] of next) {
    for (const b of around) {
      for (const c of next.get(b) ?? []) {
        for (const d of next.get(c) ?? []) {
          const corners = [a, b, c, d] as const;
          const key = corners.toSorted().join('\n');
          if (found.has(key) || !around.has(d) || new Set(corners).size < corners.length) continue;
          const [from, beside, opposite, last] = corners.map((name) => points.get(name));
          if (!from || !beside || !opposite || !last) continue;
          const diagonal = diagonalOf(from, beside, opposite, last);
          if (diagonal !== undefined) found.set(key, { corners, diagonal });
        }
      }
    }
  }
  return [...found.values()];
}

/** Undefined where the four are no rectangle: its fourth corner follows from the others, and its diagonals are equal. */
function diagonalOf(a: Vector, b: Vector, c: Vector, d: Vector): Mm | undefined {
  const fourth = plusTimes(a, 1, wayTo(b, c));
  const [one, other] = [norm(wayTo(a, c)), norm(wayTo(b, d))];
  const isRectangle = norm(wayTo(fourth, d)) <= USUAL_SNAP && Math.abs(one - other) <= USUAL_SNAP;
  return isRectangle ? (one + other) / 2 : undefined;
}
