import { readLength } from '../../measure/length.ts';
import { type Length, MM_PER_INCH, type Mm } from '../../measure/units.ts';

/** What a bare number can be the size of. */
export type SizeOf =
  | 'tube'
  | 'header'
  | 'wall'
  | 'between'
  | 'stock'
  | 'kerf'
  | 'allowance'
  | 'root'
  | 'offset'
  | 'margin'
  | 'paper'
  | 'tape';

/** From which size to which there are any: common practice, no source. A number beyond was mostly meant in another unit. */
const USUAL: Readonly<Record<SizeOf, readonly [least: Mm, most: Mm]>> = {
  tube: [6, 620],
  header: [6, 1300],
  wall: [0.5, 40],
  between: [20, 13_000],
  stock: [300, 13_000],
  kerf: [0.5, 12],
  allowance: [1, 150],
  root: [0.2, 10],
  offset: [0, Number.POSITIVE_INFINITY],
  margin: [2, Number.POSITIVE_INFINITY],
  paper: [0.03, 0.6],
  tape: [0.05, 2],
};

/** The lengths of sticks in feet (common practice, no source): in inches nobody keeps one so short for a stock. */
const FEET_OF_STOCK = /^(20|21|24)$/;

/** An eighth and finer: nobody divides a millimetre so, and every inch tape is. */
const OF_AN_INCH = /\/ ?(8|16|32|64)$/;

/** What is so long that some tell it in metres or feet. */
const LONG: readonly SizeOf[] = ['between', 'stock'];

/** Whether a length is a number without a unit that makes a size which nobody has, or is an inch's fraction in mm. Nothing is nothing in any unit. */
export function unusual({ bare, mm, wrote, unit }: Length, of: SizeOf): boolean {
  if (bare !== true || mm === 0) return false;
  if (of === 'stock' && unit === 'in' && FEET_OF_STOCK.test(wrote)) return true;
  return !isUsual(mm, of) || (unit === 'mm' && OF_AN_INCH.test(wrote));
}

/** Whether there are any of that size. */
export function isUsual(mm: Mm, of: SizeOf): boolean {
  const [least, most] = USUAL[of];
  return Math.abs(mm) >= least && Math.abs(mm) <= most;
}

/**
 * What a number without a unit can have meant besides what it is in the file's: itself in the units that make a usual size of
 * it, or where none does, itself with its point one place to either side.
 */
export function otherReadings({ wrote, unit, mm }: Length, of: SizeOf): readonly Length[] {
  const units = LONG.includes(of) ? ['mm', 'm', 'in', 'ft'] : ['mm', 'in'];
  const inOthers = units.filter((each) => each !== unit).map((each) => readLength(`${wrote}${each}`, 'mm'));
  const usual = inOthers.flatMap((read) => (read.ok && isUsual(read.value.mm, of) ? [read.value] : []));
  if (usual.length > 0) return usual;
  const moved = [mm / 10, mm * 10].filter((size) => isUsual(size, of));
  return moved.map((size) => ({ mm: size, wrote: inUnit(size, unit), unit }));
}

/** To as many places as a person writes. */
function inUnit(mm: Mm, unit: Length['unit']): string {
  return `${Number((unit === 'in' ? mm / MM_PER_INCH : mm).toPrecision(6))}${unit}`;
}
