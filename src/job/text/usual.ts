import { type Length, MM_PER_INCH, type Mm } from '../../measure/units.ts';

/** What a bare number can be the size of. */
export type SizeOf = 'tube' | 'header' | 'wall' | 'between' | 'stock';

/** From which size to which there are any: common practice, no source. A number beyond was mostly meant in another unit. */
const USUAL: Readonly<Record<SizeOf, readonly [least: Mm, most: Mm]>> = {
  tube: [6, 620],
  header: [6, 1300],
  wall: [0.5, 40],
  between: [20, 13_000],
  stock: [300, 13_000],
};

/** Whether a length is a number without a unit that makes a size which nobody has. */
export function unusual({ bare, mm }: Length, of: SizeOf): boolean {
  const [least, most] = USUAL[of];
  return bare === true && (mm < least || mm > most);
}

/** The same number in the other of the two units of a file. */
export function inOtherUnit({ mm, wrote, unit }: Length): Length {
  return unit === 'in'
    ? { mm: mm / MM_PER_INCH, wrote, unit: 'mm' }
    : { mm: mm * MM_PER_INCH, wrote, unit: 'in' };
}
