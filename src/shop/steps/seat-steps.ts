import { gapOf } from '../../fit/gap.ts';
import { standOffOf } from '../../fit/stand-off.ts';
import { ROD } from '../../fit/warnings.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import { stationSaid } from '../../saddle/station.ts';
import { landingName, type NamedEnd, type Piece } from '../piece.ts';

/** Trying one end where it goes: which of its edges touches, and what gap stays. */
export function seatStep(piece: Piece, end: NamedEnd): Said {
  const { name, cope } = end;
  const { words } = piece;
  const { seat } = words.steps;
  const { preparation, root } = cope.end;
  const on = landingName(end, words);
  if (root && root.mm > 0) return seat.hold(name, on, root);
  const gap = gapLeft(piece, cope);
  const { first } = piece;
  if (first && first !== end && isFiled(piece, first) && isFiled(piece, end))
    return seat.alike(name, on, first.name);
  return preparation.edge === 'square'
    ? seat.touching(name, on, touching(piece, cope), gap)
    : seat.file(name, on, gap);
}

/** Whether an end is filed until no rod goes in: bevelled, with no gap that is meant or stays. */
function isFiled(piece: Piece, { cope }: NamedEnd): boolean {
  const { preparation, root } = cope.end;
  return preparation.edge === 'bevel' && !(root && root.mm > 0) && gapLeft(piece, cope) === undefined;
}

function touching({ say, words }: Piece, cope: Cope): Said {
  const { touches, heldOff } = words.steps.seat;
  const { preparation } = cope.end;
  if (preparation.edge === 'square' && preparation.from === 'inside') {
    const off = standOffOf(cope) ?? 0;
    return off > SEEN ? heldOff(say(off)) : touches.inner;
  }
  const { outer, inner } = edgesThatTouch(cope);
  if (outer && inner) return touches.either;
  if (outer || inner) return outer ? touches.outer : touches.inner;
  return touches.face;
}

/** Less than this is neither seen nor felt. */
const SEEN: Mm = 0.05;
const STATIONS = 180;

/** Which edges of a square face touch somewhere without the other: the deeper one of the two lines, for it is cut back to that. */
function edgesThatTouch({ outside, inside, joint }: Cope): { outer: boolean; inner: boolean } {
  const { turn } = joint.section;
  const ahead = Array.from({ length: STATIONS }, (_, i) => {
    const station = (i * turn) / STATIONS;
    const [out, inn] = [outside(station), inside?.(station)];
    return out.contact && inn?.contact ? out.setback - inn.setback : 0;
  });
  return { outer: ahead.some((way) => way > SEEN), inner: ahead.some((way) => way < -SEEN) };
}

/** Between the stations that are looked at a cut lies no deeper than this leaves room for. */
const NEAR_ROD = 0.9 * ROD;

/**
 * How far a cut lies behind the outside line at most: a gap outside is no wider, for an end that its inner edge does not
 * hold off seats at least as near as it was cut. Cheap beside the gap itself, which is looked for where this could be one that counts.
 */
function deepestCutBack({ cut, outside, joint }: Cope): Mm {
  const { turn } = joint.section;
  const behind = Array.from({ length: STATIONS }, (_, i) => {
    const station = (i * turn) / STATIONS;
    return cut(station).setback - outside(station).setback;
  });
  return Math.max(...behind);
}

/** A wider gap is not filled but mended: 3/16 in, AWS D1.1, from memory. */
const MOST_FILLED: Mm = 5;

/** A gap that a rod goes into, where it is widest; undefined where none stays. */
function gapLeft({ solution, say, words }: Piece, cope: Cope): Said | undefined {
  const { wall } = solution.tube;
  if (!wall) return undefined;
  const { preparation } = cope.end;
  const isHeldOff = preparation.edge === 'square' && preparation.from === 'inside';
  if (!isHeldOff && deepestCutBack(cope) < NEAR_ROD) return undefined;
  const { mm, station, twin } = gapOf(cope, wall.mm);
  if (mm <= ROD) return undefined;
  const at = [station, ...(twin === undefined ? [] : [twin])]
    .sort((a, b) => a - b)
    .map((each) => stationSaid(each, cope.joint.section, words));
  return words.steps.seat.gap(say(mm), at, mm > MOST_FILLED);
}
