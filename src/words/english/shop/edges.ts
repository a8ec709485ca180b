import type { Said } from '../../../measure/said.ts';
import type { Length, Mm } from '../../../measure/units.ts';
import { say } from '../../said.ts';
import { quantities } from '../quantities.ts';

/** How an end is cut, after `cut end A`. Off: how far it would stand off if it were cut on the other line, where that counts. */
type Edge =
  | { readonly kind: 'bevel'; readonly inner: keyof typeof innerEdge; readonly land?: Length }
  | { readonly kind: 'radial' }
  | { readonly kind: 'square'; readonly off?: Mm };

/** What becomes of the inner edge of an end that is bevelled, by where the dashed line lies. */
export const innerEdge = {
  unknown: say`bevel the inner edge until it seats`,
  inWaste: say`where the dashes lie in the waste, lean the cut to leave the inner edge out to them; elsewhere grind it back to them`,
  onBody: say`grind the inner edge back to the dashed line`,
  same: say`the inner edge ends on the same line`,
};

export function edge(how: Edge, units: 'mm' | 'in'): Said {
  if (how.kind === 'radial') return say`on the solid line, the torch held radially`;
  if (how.kind === 'bevel') {
    const { inner, land } = how;
    const left = land ? say`; leave a land of ${quantities.written(land)} where it is thin` : say``;
    return say`on the solid line; ${innerEdge[inner]}${left}`;
  }
  const off = how.off === undefined ? undefined : quantities.both(how.off, units);
  return say`on the solid line and leave the face square${off ? say`: cut on the dashed line it would stand off ${off}` : say``}`;
}
