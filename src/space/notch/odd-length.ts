import type { Mm } from '../../measure/units.ts';
import { datumOf, type NotchSearch } from './descent.ts';
import { fitsOf, scatterOf, searchOf } from './fits.ts';
import { type Notch, notchSetback, type Rooted } from './notch.ts';

/** One length that does not lie with the others. */
export interface OddLength {
  /** Which, from 0. */
  readonly place: number;
  /** What the others make of it. */
  readonly instead: Mm;
}

/** Among few lengths the odd one draws the notch to itself, and so all but the best may be it; among many it is one of the farthest off. */
const TRIED = { least: 3, lengths: 120 };

/** Without it the lengths lie so many times closer to a notch, and so many times closer than without any other. */
const CLOSER = { thanWithIt: 4, thanWithoutAnother: 2 };

/** The one length without which all others are those of a notch; undefined where there is none. Lengths as of `notchFrom`. */
export function oddLengthOf(
  lengths: readonly Mm[],
  tubeRadius: Mm,
  given: Partial<Notch>,
): OddLength | undefined {
  const search = searchOf(lengths, tubeRadius, given);
  const [whole] = fitsOf(search);
  const [first, second] = farthest(search, whole.rooted)
    .map((place) => without(search, place))
    .sort((a, b) => a.scatter - b.scatter);
  if (first === undefined || second === undefined) return undefined;
  const isOdd =
    first.scatter * CLOSER.thanWithIt < scatterOf(search, whole) &&
    first.scatter * CLOSER.thanWithoutAnother < second.scatter;
  return isOdd ? first : undefined;
}

function farthest(search: NotchSearch, rooted: Rooted): number[] {
  const datum = datumOf(search, rooted);
  const off = search.lengths.map((length, i) => Math.abs(datum - setback(search, rooted, i) - length));
  const tried = Math.max(TRIED.least, Math.round(TRIED.lengths / off.length));
  return [...off.keys()].sort((a, b) => (off[b] ?? 0) - (off[a] ?? 0)).slice(0, tried);
}

function without(search: NotchSearch, place: number): OddLength & { readonly scatter: Mm } {
  const others = <Value>(values: readonly Value[]): Value[] => values.filter((_, i) => i !== place);
  const rest = { ...search, stations: others(search.stations), lengths: others(search.lengths) };
  const [fit] = fitsOf(rest);
  const instead = search.tubeRadius * (datumOf(rest, fit.rooted) - setback(search, fit.rooted, place));
  return { place, instead, scatter: scatterOf(rest, fit) };
}

function setback({ stations }: NotchSearch, rooted: Rooted, i: number): number {
  return notchSetback(rooted, stations[i] ?? 0).setback;
}
