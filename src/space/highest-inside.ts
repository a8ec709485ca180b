import type { WallEntry } from './solid.ts';

/** A wall is looked through at so many places: on a surface that a tube can land on no two tops lie between neighbours. */
const LOOKS = 9;

/**
 * The places of the straight way through a wall, 0 to 1, of which one is the deepest between its ends: where the entry
 * ceases to rise, and on both sides of where a line first passes by. `dx` and `dy` are the whole way, in mm.
 */
export function topsThrough(
  entry: (share: number) => WallEntry | undefined,
  dx: number,
  dy: number,
): readonly number[] {
  const rise = (share: number): number | undefined => {
    const met = entry(share);
    return met && -(met.nx * dx + met.ny * dy) / met.nz;
  };
  const tops: number[] = [];
  let before = 0;
  let atBefore = rise(0);
  for (let i = 1; i < LOOKS; i++) {
    const here = i / (LOOKS - 1);
    const atHere = rise(here);
    tops.push(...topsBetween(rise, before, here, atBefore, atHere));
    before = here;
    atBefore = atHere;
  }
  return tops;
}

type Rise = (share: number) => number | undefined;

function topsBetween(
  rise: Rise,
  low: number,
  high: number,
  atLow: number | undefined,
  atHigh: number | undefined,
): readonly number[] {
  if (atLow === undefined && atHigh === undefined) return [];
  if (atLow !== undefined && atHigh !== undefined) {
    return atLow > 0 && atHigh < 0 ? topBetween(rise, low, high, atLow, atHigh) : [];
  }
  const [met, missed] = atHigh === undefined ? limit(rise, low, high) : limit(rise, high, low);
  const beside = rise(met);
  const between = atHigh === undefined ? [low, met, atLow, beside] : [met, high, beside, atHigh];
  const [from = low, to = high, atFrom, atTo] = between;
  const top = atFrom !== undefined && atTo !== undefined && atFrom > 0 && atTo < 0;
  return [missed, met, ...(top ? topBetween(rise, from, to, atFrom, atTo) : [])];
}

/** The last place that is met and the first that is missed, from one that is met to one that is not. */
function limit(rise: Rise, from: number, to: number): readonly [met: number, missed: number] {
  let met = from;
  let missed = to;
  while (Math.abs(missed - met) > ROUNDING) {
    const middle = (met + missed) / 2;
    if (rise(middle) === undefined) missed = middle;
    else met = middle;
  }
  return [met, missed];
}

/** Whoever asks for a place again comes to other last bits, and has to find the same on both sides. */
const ROUNDING = 1e-11;

/** Closes in on where the rise comes to nothing, or leaps below it: both sides of what is left. */
function topBetween(rise: Rise, from: number, to: number, atFrom: number, atTo: number): readonly number[] {
  let [low, high, atLow, atHigh] = [from, to, atFrom, atTo];
  for (let i = 0; high - low > CLOSE; i++) {
    const secant = (low * atHigh - high * atLow) / (atHigh - atLow);
    const margin = (high - low) / 64;
    const place =
      i % 3 === 2 || !Number.isFinite(secant)
        ? (low + high) / 2
        : Math.min(high - margin, Math.max(low + margin, secant));
    const at = rise(place) ?? 0;
    if (at > 0) [low, atLow] = [place, at];
    else [high, atHigh] = [place, at];
  }
  return [low, high];
}

/** Nearer to a top nothing is gained: what is lost is less than the square of this. */
const CLOSE = 1e-8;
