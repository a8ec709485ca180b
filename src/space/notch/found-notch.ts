import type { Mm, Radians } from '../../measure/units.ts';
import { wrapStation } from '../section.ts';
import type { Fit, NotchSearch } from './descent.ts';
import { fitsOf, freedomOf, scatterOf, searchOf, soughtOf } from './fits.ts';
import { type Notch, notchOf } from './notch.ts';
import { profileBound, studentAt95 } from './within.ts';

/** A notch found from lengths. */
export interface FoundNotch extends Notch {
  /** How far each value that was not given may be off, with 95 % confidence; Infinity where the lengths tell nothing of it. */
  readonly within: Partial<Notch>;
  /** The standard deviation of the lengths from it. */
  readonly scatter: Mm;
}

/** Below this, by the tube's radius squared, a sum of squares is the rounding of numbers. */
const ROUNDING = 1e-22;

/**
 * The notch whose outside line fits lengths best. `lengths`, in mm, are measured at equal stations from the spine, rightwards, along the
 * outside from one line square round the body to the cut's edge, wherever that line lies; more of them than values sought and one.
 * What is `given` stays. Of equal notches the one with angle up to 90 degrees, and there clock under 180.
 */
export function notchFrom(lengths: readonly Mm[], tubeRadius: Mm, given: Partial<Notch>): FoundNotch {
  const search = searchOf(lengths, tubeRadius, given);
  const [best, ...others] = fitsOf(search);
  return {
    ...folded(notchOf(best.rooted, tubeRadius), given),
    within: withinOf(search, best, others),
    scatter: scatterOf(search, best),
  };
}

/** Of each value that is sought the farther of its two bounds; and any other fit as likely lies within. */
function withinOf(search: NotchSearch, best: Fit, others: readonly Fit[]): Partial<Notch> {
  const free = freedomOf(search);
  const limit = best.error + (Math.max(best.error, ROUNDING) * studentAt95(free) ** 2) / free;
  const found = notchOf(best.rooted, search.tubeRadius);
  const likely = others
    .filter(({ error }) => error < limit)
    .map(({ rooted }) => nearTo(found, notchOf(rooted, search.tubeRadius), search.given));
  return Object.fromEntries(
    soughtOf(search).map((name) => {
      const bounds = ([1, -1] as const).map((side) => profileBound(search, best, name, side, limit));
      return [name, Math.max(...bounds, ...likely.map((other) => Math.abs(other[name] - found[name])))];
    }),
  );
}

/** Whether the same joint can be read by its other angle too. */
function hasTwin({ clock, angle, offset = 0 }: Partial<Notch>): boolean {
  return clock === undefined && offset === 0 && (angle === undefined || isSquare(angle));
}

function isSquare(angle: Radians): boolean {
  return Math.abs(angle - Math.PI / 2) < 1e-9;
}

/** By its acute angle, and the clock in a turn, or where the two readings have one angle in half a turn; a clock that is given stays. */
function folded(notch: Notch, given: Partial<Notch>): Notch {
  if (given.clock !== undefined) return notch;
  const at = { ...notch, clock: home(notch.clock) };
  if (!hasTwin(given)) return at;
  const other = twinOf(at);
  if (isSquare(at.angle)) return at.clock < Math.PI ? at : { ...other, clock: home(other.clock) };
  return at.angle < Math.PI / 2 ? at : { ...other, clock: home(other.clock) };
}

function twinOf({ angle, clock, offset, radius }: Notch): Notch {
  return { angle: Math.PI - angle, clock: clock + Math.PI, offset: 0 - offset, radius };
}

/** A notch as it is read nearest to another one. */
function nearTo(other: Notch, notch: Notch, given: Partial<Notch>): Notch {
  const turn = 2 * Math.PI;
  const near = (each: Notch): Notch => ({
    ...each,
    clock: each.clock + turn * Math.round((other.clock - each.clock) / turn),
  });
  const readings = (hasTwin(given) ? [notch, twinOf(notch)] : [notch]).map(near);
  return readings.reduce((a, b) =>
    Math.abs(b.clock - other.clock) < Math.abs(a.clock - other.clock) ? b : a,
  );
}

function home(clock: Radians): Radians {
  return wrapStation(clock, 2 * Math.PI);
}
