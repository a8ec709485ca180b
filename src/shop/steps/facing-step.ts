import type { EndName, Part } from '../../job/job.ts';
import { linesAcross } from '../../leaf/picture/heels-picture.ts';
import { sideNames } from '../../leaf/wrap/sides.ts';
import type { Said } from '../../measure/said.ts';
import type { NamedEnd, Piece } from '../piece.ts';
import { squareEndOf } from './cope-steps.ts';
import { type Step, step } from './step.ts';

/** The last look before the second end, by the picture of both ends: most tubes are spoilt there. Of a pair it tells the hands apart. */
export function facingStep(piece: Piece, end: NamedEnd): Step {
  return facing(piece, end, piece.first?.name);
}

/**
 * The same look before the first of two ends, where a leaf wrapped inside out would lie otherwise: the look at the second can't find that, for
 * each leaf is laid on the spine by itself. A heel on the spine or opposite lies there both ways. Before an only one, where its leaf lies away
 * from the tube's end, so that nothing else shows which way it faces.
 */
export function firstFacingStep(piece: Piece, end: NamedEnd): Step[] {
  const { second } = piece;
  const from = squareEndOf(piece);
  if (from) return [step('step:facing', piece.words.steps.facing.check(end.name, from, undefined))];
  if (!second || second.cope.fitUp?.clock || end.cope.fitUp?.clock) return [];
  return end.cope.end.parts.some(isBesideSpine) ? [facing(piece, end, undefined)] : [];
}

function isBesideSpine({ clock }: Part): boolean {
  return Math.abs(Math.sin(clock.rad)) > 1e-9;
}

/** `from` is the end that is cut already. */
function facing(piece: Piece, end: NamedEnd, from: EndName | undefined): Step {
  return step('step:facing', piece.words.steps.facing.check(end.name, from, heldWords(piece, end)));
}

/** What is marked at the frame is in no picture; what lies alike all round has nothing to look at. */
function heldWords({ solution, words }: Piece, { name, cope }: NamedEnd): Said | undefined {
  const { facing } = words.steps;
  const { parts } = cope.end;
  if (cope.fitUp?.clock) return facing.leafHeld(name, parts[0].angle.rad === Math.PI / 2);
  const [line] = linesAcross(solution, words).flatMap(({ end, word }) => (end === name ? [word.text] : []));
  // Which header is met where follows from how they cut one another, and not from how each runs: no line of the picture shows it.
  if (parts.length > 1) return facing.stretches(name, line !== undefined, solution.tube.pair);
  return line && facing.picture(name, sideNames(parts[0], words).heel, line, solution.tube.pair);
}
