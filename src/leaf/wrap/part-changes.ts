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
import { type Candidate, drawTicks, type Placed, placeAll } from '../../draw/placer.ts';
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

/** The names of the two headers on both sides of each change. What found no room comes back in words. */
export function changeNames(body: Body, changes: readonly PartChange[]): Placed {
  const { leaf, card } = body.words;
  return placeAll(
    body.field,
    changes.map((change) => ({
      places: namesAt(body, change),
      otherwise: leaf.fromLeftEdge(
        leaf.change(card.headerName(change.left + 1), card.headerName(change.right + 1)),
        xAt(body.flat, change.station),
      ),
    })),
  );
}

const TICK: Mm = 2;

/** Where the names stand off the cut, mm. */
const AT_CUT = waysAt(liftSteps(TICK + 0.4, 26, 1.2));

/** Both names in one, the line between the headers in its middle. */
function namesAt(body: Body, { station, left, right }: PartChange): Iterable<Candidate> {
  const x = xAt(body.flat, station);
  const level = offCut(body, x);
  const [before, after] = [left, right].map(
    (part): Block => ({
      fact: 'part',
      lines: [body.words.card.headerName(part + 1)],
      size: TEXT,
    }),
  );
  if (!before || !after) return [];
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
