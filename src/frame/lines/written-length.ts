import { MM_PER_INCH, type Mm } from '../../measure/units.ts';
import type { Vector } from '../../space/vector.ts';

/** A length to 0.001 mm, or to 0.00001 in: as it is written, and what that is when it is read again. */
export function writtenLength(mm: Mm, unit: 'mm' | 'in'): { readonly mm: Mm; readonly text: string } {
  const steps = unit === 'mm' ? Math.round(mm * 1000) : Math.round((mm / MM_PER_INCH) * 100_000);
  // Each a division of two whole numbers, whose only rounding is the last: the reader's is the same.
  return unit === 'mm'
    ? { mm: steps / 1000 + 0, text: `${steps / 1000 + 0}` }
    : { mm: (steps * 127) / 500_000 + 0, text: `${steps / 100_000 + 0}` };
}

export function writtenPlace(place: Vector, unit: 'mm' | 'in'): Vector {
  const [x, y, z] = place.map((mm) => writtenLength(mm, unit).mm);
  return [x ?? 0, y ?? 0, z ?? 0];
}
