import { type Angle, type Length, MM_PER_INCH, type Mm, radians } from '../../measure/units.ts';
import { angleAsWritten, lengthAsWritten, writeAngle, writeLength } from '../../measure/write.ts';
import type { Objection } from '../../words/said.ts';

/** How readings of one value are compared. */
export interface Comparison<Value> {
  /** What was read, and what it came to where that is not the same. */
  say(value: Value): string;
  /** How much more than the other it is. */
  more(value: Value, other: Value): number;
  /** A difference without its sign. */
  write(difference: number): string;
  /** A larger difference is an error. */
  readonly most: number;
}

/** A bevel and an eye tell a degree. */
const ONE_DEGREE = radians(1);

/** Readings of an angle agree within a degree; of a station all the way round makes no odds. */
export function comparedAngles(around: boolean): Comparison<Angle> {
  return {
    say: (angle) =>
      angle.byName ? `${angle.wrote}, that is ${writeAngle(angle.rad)}` : angleAsWritten(angle),
    more: (value, other) => {
      const more = value.rad - other.rad;
      return around ? more - 2 * Math.PI * Math.round(more / (2 * Math.PI)) : more;
    },
    write: writeAngle,
    most: ONE_DEGREE,
  };
}

/** Readings of a length agree within 1/16 in, or 1.5 mm where the job is in mm: what a tape and an eye tell. */
export function comparedLengths(unit: 'mm' | 'in'): Comparison<Length> {
  return {
    say: (length) =>
      length.byName ? `${length.wrote}, that is ${writeLength(length.mm, unit)}` : lengthAsWritten(length),
    more: (value, other) => value.mm - other.mm,
    ...lengthLimit(unit),
  };
}

export function lengthLimit(unit: 'mm' | 'in'): { write(difference: Mm): string; readonly most: Mm } {
  return { write: (mm) => writeLength(mm, unit), most: unit === 'in' ? MM_PER_INCH / 16 : 1.5 };
}

const SAME = 1e-9;

/** Why two readings of one value can't both be right; undefined where they agree. */
export function disagreement<Value>(
  first: Value,
  other: Value,
  { say, more, write, most }: Comparison<Value>,
): Objection | undefined {
  const apart = Math.abs(more(other, first));
  if (apart <= most + SAME) return undefined;
  const why = `${say(first)} and ${say(other)} differ by ${write(apart)}; ${write(most)} is the most for one value`;
  return { why, instead: 'both measured again, and those that agree' };
}

/** Each reading in words, each after the first with how it differs from it. The first is the one that is taken. */
export function readingsInWords<Value>(
  [first, ...others]: readonly [Value, ...Value[]],
  { say, more, write }: Comparison<Value>,
): readonly string[] {
  const differs = (other: Value): string => {
    const apart = more(other, first);
    if (Math.abs(apart) <= SAME) return 'the same';
    return `${write(Math.abs(apart))} ${apart > 0 ? 'more' : 'less'}`;
  };
  const taken = others.length > 0 ? [`${say(first)}; this one is taken`] : [say(first)];
  return [...taken, ...others.map((other) => `${say(other)}; ${differs(other)}`)];
}
