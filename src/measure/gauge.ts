import { type Reading, refused, taken } from './misreading.ts';
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
  if (kind !== 'bwg') return refused(read, UNCLEAR, `${number} BWG, if it is a tube's, or the decimal`);
  const thousandths = BIRMINGHAM_THOUSANDTHS.get(Number(number));
  if (thousandths === undefined || !/^\d+$/.test(number)) return notInTable(read, Number(number));
  // The inch is 127/5 mm, so that the division is the only rounding.
  return taken({ mm: (thousandths * 127) / 5000, wrote: read, unit, byName: true });
}

const UNCLEAR = 'which gauge is meant is not known: Birmingham (tube), standard wire and sheet gauges differ';

function gaugeWords(plain: string): { readonly number: string; readonly kind: string } | undefined {
  const kind = String.raw`(b\.?w\.?g|s\.?w\.?g|a\.?w\.?g|gauge|gage|ga|g)\.?`;
  const after = new RegExp(`^([\\d.,]{1,9}) ?-?${kind}$`).exec(plain);
  const before = new RegExp(`^${kind} ?#?([\\d.,]{1,9})$`).exec(plain);
  const [number, name] = after ? [after[1], after[2]] : [before?.[2], before?.[1]];
  return number === undefined || name === undefined ? undefined : { number, kind: name.replaceAll('.', '') };
}

function notInTable(read: string, number: number): Reading<Length> {
  const far = (each: number) => Math.abs(each - (Number.isFinite(number) ? number : 0));
  const [nearest] = [...NUMBERS].sort((a, b) => far(a) - far(b));
  const range = `${Math.min(...NUMBERS)} to ${Math.max(...NUMBERS)} BWG`;
  return refused(read, `the table here has ${range}, whole numbers`, `${nearest} BWG, or the decimal`);
}
