import { type Label, labelOf, liftSteps, offLevel, type Standing } from '../../draw/candidates.ts';
import type { Block } from '../../draw/lettering.ts';
import { type Candidate, withRoom } from '../../draw/placer.ts';
import type { Mm } from '../../measure/units.ts';
import { type Body, offCut } from './body.ts';
import { xAt } from './flat.ts';

/**
 * Places for words along the cut, in the middle of x of each station given, in turn: on the waste side or on the
 * body's, as near the line as is free; among the body's other words with room before and after them, where it can be.
 */
export function* alongCut(
  body: Body,
  where: 'waste' | 'body',
  block: Block,
  stations: readonly number[],
): Iterable<Candidate> {
  for (const room of where === 'body' ? [APART, 0] : [0]) {
    for (const turn of [0, 1] as const) {
      const label = labelOf(block, turn);
      for (const station of stations) {
        for (const words of aboutStation(body, where, label, station)) yield withRoom(words, room, turn);
      }
    }
  }
}

/** Between words at the cut and others in line with them. */
const APART: Mm = 2;

const AT_CUT: readonly Standing[] = [{ turn: 0, lifts: liftSteps(1.4, 14, 0.9) }];

function aboutStation(
  body: Body,
  where: 'waste' | 'body',
  label: Label,
  station: number,
): Iterable<Candidate> {
  const { flat } = body;
  const half = label.width / 2;
  const middle = Math.min(flat.width - half - 1, Math.max(half + 1, xAt(flat, station)));
  return offLevel(offCut(body, middle, where), AT_CUT, () => ({ label, lefts: [middle - half] }));
}

/** Stations round the girth, the nearest to `first` first. */
export function stationsFrom(first: number, turn: number, count: number): number[] {
  return Array.from({ length: count }, (_, i) => {
    const step = Math.ceil(i / 2) * (i % 2 === 0 ? 1 : -1);
    return first + (step * turn) / count;
  });
}

export const WASTE_ROOM: Mm = 7.5;
