import type { Mm } from '../../measure/units.ts';
import { descended, type Fit, type NotchSearch } from './descent.ts';
import type { Notch } from './notch.ts';
import { startsOf } from './starts.ts';

/** Lengths in mm, at equal stations from the spine. */
export function searchOf(lengths: readonly Mm[], tubeRadius: Mm, given: Partial<Notch>): NotchSearch {
  const stations = lengths.map((_, i) => (i * 2 * Math.PI) / lengths.length);
  return { stations, lengths: lengths.map((length) => length / tubeRadius), tubeRadius, given };
}

export function soughtOf({ given }: NotchSearch): readonly (keyof Notch)[] {
  return (['angle', 'clock', 'offset', 'radius'] as const).filter((name) => given[name] === undefined);
}

/** How many lengths there are more than values to find: those that are sought, and where the lengths are counted from. */
export function freedomOf(search: NotchSearch): number {
  return search.lengths.length - soughtOf(search).length - 1;
}

/** The standard deviation of the lengths, in mm, from a fit. */
export function scatterOf(search: NotchSearch, { error }: Fit): Mm {
  return search.tubeRadius * Math.sqrt(error / freedomOf(search));
}

const STARTS = { count: 40, rounds: 12 };
const LAST = { count: 6, rounds: 100 };

/** Where the likeliest starts lead to, best first. */
export function fitsOf(search: NotchSearch): readonly [Fit, ...Fit[]] {
  const rough = bestFirst(
    startsOf(search, STARTS.count).map((start) => descended(search, start, STARTS.rounds)),
  );
  const last = rough.slice(0, LAST.count).map(({ rooted }) => descended(search, rooted, LAST.rounds));
  const [best, ...others] = bestFirst([...last, ...pastTheEdge(search, bestFirst(last)[0])]);
  if (best === undefined) throw new Error('there are starts for every search');
  return [best, ...others];
}

/**
 * From a fit whose header ends just short of the tube's side, to the other side of that edge, and back. A station that lies on the edge
 * tells nothing of how far short it is, so that no way down leads over it.
 */
function pastTheEdge(search: NotchSearch, fit: Fit | undefined): readonly Fit[] {
  if (fit === undefined) return [];
  const { ahead, behind, ...turns } = fit.rooted;
  const over = [
    { ...turns, ahead: -ahead, behind },
    { ...turns, ahead, behind: -behind },
  ];
  return over.map((start) => descended(search, start, LAST.rounds));
}

function bestFirst(fits: readonly Fit[]): Fit[] {
  return fits.toSorted((a, b) => a.error - b.error);
}
