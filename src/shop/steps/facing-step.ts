import { linesAcross } from '../../leaf/picture/heels-picture.ts';
import { sideNames } from '../../leaf/wrap/sides.ts';
import type { Said } from '../../measure/said.ts';
import type { NamedEnd, Piece } from '../piece.ts';
import { type Step, step } from './step.ts';

/** The last look before the second end, by the picture of both ends: most tubes are spoilt there. Of a pair it tells the hands apart. */
export function facingStep(piece: Piece, { name, cope }: NamedEnd): Step {
  const { first, words } = piece;
  return step('step:facing', words.steps.facing.check(name, first?.name, heldWords(piece, { name, cope })));
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
