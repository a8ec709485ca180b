import type { Said } from '../../../measure/said.ts';
import type { Length } from '../../../measure/units.ts';
import { say } from '../../said.ts';
import { quantities } from '../quantities.ts';

/** What it is, at its first use on a ticket. */
export const spineExplained = say`spine (one straight line along the tube, 0°)`;

export function fileToRod(where: 'anywhere' | 'touching', units: 'mm' | 'in'): Said {
  const rod = say`a ${units === 'mm' ? say`1.6 mm` : say`1/16 in`} rod won't enter the gap`;
  return where === 'anywhere' ? say`${rod} anywhere` : say`${rod} where it touches`;
}

/** How an end is cut, after `cut end A`. */
type Edge =
  | { readonly kind: 'bevel'; readonly inner: keyof typeof innerEdge; readonly land?: Length }
  | { readonly kind: 'radial' }
  | { readonly kind: 'square' };

/** What becomes of the inside edge of an end that is bevelled, by where the dashed line lies. */
export const innerEdge = {
  unknown: say`bevel the inside edge until it seats`,
  inWaste: say`where the dashed line lies in the waste, angle the cut so the inside edge stays long, out to the dashes; elsewhere grind it back to them`,
  onBody: say`grind the inside edge back to the dashed line`,
  same: say`the inside edge ends on the same line`,
};

export function edge(how: Edge): Said {
  if (how.kind === 'radial') return say`on the solid line, the torch held radially`;
  if (how.kind === 'square') return say`on the solid line and leave the face square`;
  const { inner, land } = how;
  const left = land ? say`; leave a land of ${quantities.own(land)} where it would be a feather edge` : say``;
  return say`on the solid line; ${innerEdge[inner]}${left}`;
}
