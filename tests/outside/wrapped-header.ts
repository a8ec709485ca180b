import type { AskedPart } from './asked-end.ts';
import { wallOf } from './solids/implicit-headers.ts';
import { type HeaderFrame, headerFrame, type Point } from './solids/implicit-solids.ts';

/** A point of a header unrolled flat: so far round from the body's side towards clock + 90, so far along its axis. */
export interface Flat {
  readonly round: number;
  readonly along: number;
}

/** Rolls a flat pattern up on a round, box or flat header at end A again: each point of it as a place in the tube's frame. */
export function wrapOn(part: AskedPart): (flat: Flat) => Point {
  const frame = headerFrame({ end: 'A', ...part });
  const outline = outlineOf(part);
  return ({ round, along }) => {
    const [towardsBody, aside] = outline(round);
    const [x, y, z] = placed(frame, along, aside, towardsBody);
    return [x, y, z + part.shift];
  };
}

function placed({ origin, along, aside, up }: HeaderFrame, a: number, b: number, c: number): Point {
  const at = (axis: 0 | 1 | 2): number => origin[axis] + a * along[axis] + b * aside[axis] + c * up[axis];
  return [at(0), at(1), at(2)];
}

/** A point of the header's cross-section so far round it: towards the body, and aside. */
function outlineOf({ header }: AskedPart): (round: number) => readonly [number, number] {
  switch (header.kind) {
    case 'plate':
    case 'mitre':
      return (round) => [0, round];
    case 'round':
      return (round) => [
        header.radius * Math.cos(round / header.radius),
        header.radius * Math.sin(round / header.radius),
      ];
    case 'box': {
      // The bar's outline is that of a tube of its size, turned by its roll.
      const { turn, at } = wallOf({ tube: { ...header, kind: 'rectangular' } });
      const start = stationTowards(at, turn, -header.roll);
      return (round) => {
        const [d, w] = at(start + round, 0);
        const [cos, sin] = [Math.cos(header.roll), Math.sin(header.roll)];
        return [d * cos - w * sin, d * sin + w * cos];
      };
    }
    case 'bend':
      throw new Error('a bend does not unroll');
  }
}

/** Halves the way round until the outline's point lies in this direction. */
function stationTowards(
  at: (station: number, depth: number) => readonly [number, number],
  turn: number,
  angle: number,
): number {
  const home = (way: number): number => way - 2 * Math.PI * Math.floor(way / (2 * Math.PI));
  let [low, high] = [0, turn];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    const [d, w] = at(middle, 0);
    if (home(Math.atan2(w, d)) < home(angle)) low = middle;
    else high = middle;
  }
  return low;
}
