import type { CopedEnd, EndName, Part, Tube } from '../../job/job.ts';
import { sideNames } from '../../leaf/wrap/sides.ts';
import type { Said } from '../../measure/said.ts';
import { wrapStation } from '../../saddle/peaks.ts';
import type { Language } from '../../words/language.ts';
import type { NamedEnd, Piece } from '../piece.ts';

/** The last look before the second end: most tubes are spoilt there. Of a pair it tells this hand from the other. */
export function facingStep(piece: Piece, { name, cope }: NamedEnd): Said {
  const { first, solution, words } = piece;
  const { facing } = words.steps;
  const { twist } = solution;
  const known =
    twist !== undefined && first
      ? facing.turned(twist, sideNames(cope.end.parts[0], words).heel)
      : facing.unturned;
  return facing.check(name, first?.name, cope.end.fitUp?.clock ? facing.leafHeld : known, handWords(piece));
}

/** What tells this hand from its twin: the turn of its heels where they lie otherwise in it, else what lies to one side. */
function handWords({ solution: { tube, hand, twist }, words }: Piece): Said {
  const { facing } = words.steps;
  if (!tube.pair) return facing.single;
  const sided = twist !== undefined && Math.abs(Math.sin(twist)) > 1e-9;
  return sided ? facing.hand(hand) : facing.handBy(hand, marksOfHand(tube, words));
}

/**
 * What lies to one side, seen with end B up and the heel in front, and so to the other side in the other hand: of each header
 * its offset, its roll and its bend.
 */
function marksOfHand({ ends }: Tube, words: Language): Said[] {
  return (['A', 'B'] as const).flatMap((name) => {
    const end = ends[name];
    return end?.kind === 'coped' ? end.parts.flatMap((part, i) => marksOf(name, end, part, i, words)) : [];
  });
}

function marksOf(name: EndName, { parts }: CopedEnd, part: Part, place: number, words: Language): Said[] {
  const { onto, offset, angle, clock } = part;
  const { facing } = words.steps;
  const header = facing.header(name, parts.length > 1 ? place + 1 : undefined);
  const { heel } = sideNames(part, words);
  const way = angle.rad <= Math.PI / 2 ? 1 : -1;
  const right = (value: number): boolean => value * way > 0;
  const beside = wrapStation(clock.rad - (parts[0].clock.rad ?? 0), 2 * Math.PI);
  return [
    ...(place > 0 && Math.abs(Math.sin(beside)) > 1e-9 ? [facing.stands(header, beside)] : []),
    ...(offset.mm !== 0 ? [facing.passes(header, right(offset.mm), heel)] : []),
    ...(onto.kind === 'box' && Math.abs(Math.sin(2 * onto.roll.rad)) > 1e-9
      ? [facing.rolled(header, onto.roll.rad, right(onto.roll.rad), heel)]
      : []),
    ...(onto.kind === 'bend' && Math.abs(Math.sin(onto.centre.rad)) > 1e-9
      ? [facing.bends(header, right(Math.sin(onto.centre.rad)), heel)]
      : []),
  ];
}
