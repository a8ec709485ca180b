import type { EndName, Seat } from '../job/job.ts';
import { plusTimes, type Vector } from '../space/vector.ts';

/** A point of a frame at which a tube ends, by its name in the file. */
export interface EndPoint {
  readonly name: string;
  readonly place: Vector;
}

export function endPointOf({ along, from, axis, length }: Seat, end: EndName): EndPoint {
  return end === 'A'
    ? { name: along[0], place: from }
    : { name: along[1], place: plusTimes(from, length, axis) };
}
