import type { Said } from '../../../measure/said.ts';
import type { Length, Mm } from '../../../measure/units.ts';
import { say } from '../../said.ts';
import { quantities } from '../quantities.ts';

/** What it is, at its first use on a ticket. */
export const spineExplained = say`spine (one straight line along the tube, 0°)`;

export const fileToRod = say`file until a ${quantities.rod} rod won't enter the gap anywhere`;

/** How an end is cut, after `cut end A`. Off: how far it would stand off if it were cut on the other line, where that counts. */
type Edge =
  | { readonly kind: 'bevel'; readonly inner: keyof typeof innerEdge; readonly land?: Length }
  | { readonly kind: 'radial' }
  | { readonly kind: 'square'; readonly off?: Mm };

/** What becomes of the inside edge of an end that is bevelled, by where the dashed line lies. */
export const innerEdge = {
  unknown: say`bevel the inside edge until it seats`,
  inWaste: say`where the dashed line lies in the waste, angle the cut so the inside edge stays long, out to the dashes; elsewhere grind it back to them`,
  onBody: say`grind the inside edge back to the dashed line`,
  same: say`the inside edge ends on the same line`,
};

export function edge(how: Edge, units: 'mm' | 'in'): Said {
  if (how.kind === 'radial') return say`on the solid line, the torch held radially`;
  if (how.kind === 'bevel') {
    const { inner, land } = how;
    const left = land
      ? say`; leave a land of ${quantities.own(land)} where it would be a feather edge`
      : say``;
    return say`on the solid line; ${innerEdge[inner]}${left}`;
  }
  const off = how.off === undefined ? undefined : quantities.one(how.off, units);
  return say`on the solid line and leave the face square${off ? say`: cut on the dashed line it would stand off ${off}` : say``}`;
}
