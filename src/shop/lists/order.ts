import type { End, EndName } from '../../job/job.ts';
import type { EndSolution } from '../../saddle/cope.ts';
import { sawnAt } from '../../saddle/sawn.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
import { SQUARE, settingOf } from './header-key.ts';
import { type Before, settingsInOrder } from './settings-order.ts';

/** One end of one tube of one hand, to be cut as often as the tube has copies. */
export interface EndTask {
  readonly solution: TubeSolution;
  readonly end: EndName;
}

/** What is cut with one setting, without a change of saw or hole cutter. */
export interface Stage {
  readonly setting: string;
  /** One of its ends: all land on what this one does. */
  readonly like: End;
  readonly tasks: readonly EndTask[];
}

/**
 * The order in which the ends of a job are cut: all ends with one kind and size of header together, so that the setting is
 * changed as often as there are settings. A tube that is marked with its end A seated has A before B; only where that
 * leads round in a circle are some settings made twice. Within a setting the ends that matter less come first, and both
 * hands of a pair one after the other. Square cuts come first of all and are no setting of a header.
 */
export function orderOfWork(solutions: readonly TubeSolution[]): readonly Stage[] {
  const tasks = solutions.flatMap((solution) =>
    (['A', 'B'] as const).flatMap((end): Task[] => {
      const own = solution.tube.ends[end];
      const sawn = sawnAt(solution, end) !== undefined;
      return own ? [{ solution, end, setting: sawn ? SQUARE : settingOf(own) }] : [];
    }),
  );
  const byKey = grouped(tasks, ({ setting }) => setting);
  const befores = solutions.flatMap((solution) => beforeOf(solution));
  const keys = [...byKey.keys()];
  const headers = keys.filter((key) => key !== SQUARE);
  const light = new Map(keys.map((key) => [key, lightnessOf(byKey.get(key) ?? [])]));
  const place = new Map(keys.map((key, i) => [key, i]));
  const rather = (a: string, b: string): number =>
    (light.get(b) ?? 0) - (light.get(a) ?? 0) || (place.get(a) ?? 0) - (place.get(b) ?? 0);
  const order = settingsInOrder(headers, befores, rather);
  const stages = order.map((key, place) => ({
    key,
    again: order.indexOf(key) < place,
    twice: order.lastIndexOf(key) > place,
  }));
  return [...(byKey.has(SQUARE) ? [{ key: SQUARE, again: false, twice: false }] : []), ...stages].flatMap(
    ({ key, again, twice }) => {
      const own = (byKey.get(key) ?? []).filter((task) => (again || twice ? isLate(task) === again : true));
      const [first] = own;
      const like = key === SQUARE ? PLAIN : first?.solution.tube.ends[first.end];
      return like ? [{ setting: key, like, tasks: inOrder(own) }] : [];
    },
  );
}

const PLAIN: End = { kind: 'plain' };

interface Task extends EndTask {
  readonly setting: string;
}

/**
 * How much a mistake at an end costs: the deeper its cope, from throat to long point, the more of the tube a second try takes
 * and the more line there is to go wrong on. A square cut costs nothing.
 */
function weightOf(end: EndSolution | undefined): number {
  if (!end || end.kind === 'plain') return 0;
  return end.throat.setback - end.longPoint.setback;
}

/** The end of a tube that is cut first: A where B is marked with it seated, else the one that matters less. */
function lighterEnd({ ends, tube }: TubeSolution): EndName | undefined {
  if (!tube.ends.A || !tube.ends.B) return tube.ends.A ? 'A' : tube.ends.B && 'B';
  if (isFittedUp(ends.B)) return 'A';
  return weightOf(ends.B) < weightOf(ends.A) - SAME ? 'B' : 'A';
}

/** The end of each tube that comes first in this order of work. */
export function firstEnds(stages: readonly Stage[]): ReadonlyMap<TubeSolution, EndName> {
  const first = new Map<TubeSolution, EndName>();
  for (const { tasks } of stages) {
    for (const { solution, end } of tasks) if (!first.has(solution)) first.set(solution, end);
  }
  return first;
}

/** Setbacks closer than this are the same, mm. */
const SAME = 1e-6;

function isFittedUp(end: EndSolution | undefined): boolean {
  return end?.kind === 'coped' && end.fitUp !== undefined;
}

function beforeOf({ tube, ends }: TubeSolution): readonly Before[] {
  if (!isFittedUp(ends.B) || !tube.ends.A || !tube.ends.B || tube.ends.A.kind === 'plain') return [];
  return [{ earlier: settingOf(tube.ends.A), later: settingOf(tube.ends.B) }];
}

function grouped<Item>(
  items: readonly Item[],
  keyOf: (item: Item) => string,
): ReadonlyMap<string, readonly Item[]> {
  const groups = new Map<string, Item[]>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key);
    if (group) group.push(item);
    else groups.set(key, [item]);
  }
  return groups;
}

/** Whether an end waits for its tube to be seated. */
function isLate({ solution, end }: EndTask): boolean {
  return end === 'B' && isFittedUp(solution.ends.B);
}

/** 1 for the end of its tube that rather comes first, -1 for the other. */
function lightness({ solution, end }: EndTask): number {
  if (!solution.tube.ends.A || !solution.tube.ends.B) return 0;
  return lighterEnd(solution) === end ? 1 : -1;
}

function lightnessOf(tasks: readonly Task[]): number {
  return tasks.reduce((sum, task) => sum + lightness(task), 0);
}

/** What waits for a seated end last; the first ends of tubes before second ones; then by weight, pairs kept together. */
function inOrder(tasks: readonly Task[]): readonly Task[] {
  const weigh = ({ solution, end }: Task): number => weightOf(solution.ends[end]);
  const pairs = [...grouped(tasks, ({ solution, end }) => `${end} ${solution.tube.name}`).values()];
  return pairs
    .sort(([a], [b]) => {
      if (!a || !b) return 0;
      return Number(isLate(a)) - Number(isLate(b)) || lightness(b) - lightness(a) || weigh(a) - weigh(b);
    })
    .flat();
}
