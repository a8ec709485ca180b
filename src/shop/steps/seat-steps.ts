import { missedBy } from '../../fit/contact.ts';
import { dihedralsOf } from '../../fit/dihedrals.ts';
import { gapOf } from '../../fit/gap.ts';
import { standOffOf } from '../../fit/stand-off.ts';
import { knifeOf, landFor, ROD } from '../../fit/warnings.ts';
import { heelsPicture } from '../../leaf/picture/heels-picture.ts';
import { sideNames, sidesOf } from '../../leaf/wrap/sides.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import { wrapStation } from '../../space/section.ts';
import { joined } from '../../words/said.ts';
import { landingName, type NamedEnd, type Piece } from '../piece.ts';
import { type Step, step } from './step.ts';

/** An end deburred and tried where it goes: which of its edges touches, what gap stays, and what passes beside the header. */
export function seatStep(piece: Piece, end: NamedEnd): Step {
  const { words } = piece;
  const gap = gapLeft(piece, end.cope);
  const warnings = [
    ...featherOf(piece, end),
    ...missOf(piece, end),
    ...heldOff(piece, end),
    ...(gap ? [gap] : []),
  ];
  return step(
    'step:seat',
    joined(
      [
        words.steps.seat.deburred(end.name, piece.hollow, seated(piece, end, gap !== undefined)),
        ...offCentre(piece, end),
      ],
      '',
    ),
    warnings,
  );
}

/** Of an end on one header, which shows in no other step. */
function offCentre({ words }: Piece, { cope }: NamedEnd): Said[] {
  const [part, other] = cope.end.parts;
  if (other || part.offset.mm === 0) return [];
  return [words.steps.seat.beside(words.quantities.unsigned(part.offset))];
}

function seated(piece: Piece, end: NamedEnd, gapStays: boolean): Said {
  const { first, units, words } = piece;
  const { seat } = words.steps;
  const { preparation, root } = end.cope.end;
  const pictured = end.cope.end.parts.length > 1 && heelsPicture(piece.solution, words) !== undefined;
  const on = pictured ? seat.asPictured : landingName(end, words);
  if (root && root.mm > 0) return seat.hold(on, root);
  if (preparation.edge === 'square') return seat.touching(on, touching(end.cope, words));
  if (gapStays) return seat.file(on, seat.itTouches);
  const missed = missedBy(piece.solution.tube.section, end.cope) !== undefined;
  if (first && first !== end && !missed && isFiled(piece, first)) return seat.alike(on, first.name);
  return seat.file(on, seat.noRod(missed ? 'touching' : 'anywhere', units));
}

/** Whether an end is filed until no rod goes in anywhere: bevelled, with no gap that is meant or stays. */
function isFiled(piece: Piece, { cope }: NamedEnd): boolean {
  const { preparation, root } = cope.end;
  if (preparation.edge !== 'bevel' || (root && root.mm > 0)) return false;
  return missedBy(piece.solution.tube.section, cope) === undefined && gapLeft(piece, cope) === undefined;
}

function featherOf({ words }: Piece, { cope }: NamedEnd): Said[] {
  const thin = knifeOf(cope, dihedralsOf(cope));
  return thin === undefined ? [] : [words.steps.warnings.feather(thin, landFor(cope))];
}

function missOf({ solution: { tube }, units, words }: Piece, { cope }: NamedEnd): Said[] {
  const missed = missedBy(tube.section, cope);
  if (!missed) return [];
  const past = missed.past === undefined ? undefined : words.quantities.tape(missed.past, units);
  return [words.steps.warnings.misses(past)];
}

function heldOff({ units, words }: Piece, { cope }: NamedEnd): Said[] {
  const { preparation } = cope.end;
  if (preparation.edge !== 'square' || preparation.from !== 'inside') return [];
  const off = standOffOf(cope) ?? 0;
  return off > SEEN ? [words.steps.warnings.heldOff(words.quantities.oneToATenth(off, units))] : [];
}

function touching(cope: Cope, words: Piece['words']): Said {
  const { touches } = words.steps.seat;
  const { preparation } = cope.end;
  if (preparation.edge === 'square' && preparation.from === 'inside')
    return (standOffOf(cope) ?? 0) > SEEN ? touches.outer : touches.inner;
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

/** A gap that a rod goes into, or into which one goes beyond the root gap, how much with that and where it is widest, and what to do; undefined where none stays. */
function gapLeft({ solution, units, words }: Piece, cope: Cope): Said | undefined {
  const { wall } = solution.tube;
  if (!wall) return undefined;
  const { preparation, root } = cope.end;
  const isHeldOff = preparation.edge === 'square' && preparation.from === 'inside';
  if (!isHeldOff && !cope.end.toFlat && deepestCutBack(cope) < NEAR_ROD) return undefined;
  const { mm, station, twin } = gapOf(cope, wall.mm);
  if (mm <= ROD) return undefined;
  const open = mm + (root?.mm ?? 0);
  const at = placeOnEnd(cope, [station, ...(twin === undefined ? [] : [twin])], units, words);
  return words.steps.warnings.gap(words.quantities.oneToATenth(open, units), at, units, open > MOST_FILLED);
}

/** Where stations lie, as a tape tells it round the tube: from the heel, by which the leaf and the joint are known, or of a union, which has none, from the spine. */
function placeOnEnd(
  cope: Cope,
  stations: readonly number[],
  units: Piece['units'],
  words: Piece['words'],
): Said {
  const { girth, turn } = cope.joint.section;
  const { heel } = sidesOf(cope) ?? {};
  const from = heel === undefined ? words.steps.spine : sideNames(cope.end.parts[0], words).heel;
  const round = stations.map((station) => {
    const right = wrapStation(station - (heel ?? 0), turn);
    return ((right > turn / 2 ? right - turn : right) / turn) * girth;
  });
  return words.steps.roundTheEnd(round, girth, from, units);
}
