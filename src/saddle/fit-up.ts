import type { CopedEnd, FitUp } from '../job/job.ts';
import type { Mm, Radians } from '../measure/units.ts';
import type { Joint } from './joint.ts';
import type { Line } from './line.ts';

/** What an end that is fitted up at the frame has to lay on the marks made there. */
export interface FitUpMarks extends FitUp {
  /**
   * The line along the tube that the marks are made on: where the header's centre line comes nearest the body's heel.
   * With `clock` that line is the rotation mark, and stations count from it.
   */
  readonly markStation: number;
  /**
   * The setback of the length mark: where the tube's outside on that line, prolonged, meets the header. With `between`
   * only, and left out where that line passes beside the header.
   */
  readonly lengthSetback?: Mm;
}

/** What is known of an end so far. A union has no heel, and no marks. */
interface Fitted {
  readonly joint: Joint;
  readonly touching: Line;
  readonly heel?: Radians;
}

export function fitUpOf({ fitUp }: CopedEnd, fitted: Fitted): FitUpMarks | undefined {
  if (!fitUp || fitted.heel === undefined) return undefined;
  const lengthSetback = fitUp.between ? lengthMarkOf(fitted) : undefined;
  return {
    ...fitUp,
    markStation: markStationOf(fitted),
    ...(lengthSetback !== undefined && { lengthSetback }),
  };
}

/** The setback of the length mark, asked for or not; undefined where its line passes beside the header. */
export function lengthMarkOf(fitted: Fitted): Mm | undefined {
  if (fitted.heel === undefined) return undefined;
  const { setback, contact } = fitted.touching(markStationOf(fitted));
  return contact ? setback : undefined;
}

function markStationOf({ joint, heel = 0 }: Fitted): number {
  return joint.section.towards(heel);
}
