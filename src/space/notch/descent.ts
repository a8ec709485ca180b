import { levenbergMarquardt } from 'ml-levenberg-marquardt';
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

/** From the line round the tube that suits them best: the sum of squares by which lengths and notch differ. */
export function errorOf(search: NotchSearch, rooted: Rooted): number {
  const datums = datumsOf(search, rooted);
  const datum = meanOf(datums);
  return datums.reduce((sum, each) => sum + (each - datum) ** 2, 0);
}

/** Where the lengths are counted from, by the tube's radius from the work point. */
export function datumOf(search: NotchSearch, rooted: Rooted): number {
  return meanOf(datumsOf(search, rooted));
}

/** The same by each of them. */
function datumsOf({ stations, lengths }: NotchSearch, rooted: Rooted): readonly number[] {
  return stations.map((station, i) => (lengths[i] ?? 0) + notchSetback(rooted, station).setback);
}

/** Less gained than this share of what is left is the foot of the slope. */
const FOOT = 1e-10;
const DAMPING = { first: 1e-2, least: 1e-14, most: 1e8, step: 8 };

/** The least squares next below a place, by Levenberg and Marquardt's steps, each taken only if it leads down. */
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

const LEAST_ANGLE = 0.02;

/** The library goes on from a step that led up: so it is asked for one at a time. */
function stepped(way: Way, values: readonly number[], damping: number): { values: number[]; error: number } {
  const { stations, lengths } = way.search;
  const bounds = (angle: number, other: number): number[] =>
    way.moved.map((name) => (name === 'angle' ? angle : other));
  const { parameterValues, parameterError } = levenbergMarquardt(
    { x: [...stations], y: [...lengths] },
    (at: number[]) => lengthsOf(way, at),
    {
      initialValues: [...values],
      minValues: bounds(LEAST_ANGLE, -1e6),
      maxValues: bounds(Math.PI - LEAST_ANGLE, 1e6),
      damping,
      maxIterations: 1,
      errorTolerance: 0,
      jacobianFunction: (at: number[]) => slopesOf(way, at),
    },
  );
  return { values: parameterValues, error: parameterError };
}

function lengthsOf(way: Way, values: readonly number[]): (station: Radians) => number {
  const rooted = rootedAt(way, values);
  const datum = datumOf(way.search, rooted);
  return (station) => datum - notchSetback(rooted, station).setback;
}

/** The line that lengths are counted from goes with the values. */
function slopesOf(way: Way, values: readonly number[]): (station: Radians) => number[] {
  const rooted = rootedAt(way, values);
  const at = (station: Radians): number[] => slopesBy(way, rooted, notchSetback(rooted, station).slopes);
  const all = way.search.stations.map(at);
  const means = way.moved.map((_, i) => meanOf(all.map((slopes) => slopes[i] ?? 0)));
  return (station) => at(station).map((slope, i) => (means[i] ?? 0) - slope);
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
