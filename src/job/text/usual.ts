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
  | 'offset';

/** From which size to which there are any: common practice, no source. A number beyond was mostly meant in another unit. */
const USUAL: Readonly<Record<SizeOf, readonly [least: Mm, most: Mm]>> = {
  tube: [6, 620],
  header: [6, 1300],
  wall: [0.5, 40],
  between: [20, 13_000],
  stock: [300, 13_000],
  kerf: [0.5, 12],
  allowance: [1, 150],
  root: [0.2, Number.POSITIVE_INFINITY],
  offset: [0, Number.POSITIVE_INFINITY],
};

/** An eighth and finer: nobody divides a millimetre so, and every inch tape is. */
const OF_AN_INCH = /\/ ?(8|16|32|64)$/;

/** Whether a length is a number without a unit that makes a size which nobody has, or is an inch's fraction in mm. Nothing is nothing in any unit. */
export function unusual({ bare, mm, wrote, unit }: Length, of: SizeOf): boolean {
  const [least, most] = USUAL[of];
  const size = Math.abs(mm);
  if (bare !== true || size === 0) return false;
  return size < least || size > most || (unit === 'mm' && OF_AN_INCH.test(wrote));
}

/** The same number in the other of the two units of a file. */
export function inOtherUnit({ mm, wrote, unit }: Length): Length {
  return unit === 'in'
    ? { mm: mm / MM_PER_INCH, wrote, unit: 'mm' }
    : { mm: mm * MM_PER_INCH, wrote, unit: 'in' };
}
