import type { Mm } from '../measure/units.ts';
import { norm, type Vector, wayTo } from '../space/vector.ts';

/** Points nearer to one another than this are one, of a frame whose file says nothing of it. */
export const USUAL_SNAP: Mm = 0.5;

/** Two tubes of one outside whose axes make no more than this are in line: one degree. */
export const IN_LINE = Math.cos(Math.PI / 180);

const STEPS = [-1, 0, 1];
const AROUND = STEPS.flatMap((x) => STEPS.flatMap((y) => STEPS.map((z) => [x, y, z])));

/** Of each place that is nearer than `snap` to an earlier one which itself is not: the key of the first such. */
export function joinedTo<Key>(places: ReadonlyMap<Key, Vector>, snap: Mm): ReadonlyMap<Key, Key> {
  const cell = Math.max(snap, 1);
  const cellAt = (home: readonly number[]): string => home.join(' ');
  const kept = new Map<string, { readonly key: Key; readonly place: Vector; readonly order: number }[]>();
  const joined = new Map<Key, Key>();
  for (const [order, [key, place]] of [...places].entries()) {
    const home = place.map((mm) => Math.floor(mm / cell));
    const [first] = AROUND.flatMap((by) => kept.get(cellAt(home.map((at, i) => at + (by[i] ?? 0)))) ?? [])
      .filter((each) => norm(wayTo(each.place, place)) < snap)
      .sort((a, b) => a.order - b.order);
    if (first) joined.set(key, first.key);
    else kept.set(cellAt(home), [...(kept.get(cellAt(home)) ?? []), { key, place, order }]);
  }
  return joined;
}
