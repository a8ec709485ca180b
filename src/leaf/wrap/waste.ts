import { inTurn, type Label, labelOf, liftSteps, offLevel, type Standing } from '../../draw/candidates.ts';
import type { Block } from '../../draw/lettering.ts';
import type { Candidate } from '../../draw/placer.ts';
import type { Mm } from '../../measure/units.ts';
import { type Body, offCut } from './body.ts';
import { xAt } from './flat.ts';

/**
 * Places for words in the waste, in the middle of x of each station given, in turn, as near the cut as is free.
 */
export function alongCut(body: Body, block: Block, stations: readonly number[]): Iterable<Candidate> {
  return inTurn([0, 1] as const, (turn) => {
    const label = labelOf(block, turn);
    return inTurn(stations, (station) => aboutStation(body, label, station));
  });
}

const AT_CUT: readonly Standing[] = [{ turn: 0, lifts: liftSteps(1.4, 14, 0.9) }];

function aboutStation(body: Body, label: Label, station: number): Iterable<Candidate> {
  const { flat } = body;
  const half = label.width / 2;
  const middle = Math.min(flat.width - half - 1, Math.max(half + 1, xAt(flat, station)));
  return offLevel(offCut(body, middle, 'waste'), AT_CUT, () => ({ label, lefts: [middle - half] }));
}

/** Stations round the girth, the nearest to `first` first. */
export function stationsFrom(first: number, turn: number, count: number): number[] {
  return Array.from({ length: count }, (_, i) => {
    const step = Math.ceil(i / 2) * (i % 2 === 0 ? 1 : -1);
    return first + (step * turn) / count;
  });
}

export const WASTE_ROOM: Mm = 7.5;
