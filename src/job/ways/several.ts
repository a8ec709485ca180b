import type { Angle, Length } from '../../measure/units.ts';
import { complain, type Spot } from '../text/desk.ts';
import { type Comparison, disagreement, readingsInWords } from './agreement.ts';

/**
 * The first of several readings of one value, with all of them noted. Where one differs by too much from the first it
 * is told, and there is no value. One that was written as itself has nothing to note.
 */
export function agreed<Value extends Angle | Length>(
  spot: Spot,
  readings: readonly [Value, ...Value[]] | undefined,
  comparison: Comparison<Value>,
): Value | undefined {
  if (readings === undefined) return undefined;
  const [first, ...others] = readings;
  for (const other of others) {
    const apart = disagreement(first, other, comparison, spot.desk.words);
    if (apart) return complain(spot, 'readings-differ', apart);
  }
  if (others.length === 0 && !first.byName) return first;
  return { ...first, readings: readingsInWords(readings, comparison, spot.desk.words) };
}
