import type { Mark } from '../../draw/drawing.ts';
import { extentOf, lettered, SMALL } from '../../draw/lettering.ts';
import { point, type Segment } from '../../draw/path.ts';
import { addBarrier, type Candidate, place } from '../../draw/placer.ts';
import { line, linesAlong } from '../../draw/strokes.ts';
import type { Mm } from '../../measure/units.ts';
import type { Curve } from '../../saddle/curve.ts';
import { bezier } from '../../saddle/fit-piece.ts';
import type { Line } from '../../saddle/line.ts';
import { headerName } from '../card/header-facts.ts';
import type { Body } from './body.ts';
import { across, height, stationAt } from './flat.ts';

/** Where the cut goes over from one header to another. */
export interface Change {
  readonly station: number;
  /** The headers to the left and to the right of it, by their places in the end's list. */
  readonly left: number;
  readonly right: number;
}

/** Where each header of a union begins; none where there is one header. */
export function changesOf(line: Line, curve: Curve): Change[] {
  const parts = curve.map(({ stations }) => line(bezier(stations, 0.5)).part);
  return curve.flatMap(({ stations }, i) => {
    const [left, right] = [parts.at(i - 1) ?? 0, parts[i] ?? 0];
    return left === right ? [] : [{ station: stations[0], left, right }];
  });
}

/** A tick across the cut at each change. They come before all words, which then keep off them. */
export function changeTicks(body: Body, changes: readonly Change[]): Mark[] {
  const ticks = changes.map(({ station }) => tickAt(body, across(body.flat, station)));
  addBarrier(body.field, ticks, CLEAR);
  return linesAlong('guide', ticks);
}

/** The names of the two headers on both sides of each change. What found no room comes back in words. */
export function changeNames(body: Body, changes: readonly Change[]): { marks: Mark[]; beside: string[] } {
  const marks: Mark[] = [];
  const beside: string[] = [];
  for (const change of changes) {
    const found = place(body.field, namesAt(body, change));
    if (found) marks.push(...found);
    else
      beside.push(
        `${headerName(change.left)} | ${headerName(change.right)}: ${across(body.flat, change.station).toFixed(1)} mm from the left edge`,
      );
  }
  return { marks, beside };
}

const CLEAR: Mm = 0.3;
const TICK: Mm = 2;
const BESIDE: Mm = 0.8;

function tickAt(body: Body, x: Mm): Segment {
  const cut = cutAt(body, x);
  return { from: point(x, cut - TICK), to: point(x, cut + TICK) };
}

function cutAt({ flat, cope }: Body, x: Mm): Mm {
  return height(flat, cope.cut(stationAt(flat, x)).setback);
}

function* namesAt(body: Body, { station, left, right }: Change): Iterable<Candidate> {
  const { bodyWay, width } = body.flat;
  const x = across(body.flat, station);
  const [one, other] = [left, right].map((part) => ({ lines: [headerName(part)], size: SMALL }));
  if (!one || !other) return;
  const { width: wide, height: high } = extentOf(one);
  const reach = extentOf(other).width;
  const cut = cutAt(body, x);
  for (const [turn, overGuides] of WAYS) {
    const [w, h] = turn === 0 ? [wide, high] : [high, wide];
    const right = turn === 0 ? reach : high;
    for (let lift = TICK + 0.4; lift < 26; lift += 1.2) {
      const bottom = bodyWay === 1 ? cut + lift : cut - lift - h;
      const leader = { from: point(x, cut + bodyWay * TICK), to: point(x, cut + bodyWay * (lift + h)) };
      const box = { left: x - BESIDE - w, right: x + BESIDE + right, bottom, top: bottom + h };
      if (box.left < 0 || box.right > width) continue;
      const draw = (from: Mm, y: Mm): Mark[] => [
        line('guide', leader.from, leader.to),
        ...lettered(one, from, y, turn),
        ...lettered(other, x + BESIDE, y, turn),
      ];
      yield { box, leader, overGuides, draw };
    }
  }
}

const WAYS = [
  [0, false],
  [1, false],
  [0, true],
  [1, true],
] as const;
