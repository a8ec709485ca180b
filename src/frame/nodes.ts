import { complain } from '../job/text/desk.ts';
import type { Mm } from '../measure/units.ts';
import { type Bounds, boundsRound, isInBounds } from '../space/bounds.ts';
import { byLine, crossProduct, dot, norm, type Vector } from '../space/vector.ts';
import { asWritten } from '../words/said.ts';
import { IN_LINE } from './nearness.ts';
import { isSameOutside } from './outside.ts';
import { askedEnd, bodyOf, pointOf, type Stood, type StoodEnd } from './stood.ts';

/** What meets at a point of a frame. */
export interface Node {
  readonly point: Vector;
  /** Tubes that run through it, in the order of the file. Of two that are spliced there the first stands for both. */
  readonly passing: readonly Stood[];
  /** Ends that come to it, in the order in which they are cut: none copes onto a later one. */
  readonly ending: readonly StoodEnd[];
  /** Ends that are spliced there, two and two. */
  readonly spliced: readonly StoodEnd[];
  /** Tubes that have the point inside them but do not run through it, nor end there. */
  readonly around: readonly Stood[];
}

/** Every point at which a tube ends, by its place. */
export function nodesOf(tubes: readonly Stood[], snap: Mm): ReadonlyMap<string, Node> {
  const ends = new Map<string, StoodEnd[]>();
  for (const tube of tubes) {
    for (const end of ['A', 'B'] as const) {
      const key = nodeKey({ tube, end });
      ends.set(key, [...(ends.get(key) ?? []), { tube, end }]);
    }
  }
  const reaching = tubes.map((tube): Reaching => {
    const { from, to, outline } = tube;
    return { tube, bounds: boundsRound(from, to, outline.reach + snap) };
  });
  return new Map([...ends].map(([key, at]) => [key, nodeAt(at, reaching, snap)]));
}

export function nodeKey(end: StoodEnd): string {
  return pointOf(end).join(' ');
}

/** A tube, and the bounds of all points that it may run through or have inside it. */
interface Reaching {
  readonly tube: Stood;
  readonly bounds: Bounds;
}

function nodeAt(ends: readonly StoodEnd[], tubes: readonly Reaching[], snap: Mm): Node {
  const [first] = ends;
  const point = first ? pointOf(first) : ([0, 0, 0] as const);
  const others = tubes
    .filter(({ tube, bounds }) => isInBounds(bounds, point) && !ends.some((end) => end.tube === tube))
    .map(({ tube }) => tube);
  const [passing = [], around = []] = [true, false].map((passes) =>
    others.filter((tube) => isOnAxis(tube, point, snap) === passes),
  );
  const spliced = splicesOf(ends, passing);
  const through = spliced.flatMap(({ tube }, i) => (i % 2 === 0 ? [tube] : []));
  return {
    point,
    passing: [...passing, ...through].sort((a, b) => a.place - b.place),
    ending: ordered(ends.filter((end) => !spliced.includes(end))),
    spliced,
    around: around.filter((tube) => holds(tube, point)),
  };
}

function isOnAxis({ from, axis, length }: Stood, point: Vector, snap: Mm): boolean {
  const { along, off } = byLine(from, axis, point);
  return along > snap && along < length - snap && norm(off) <= snap;
}

/** Whether a point lies inside a tube, filled, between its two points. */
function holds(tube: Stood, point: Vector): boolean {
  const { from, axis, length, outline } = tube;
  const { along, off } = byLine(from, axis, point);
  if (along < 0 || along > length) return false;
  const [x, y] = [dot(off, tube.spine), dot(off, crossProduct(axis, tube.spine))];
  const wall = outline.at(outline.towards(Math.atan2(y, x)));
  return Math.hypot(x, y) < Math.hypot(wall.x, wall.y);
}

/**
 * Ends of one outside that go on in line with one another, two and two. What runs through the point across them parts them: each
 * copes onto that.
 */
function splicesOf(ends: readonly StoodEnd[], passing: readonly Stood[]): readonly StoodEnd[] {
  const found: StoodEnd[] = [];
  const free = (end: StoodEnd): boolean => askedEnd(end).cut.kind === 'found' && !found.includes(end);
  const isParted = ({ tube }: StoodEnd): boolean =>
    [...passing, ...found.map((end) => end.tube)].some(
      ({ axis }) => Math.abs(dot(axis, tube.axis)) < IN_LINE,
    );
  for (const [i, one] of ends.entries()) {
    if (!free(one) || isParted(one)) continue;
    const other = ends
      .slice(i + 1)
      .find((each) => free(each) && dot(bodyOf(one), bodyOf(each)) <= -IN_LINE && isSameOutside(one, each));
    if (other) found.push(one, other);
  }
  return found;
}

/** Those that are `through` first, then in the order of the file, each after those that it is to come after. */
function ordered(ends: readonly StoodEnd[]): readonly StoodEnd[] {
  const left = [...ends].sort(
    (a, b) => Number(b.tube.asked.through) - Number(a.tube.asked.through) || a.tube.place - b.tube.place,
  );
  const order: StoodEnd[] = [];
  while (left.length > 0) {
    const next = left.findIndex(({ tube }) =>
      tube.asked.after.every(({ name }) => !left.some((each) => each.tube.name === name)),
    );
    const [taken] = left.splice(Math.max(0, next), 1);
    if (!taken) break;
    if (next < 0) complainOfCircle(taken, left);
    order.push(taken);
  }
  return order;
}

function complainOfCircle(first: StoodEnd, others: readonly StoodEnd[]): void {
  const names = [first.tube.name];
  for (let at: StoodEnd | undefined = first; at; ) {
    const next: StoodEnd | undefined = [first, ...others].find(({ tube }) =>
      at?.tube.asked.after.some(({ name }) => name === tube.name),
    );
    if (!next) break;
    names.push(next.tube.name);
    if (names.indexOf(next.tube.name) < names.length - 1) break;
    at = next;
  }
  const spot = first.tube.asked.after[0]?.spot ?? first.tube.asked.spot;
  complain(spot, 'circle', spot.desk.words.job.frame.circle(names.map(asWritten)));
}
