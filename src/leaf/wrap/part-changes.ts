import {
  BESIDE,
  type Label,
  labelOf,
  liftSteps,
  offLevel,
  type Tried,
  waysAt,
} from '../../draw/candidates.ts';
import type { Mark } from '../../draw/drawing.ts';
import { type Block, TEXT } from '../../draw/lettering.ts';
import { point } from '../../draw/path.ts';
import { type Candidate, drawTicks, type Placed, place } from '../../draw/placer.ts';
import type { Mm } from '../../measure/units.ts';
import type { Curve } from '../../saddle/curve.ts';
import { bezier } from '../../saddle/fit-piece.ts';
import type { Line } from '../../saddle/line.ts';
import { type Body, cutAt, offCut } from './body.ts';
import { xAt } from './flat.ts';

/** Where the cut goes over from one header to another. */
export interface PartChange {
  readonly station: number;
  /** The headers to the left and to the right of it, by their places in the end's list. */
  readonly left: number;
  readonly right: number;
}

/** Where each header of a union begins; none where there is one header. */
export function changesOf(line: Line, curve: Curve): PartChange[] {
  const parts = curve.map(({ stations }) => line(bezier(stations, 0.5)).part);
  return curve.flatMap(({ stations }, i) => {
    const [left, right] = [parts.at(i - 1) ?? 0, parts[i] ?? 0];
    return left === right ? [] : [{ station: stations[0], left, right }];
  });
}

/** A tick across the cut at each change. */
export function changeTicks(body: Body, changes: readonly PartChange[]): Mark[] {
  const ticks = changes.map(({ station }) => {
    const x = xAt(body.flat, station);
    const cut = cutAt(body, x);
    return { from: point(x, cut - TICK), to: point(x, cut + TICK) };
  });
  return drawTicks(body.field, ticks);
}

/**
 * The names of the two headers on both sides of each change; where these have no room, that of each of its stretches which no other change
 * names, in its middle. What found no room comes back in words.
 */
export function changeNames(body: Body, changes: readonly PartChange[]): Placed {
  const { leaf, card } = body.words;
  const marks: Mark[] = [];
  const isPut = (places: Iterable<Candidate>): boolean => {
    const found = place(body.field, places);
    marks.push(...(found ?? []));
    return found !== undefined;
  };
  const before = (i: number): number => (i || changes.length) - 1;
  // A stretch is told by the change at its beginning.
  const named = new Set<number>();
  const left = changes.filter((change, i) => {
    const both = isPut(namesAt(body, change));
    if (both) named.add(before(i)).add(i);
    return !both;
  });
  const alone = left.filter((change) => {
    const own = changes.indexOf(change);
    for (const i of [before(own), own])
      if (!named.has(i) && isPut(nameWithin(body, changes, i))) named.add(i);
    return !(named.has(before(own)) && named.has(own));
  });
  const beside = alone.map((change) => {
    const names = leaf.change(card.headerName(change.left + 1), card.headerName(change.right + 1));
    return leaf.fromLeftEdge(names, xAt(body.flat, change.station));
  });
  return { marks, beside };
}

const TICK: Mm = 2;

/** Where the names stand off the cut, mm. */
const AT_CUT = waysAt(liftSteps(TICK + 0.4, 26, 1.2));

function blockFor({ words }: Body, part: number): Block {
  return { fact: 'part', lines: [words.card.headerName(part + 1)], size: TEXT };
}

/** One name in the middle of the stretch that begins at a change, where it is narrower than that; of the wider part of one that the seam parts. */
function nameWithin(body: Body, changes: readonly PartChange[], begin: number): Iterable<Candidate> {
  const { flat } = body;
  const xs = changes.map(({ station }) => xAt(flat, station));
  const [change, start = 0, first = 0] = [changes[begin], xs[begin], xs[0]];
  if (!change) return [];
  const atSeam: readonly [Mm, Mm] = flat.width - start > first ? [start, flat.width] : [0, first];
  const [from, to] = begin + 1 < xs.length ? [start, xs[begin + 1] ?? flat.width] : atSeam;
  const within = (turn: 0 | 1): Tried => {
    const label = labelOf(blockFor(body, change.right), turn);
    const left = (from + to - label.width) / 2;
    return { label, lefts: left - from > BESIDE / 2 ? [left] : [] };
  };
  return offLevel(offCut(body, (from + to) / 2), AT_CUT, within);
}

/** Both names in one, the line between the headers in its middle. */
function namesAt(body: Body, { station, left, right }: PartChange): Iterable<Candidate> {
  const x = xAt(body.flat, station);
  const level = offCut(body, x);
  const [before, after] = [blockFor(body, left), blockFor(body, right)];
  const both = (turn: 0 | 1): Tried => {
    const [one, other] = [labelOf(before, turn), labelOf(after, turn)];
    const second = one.width + 2 * BESIDE;
    const draw: Label['draw'] = (from, y) => [...one.draw(from, y), ...other.draw(from + second, y)];
    return {
      label: { width: second + other.width, height: one.height, draw },
      lefts: [x - BESIDE - one.width],
    };
  };
  return offLevel(level, AT_CUT, both, point(x, level.y + level.up * TICK));
}
