import type { Mm, Radians } from '../../measure/units.ts';
import { type Notch, notchSetback, type Rooted, type Slopes, signedRoot, signedSquare } from './notch.ts';

/** Lengths along a tube, by its radius, at stations from its spine; and what is known of the notch that they end at. */
export interface NotchSearch {
  readonly stations: readonly Radians[];
  readonly lengths: readonly number[];
  readonly tubeRadius: Mm;
  readonly given: Partial<Notch>;
}

export interface Fit {
  readonly rooted: Rooted;
  /** The sum of squares that is left, by the tube's radius squared. */
  readonly error: number;
}

/** The sum of squares by which lengths and notch differ. */
export function errorOf(search: NotchSearch, rooted: Rooted): number {
  return restsOf(search, rooted).reduce((sum, rest) => sum + rest ** 2, 0);
}

/** By how much each length is longer than the notch has it, from the line round the tube that suits them best. */
export function restsOf(search: NotchSearch, rooted: Rooted): readonly number[] {
  const datums = datumsOf(search, rooted);
  const datum = meanOf(datums);
  return datums.map((each) => each - datum);
}

/** Where each length puts the line that they are counted from. */
export function datumsOf({ stations, lengths }: NotchSearch, rooted: Rooted): readonly number[] {
  return stations.map((station, i) => (lengths[i] ?? 0) + notchSetback(rooted, station).setback);
}

/** Less gained than this share of what is left is the foot of the slope. */
const FOOT = 1e-10;
const DAMPING = { first: 1e-2, least: 1e-14, most: 1e8, step: 8 };

/** The least squares next below a place, by steps that are each taken only if they lead down. */
export function descended(search: NotchSearch, from: Rooted, rounds: number): Fit {
  const way = wayFrom(search, from);
  let values = way.moved.map((name) => from[name]);
  let error = errorOf(search, rootedAt(way, values));
  let damping = values.length === 0 ? Number.POSITIVE_INFINITY : DAMPING.first;
  for (let i = 0; i < rounds && damping < DAMPING.most; i++) {
    const next = stepped(way, values, damping);
    if (!(next.error < error)) {
      damping *= DAMPING.step;
      continue;
    }
    const gain = error - next.error;
    ({ values, error } = next);
    if (gain < FOOT * error) break;
    damping = Math.max(damping / DAMPING.step, DAMPING.least);
  }
  return { rooted: rootedAt(way, values), error };
}

/** What a way down moves; `follows` goes with the other side where one size of two is given. */
interface Way {
  readonly search: NotchSearch;
  readonly from: Rooted;
  readonly moved: readonly (keyof Rooted)[];
  readonly follows?: 'ahead' | 'behind';
}

/** Of two sides that go together that moves which the header reaches less far beyond: in it the line is smooth. */
function wayFrom(search: NotchSearch, from: Rooted): Way {
  const { given } = search;
  const turns = (['angle', 'clock'] as const).filter((name) => given[name] === undefined);
  const sizes = [given.offset, given.radius].filter((size) => size !== undefined).length;
  if (sizes === 0) return { search, from, moved: [...turns, 'ahead', 'behind'] };
  if (sizes === 2) return { search, from, moved: turns };
  const [moves, follows] =
    from.ahead < from.behind ? (['ahead', 'behind'] as const) : (['behind', 'ahead'] as const);
  return { search, from, moved: [...turns, moves], follows };
}

function rootedAt({ search, from, moved, follows }: Way, values: readonly number[]): Rooted {
  const { given, tubeRadius } = search;
  const at = (name: keyof Rooted): number => values[moved.indexOf(name)] ?? from[name];
  const rooted = { angle: at('angle'), clock: at('clock'), ahead: at('ahead'), behind: at('behind') };
  if (follows === undefined) return rooted;
  const leads = signedSquare(rooted[follows === 'ahead' ? 'behind' : 'ahead']);
  const apart = ((follows === 'ahead' ? 2 : -2) * (given.offset ?? 0)) / tubeRadius;
  const square = given.radius === undefined ? leads + apart : 2 * (given.radius / tubeRadius - 1) - leads;
  return { ...rooted, [follows]: signedRoot(square) };
}

/** How the setback hangs on each value that is moved. */
function slopesBy({ search, moved, follows }: Way, rooted: Rooted, slopes: Slopes): number[] {
  const withIt = search.given.radius === undefined ? 1 : -1;
  const share = follows === undefined ? 0 : withIt;
  return moved.map((name) => {
    if (name === 'angle' || name === 'clock') return slopes[name];
    const [own, other] = name === 'ahead' ? [slopes.over, slopes.under] : [slopes.under, slopes.over];
    return 2 * Math.abs(rooted[name]) * (own + share * other);
  });
}

/** What values can be: an angle is one, a root is no larger than any that is looked for. */
function bounded(name: keyof Rooted, value: number): number {
  const [least, most] = name === 'angle' ? [LEAST_ANGLE, Math.PI - LEAST_ANGLE] : [-1e6, 1e6];
  return Math.min(Math.max(value, least), most);
}

const LEAST_ANGLE = 0.02;

/** Where a step leads, by the damped normal equations (Levenberg 1944, Marquardt 1963). */
function stepped(way: Way, values: readonly number[], damping: number): { values: number[]; error: number } {
  const { search, moved } = way;
  const rooted = rootedAt(way, values);
  const rests = restsOf(search, rooted);
  const slopes = slopesOf(way, rooted);
  const equations = slopes.map((slope, i) => [
    ...slopes.map((other, j) => productOf(slope, other) + (i === j ? damping : 0)),
    productOf(slope, rests),
  ]);
  const step = solved(equations);
  const next = moved.map((name, i) => bounded(name, (values[i] ?? 0) + (step[i] ?? 0)));
  return { values: next, error: errorOf(search, rootedAt(way, next)) };
}

/** How lengths hang on each value that is moved, station by station. The line that they are counted from goes with the values. */
function slopesOf(way: Way, rooted: Rooted): readonly (readonly number[])[] {
  const all = way.search.stations.map((station) =>
    slopesBy(way, rooted, notchSetback(rooted, station).slopes),
  );
  return way.moved.map((_, i) => {
    const slopes = all.map((each) => each[i] ?? 0);
    const mean = meanOf(slopes);
    return slopes.map((slope) => mean - slope);
  });
}

/** The unknowns of as many equations, their right side last, by elimination: these are positive definite, and need no pivoting. */
function solved(equations: readonly (readonly number[])[]): readonly number[] {
  const [[pivot = 1, ...first] = [], ...others] = equations;
  if (first.length === 0) return [];
  const rest = solved(
    others.map(([lead = 0, ...other]) => other.map((each, i) => each - (lead / pivot) * (first[i] ?? 0))),
  );
  return [((first.at(-1) ?? 0) - productOf(rest, first)) / pivot, ...rest];
}

function productOf(one: readonly number[], other: readonly number[]): number {
  return one.reduce((sum, each, i) => sum + each * (other[i] ?? 0), 0);
}

export function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
