import type { Said } from '../../../measure/said.ts';
import type { Length } from '../../../measure/units.ts';
import { say } from '../../said.ts';
import { quantities } from '../quantities.ts';

/** What it is, at its first use on a ticket. */
export const spineExplained = say`spine (one straight line along the tube, 0°)`;
/** Where stations are mm round the outside. */
export const spineExplainedMm = say`spine (one straight line along the tube, 0 mm)`;

export function fileToRod(where: 'anywhere' | 'touching', units: 'mm' | 'in'): Said {
  const rod = say`a ${units === 'mm' ? say`1.6 mm` : say`1/16 in`} rod won't enter the gap`;
  return where === 'anywhere' ? say`${rod} anywhere` : say`${rod} where it touches`;
}

/** How an end is cut. */
export type Edge =
  | { readonly kind: 'bevel'; readonly inner: keyof typeof innerEdge; readonly land?: Length }
  | { readonly kind: 'radial' }
  | { readonly kind: 'square' };

/** What becomes of the inside edge of an end that is bevelled, by where the dashed line lies. */
export const innerEdge = {
  unknown: say`bevel the inside edge until it seats`,
  inWaste: say`where the dashes lie in the waste, tilt the cut so the inside edge stays long, out to them; elsewhere grind back to them`,
  onBody: say`grind the inside edge back to the dashes`,
  same: say`the inside edge ends on the same line`,
  flat: say`straight through, for the face is flat`,
};

/** Whether the leaf is cut out beyond its solid line, for its dashes would go with the scrap. */
export function reachesOut(how: Edge): boolean {
  return how.kind === 'bevel' && how.inner === 'inWaste';
}

/** What is marked by a leaf and how it is cut: the dashes are on the tube before the leaf is gone, and what holds for them is told with the cut. */
export function markAndCut(what: Said, base: Said, how: Edge): Said {
  return say`Mark the solid line${base}${marked(how)}. Cut ${what} on the solid line${edge(how)}.`;
}

function marked(how: Edge): Said {
  if (reachesOut(how))
    return say`, prick through the paper what it covers and the dashes (the inside edge), and take the leaf off`;
  const dashed = how.kind === 'bevel' && how.inner === 'onBody';
  return dashed
    ? say`, prick the dashed one (the inside edge) through the paper and take the leaf off`
    : say` and take the leaf off`;
}

function edge(how: Edge): Said {
  if (how.kind === 'radial') return say`, the torch held radially`;
  if (how.kind === 'square') return say` with no bevel: the disc points at the tube’s middle`;
  const { inner, land } = how;
  const left = land ? say`; leave a land of ${quantities.own(land)} where it would be a feather edge` : say``;
  return say`: ${innerEdge[inner]}${left}`;
}
