import type { Mm } from '../measure/units.ts';
import type { Joint } from './joint.ts';
import type { Line } from './line.ts';
import { samplesOf } from './samples.ts';

/** The last station at which one thing is met and the first at which another is. */
export interface Break {
  readonly before: number;
  readonly after: number;
}

/**
 * The stations where a line of a wall passes from one face of a header to another, to another header, or beside them
 * all, and those of the tube's own corners. What shows on no more than a few of a tube's degrees is found too.
 */
export function breaksOf(joint: Joint, line: Line, wall: Mm | undefined): readonly number[] {
  const looks = samplesOf(joint, wall === undefined ? [0] : [0, wall]);
  const { turn, cornersAt } = joint.section;
  const corners = [...cornersAt(0), ...(wall === undefined ? [] : cornersAt(wall))];
  const changes = changesBetween((station) => line(station).region, looks, turn);
  return [...corners, ...changes.map(({ after }) => after)];
}

/** Where, once round, what is met changes between one look and the next: each change to the last bit. */
export function changesBetween(
  met: (station: number) => number,
  looks: readonly number[],
  turn: number,
): readonly Break[] {
  const seen = [...looks, turn].map((station) => ({ station, met: met(station) }));
  return seen.slice(1).flatMap((to, i) => {
    const from = seen[i];
    return from ? changesIn(met, from, to) : [];
  });
}

interface Seen {
  readonly station: number;
  readonly met: number;
}

function changesIn(met: (station: number) => number, from: Seen, to: Seen): Break[] {
  const changes: Break[] = [];
  let low = from.station;
  let here = from.met;
  while (here !== to.met) {
    let high = to.station;
    for (let middle = (low + high) / 2; middle > low && middle < high; middle = (low + high) / 2) {
      if (met(middle) === here) low = middle;
      else high = middle;
    }
    changes.push({ before: low, after: high });
    here = met(high);
    low = high;
  }
  return changes;
}
