import { type Block, extentOf, lettered } from '../../draw/lettering.ts';
import { type Candidate, withRoom } from '../../draw/placer.ts';
import type { Mm } from '../../measure/units.ts';
import type { Body } from './body.ts';
import { across, height, stationAt } from './flat.ts';

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
      for (const words of turnedAlong(body, where, block, stations, turn)) yield withRoom(words, room, turn);
    }
  }
}

/** Between words at the cut and others in line with them. */
const APART: Mm = 2;

function* turnedAlong(
  body: Body,
  where: 'waste' | 'body',
  block: Block,
  stations: readonly number[],
  turn: 0 | 1,
): Iterable<Candidate> {
  const { width, height: high } = extentOf(block);
  const up = where === 'body' ? body.flat.bodyWay : -body.flat.bodyWay;
  const [w, h] = turn === 0 ? [width, high] : [high, width];
  const draw: Candidate['draw'] = (x, y) => lettered(block, x, y, turn);
  for (const station of stations) {
    const middle = Math.min(body.flat.width - w / 2 - 1, Math.max(w / 2 + 1, across(body.flat, station)));
    const line = height(body.flat, body.cope.cut(stationAt(body.flat, middle)).setback);
    const left = middle - w / 2;
    for (let away = 1.4; away < 14; away += 0.9) {
      const bottom = up === 1 ? line + away : line - away - h;
      yield { box: { left, bottom, right: left + w, top: bottom + h }, draw };
    }
  }
}

/** Stations round the girth, the nearest to `first` first. */
export function stationsFrom(first: number, turn: number, count: number): number[] {
  return Array.from({ length: count }, (_, i) => {
    const step = Math.ceil(i / 2) * (i % 2 === 0 ? 1 : -1);
    return first + (step * turn) / count;
  });
}

export const WASTE_ROOM: Mm = 7.5;
