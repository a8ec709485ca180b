import type { Cope } from '../saddle/cope.ts';

/** As many as a needle of half a degree can't hide between. */
const STATIONS = 720;

/** Which headers of a union, by their places from 0, the tube meets nowhere: the others lie before them all the way round. */
export function idleHeaders({ end: { parts }, joint, outside, inside, square }: Cope): readonly number[] {
  if (parts.length === 1) return [];
  const lines = [outside, inside, square].filter((line) => line !== undefined);
  const met = new Set<number>();
  for (let i = 0; i < STATIONS && met.size < parts.length; i++) {
    for (const line of lines) met.add(line((i * joint.section.turn) / STATIONS).part);
  }
  return parts.flatMap((_, place) => (met.has(place) ? [] : [place]));
}
