import { gapOf } from '../../fit/gap.ts';
import { standOffOf } from '../../fit/stand-off.ts';
import { ROD } from '../../fit/warnings.ts';
import { wrote } from '../../leaf/names.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import { stationInWords } from '../../saddle/station.ts';
import { landingName, type NamedEnd, type Piece } from '../piece.ts';
import { ROD_IN_WORDS } from './rod.ts';

/** Trying one end where it goes: which of its edges touches, and what gap stays. */
export function seatStep(piece: Piece, end: NamedEnd): string {
  const { name, cope } = end;
  const { preparation, root } = cope.end;
  const on = landingName(end);
  if (root && root.mm > 0)
    return `Hold end ${name} at ${on} with a root gap of ${wrote(root)} all round; file where it is less.`;
  const seat = `Seat end ${name} on ${on}`;
  const gap = gapLeft(piece, cope);
  if (preparation.edge === 'square') return `${seat}: ${touching(piece, cope)}${gap}.`;
  if (gap) return `${seat}: file until it touches${gap}.`;
  return `${seat}: file until no ${ROD_IN_WORDS} rod goes in.`;
}

function touching({ say }: Piece, cope: Cope): string {
  const { preparation } = cope.end;
  if (preparation.edge === 'square' && preparation.from === 'inside') {
    const off = standOffOf(cope) ?? 0;
    return off > SEEN
      ? `its outer edge touches first and holds it off by ${say(off)} along the tube`
      : 'its inner edge touches all round';
  }
  const { outer, inner } = edgesThatTouch(cope);
  if (outer && inner)
    return 'its outer edge touches where the dashes run on the line, its inner edge elsewhere';
  if (outer || inner) return `its ${outer ? 'outer' : 'inner'} edge touches all round`;
  return 'its face touches all round';
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
function deepestCutBack({ cut, outside, joint, end }: Cope): Mm {
  const { turn } = joint.section;
  const root = end.root?.mm ?? 0;
  const behind = Array.from({ length: STATIONS }, (_, i) => {
    const station = (i * turn) / STATIONS;
    return cut(station).setback - root - outside(station).setback;
  });
  return Math.max(...behind);
}

/** A gap that a rod goes into, where it is widest; nothing where none stays. */
function gapLeft({ solution, say }: Piece, cope: Cope): string {
  const { wall } = solution.tube;
  if (!wall) return '';
  const { preparation } = cope.end;
  const isHeldOff = preparation.edge === 'square' && preparation.from === 'inside';
  if (!isHeldOff && deepestCutBack(cope) < NEAR_ROD) return '';
  const { mm, station, twin } = gapOf(cope, wall.mm);
  if (mm <= ROD) return '';
  const where = [station, ...(twin === undefined ? [] : [twin])]
    .sort((a, b) => a - b)
    .map((each) => stationInWords(each, cope.joint.section))
    .join(' and ');
  return `, and a gap of up to ${say(mm)} stays outside, widest at ${twin === undefined ? 'station' : 'stations'} ${where}: fill it with weld`;
}
