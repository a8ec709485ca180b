import type { Radians } from '../../measure/units.ts';
import { writeAngle } from '../../measure/write.ts';

/** A twist with its side in place of a sign, B up: `35° left`; on one line or opposite there is no side. */
export function twistInWords(twist: Radians): string {
  const turned = Math.abs(twist);
  if (turned < 1e-9 || Math.PI - turned < 1e-9) return writeAngle(turned);
  return `${writeAngle(turned)} ${twist > 0 ? 'right' : 'left'}`;
}
