import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';

/** How deep a cut is along the tube, from its long point to its throat. */
export function shortPointDepth({ throat, longPoint }: Cope): Mm {
  return throat.setback - longPoint.setback;
}
