import { type Reading, refused, taken } from './reading.ts';
import { BIRMINGHAM_THOUSANDTHS } from './sizes/gauge.ts';
import { plainSpelling } from './spelling.ts';
import type { Length } from './units.ts';

const NUMBERS = [...BIRMINGHAM_THOUSANDTHS.keys()];

/**
 * Reads a wall named by its gauge: `16 BWG`, `16BWG`, `BWG 16`. Undefined where the text names no gauge at all, so
 * that it may be a length. A gauge that is not said to be Birmingham is refused. `unit` is what the rest of the job
 * is written in. Does not throw.
 */
export function readGauge(text: string, unit: 'mm' | 'in'): Reading<Length> | undefined {
  const read = text.trim();
  const words = gaugeWords(plainSpelling(read).toLowerCase());
  if (words === undefined) return undefined;
  const { number, kind } = words;
  if (kind !== 'bwg') return refused(read, { kind: 'which-gauge', number });
  const thousandths = BIRMINGHAM_THOUSANDTHS.get(Number(number));
  if (thousandths === undefined || !/^\d+$/.test(number)) return notInTable(read, Number(number));
  // The inch is 127/5 mm, so that the division is the only rounding.
  return taken({ mm: (thousandths * 127) / 5000, wrote: read, unit, byName: true });
}

function gaugeWords(plain: string): { readonly number: string; readonly kind: string } | undefined {
  const words =
    /^(?:([\d.,]{1,9}) ?-?)?(b\.?w\.?g|s\.?w\.?g|a\.?w\.?g|gauge|gage|ga|g)\.?(?: ?#?([\d.,]{1,9}))?$/.exec(
      plain,
    );
  const [, before, name, behind] = words ?? [];
  if (name === undefined || (before === undefined) === (behind === undefined)) return undefined;
  return { number: before ?? behind ?? '', kind: name.replaceAll('.', '') };
}

function notInTable(read: string, number: number): Reading<Length> {
  const far = (each: number) => Math.abs(each - (Number.isFinite(number) ? number : 0));
  const nearest = NUMBERS.reduce((near, each) => (far(each) < far(near) ? each : near));
  const [least, most] = [Math.min(...NUMBERS), Math.max(...NUMBERS)];
  return refused(read, { kind: 'gauge-not-known', least, most, nearest });
}
