import type { Mm } from '../measure/units.ts';

/** One line round the end of a tube: for each station the setback and what was met there. */
export type Line = (station: number) => LinePoint;

export interface LinePoint {
  readonly setback: Mm;
  /** How fast the setback grows with the station. Not finite where the line grazes a header. */
  readonly slope: number;
  /** False where the wall passes beside the header and is trimmed instead. */
  readonly contact: boolean;
  /** The header met, by its place in the end's list. */
  readonly part: number;
  /** Changes where the line crosses an edge: the curve breaks there. */
  readonly region: number;
}
