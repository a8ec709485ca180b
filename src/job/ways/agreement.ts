import type { Said } from '../../measure/said.ts';
import { type Angle, type Length, MM_PER_INCH, type Mm, radians } from '../../measure/units.ts';
import type { Language } from '../../words/language.ts';
import { asWritten, type Objection } from '../../words/said.ts';

/** How readings of one value are compared. */
export interface Comparison<Value> {
  /** What was read, and what it came to where that is not the same. */
  say(value: Value): Said;
  /** How much more than the other it is. */
  more(value: Value, other: Value): number;
  /** A difference without its sign. */
  write(difference: number): Said;
  /** A larger difference is an error. */
  readonly most: number;
}

/** A bevel and an eye tell a degree. */
const ONE_DEGREE = radians(1);

/** Readings of an angle agree within a degree; of a station all the way round makes no odds. */
export function comparedAngles(around: boolean, { quantities, job: { ways } }: Language): Comparison<Angle> {
  return {
    say: (angle) =>
      angle.byName
        ? ways.cameTo(asWritten(angle.wrote), quantities.angle(angle.rad))
        : quantities.writtenAngle(angle),
    more: (value, other) => {
      const more = value.rad - other.rad;
      return around ? more - 2 * Math.PI * Math.round(more / (2 * Math.PI)) : more;
    },
    write: quantities.angle,
    most: ONE_DEGREE,
  };
}

/** Readings of a length agree within 1/16 in, or 1.5 mm where the job is in mm: what a tape and an eye tell. */
export function comparedLengths(unit: 'mm' | 'in', words: Language): Comparison<Length> {
  const { quantities, job } = words;
  return {
    say: (length) =>
      length.byName
        ? job.ways.cameTo(asWritten(length.wrote), quantities.inOne(length.mm, unit))
        : quantities.own(length),
    more: (value, other) => value.mm - other.mm,
    ...lengthLimit(unit, words),
  };
}

export function lengthLimit(
  unit: 'mm' | 'in',
  { quantities }: Language,
): { write(difference: Mm): Said; readonly most: Mm } {
  return { write: (mm) => quantities.inOne(mm, unit), most: unit === 'in' ? MM_PER_INCH / 16 : 1.5 };
}

const SAME = 1e-9;

/** Why two readings of one value can't both be right; undefined where they agree. */
export function disagreement<Value>(
  first: Value,
  other: Value,
  { say, more, write, most }: Comparison<Value>,
  { job: { ways } }: Language,
): Objection | undefined {
  const apart = Math.abs(more(other, first));
  if (apart <= most + SAME) return undefined;
  return ways.differ(say(first), say(other), write(apart), write(most));
}

/** Each reading in words, each after the first with how it differs from it. The first is the one that is taken. */
export function readingsInWords<Value>(
  [first, ...others]: readonly [Value, ...Value[]],
  { say, more, write }: Comparison<Value>,
  { job: { ways } }: Language,
): readonly Said[] {
  const differs = (other: Value): Said => {
    const apart = more(other, first);
    if (Math.abs(apart) <= SAME) return ways.same;
    return ways.apart(write(Math.abs(apart)), apart > 0 ? 'more' : 'less');
  };
  const taken = others.length > 0 ? ways.isTaken(say(first)) : say(first);
  return [taken, ...others.map((other) => ways.comparesAs(say(other), differs(other)))];
}
