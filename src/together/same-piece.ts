import { tubeFactsOf } from '../job/sections.ts';
import type { Mm } from '../measure/units.ts';
import type { Cope, EndSolution } from '../saddle/cope.ts';
import type { Line } from '../saddle/line.ts';
import type { TubeSolution } from '../saddle/solve.ts';

/** Ends that lie nowhere further apart are the same: no saw or file keeps closer. */
const APART: Mm = 0.05;

/**
 * How one piece of tube is laid on another so that they are the same solid: turned about its axis, and end for end or not.
 * A station `s` of the one lies on station `s + turn` of the other; where `swapped`, on station `turn - s`, and
 * the one's end A on the other's end B.
 */
export interface Laying {
  /** In stations of the section: radians, or mm round the outside. */
  readonly turn: number;
  readonly swapped: boolean;
}

/**
 * How `other` lies on `piece`; undefined where no way of laying it brings all its ends within 0.05 mm, measured along the
 * tube at every look round it, outside and inside. Both are of any tube and hand. What is marked at the frame has no rotation
 * yet, and is the same as nothing.
 */
export function sameAs(piece: TubeSolution, other: TubeSolution): Laying | undefined {
  if (!isSameStock(piece, other)) return undefined;
  return [false, true]
    .flatMap((swapped) => turnsOf(piece, other, swapped).map((turn) => ({ turn, swapped })))
    .find((laid) => liesOn(piece, other, laid));
}

function isSameStock(a: TubeSolution, b: TubeSolution): boolean {
  return (
    sizesOf(a) === sizesOf(b) && Math.abs((a.lengths?.between ?? 0) - (b.lengths?.between ?? 0)) <= APART
  );
}

function sizesOf({ tube }: TubeSolution): string {
  const { lengths } = tubeFactsOf(tube.section);
  const sizes = Object.values(lengths).map(({ mm }) => mm.toFixed(4));
  return [tube.section.kind, ...sizes, tube.wall?.mm.toFixed(4) ?? ''].join(' ');
}

/** Names of the drawers in which pieces that may be the same as this one lie, its own first: by its sizes and its length. */
export function stockKeysOf(piece: TubeSolution): readonly string[] {
  const sizes = sizesOf(piece);
  const drawer = Math.floor((piece.lengths?.between ?? 0) / DRAWER);
  return [drawer, drawer - 1, drawer + 1].map((each) => `${sizes} ${each}`);
}

const DRAWER: Mm = 0.1;

/** The other's end that lies on this one. */
function partner(end: 'A' | 'B', swapped: boolean): 'A' | 'B' {
  return swapped === (end === 'A') ? 'B' : 'A';
}

/** The turns that bring a header of the one to one of the other; of a tube with corners those that bring its corners home. */
function turnsOf(piece: TubeSolution, other: TubeSolution, swapped: boolean): number[] {
  const { section, tube } = piece;
  if (tube.section.kind === 'rectangular') {
    const quarters = tube.section.wide.mm === tube.section.deep.mm ? [0, 1, 2, 3] : [0, 2];
    return quarters.map((quarter) => (quarter * section.turn) / 4);
  }
  const turns = (['A', 'B'] as const).flatMap((end) => {
    const [mine, theirs] = [piece.ends[end], other.ends[partner(end, swapped)]];
    if (mine?.kind !== 'coped' || theirs?.kind !== 'coped') return [];
    const from = mine.end.parts[0].clock.rad;
    return theirs.end.parts.flatMap(({ clock }) =>
      // A joint has two readings, half a turn apart.
      [0, Math.PI].map((half) => (swapped ? clock.rad + from : clock.rad - from) + half),
    );
  });
  return turns.length > 0 ? turns : [0];
}

function liesOn(piece: TubeSolution, other: TubeSolution, laid: Laying): boolean {
  return (['A', 'B'] as const).every((end) =>
    isSameEnd(piece.ends[end], other.ends[partner(end, laid.swapped)], laid),
  );
}

function isSameEnd(mine: EndSolution | undefined, theirs: EndSolution | undefined, laid: Laying): boolean {
  if (mine?.kind !== 'coped' || theirs?.kind !== 'coped') return mine?.kind === theirs?.kind;
  if (mine === theirs && laid.turn === 0 && !laid.swapped) return true;
  if (mine.fitUp || theirs.fitUp || finishOf(mine.end) !== finishOf(theirs.end)) return false;
  return (['cut', 'outside', 'inside'] as const).every((name) => {
    const [one, another] = [mine[name], theirs[name]];
    return one === undefined
      ? another === undefined
      : another !== undefined && isSameLine(mine, one, another, laid);
  });
}

/** How the edge is made and what gap is left for its weld: two ends may have one shape and not these. */
function finishOf({ preparation, root }: Cope['end']): string {
  const made = preparation.edge === 'bevel' ? preparation.land?.mm.toFixed(4) : preparation.from;
  return [preparation.edge, made, root?.mm.toFixed(4)].join(' ');
}

const LOOKS = 360;

function isSameLine({ joint }: Cope, mine: Line, theirs: Line, { turn, swapped }: Laying): boolean {
  const round = joint.section.turn;
  // Most lines that are compared part at the first look.
  for (let look = 0; look < LOOKS; look++) {
    const station = ((look + 0.5) * round) / LOOKS;
    const { setback } = mine(station);
    const there = swapped ? turn - station : turn + station;
    if (!HAIRS.some((hair) => Math.abs(theirs(there + hair * round).setback - setback) <= APART))
      return false;
  }
  return true;
}

/** Beside a step of the line a hair decides on which side of it a station lies. */
const HAIRS = [0, -1e-7, 1e-7];
