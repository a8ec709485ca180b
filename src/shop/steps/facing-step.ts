import { sideNames } from '../../leaf/wrap/sides.ts';
import type { Said } from '../../measure/said.ts';
import type { NamedEnd, Piece } from '../piece.ts';
import { type Step, step } from './step.ts';

/** The last look before the second end, by the picture of both ends: most tubes are spoilt there. Of a pair it tells the hands apart. */
export function facingStep(piece: Piece, { name, cope }: NamedEnd): Step {
  const { first, words } = piece;
  return step('step:facing', words.steps.facing.check(name, first?.name, heldWords(piece, { name, cope })));
}

/** What is marked at the frame is in no picture. */
function heldWords({ solution, words }: Piece, { name, cope }: NamedEnd): Said {
  const { facing } = words.steps;
  const { parts } = cope.end;
  if (cope.fitUp?.clock) return facing.leafHeld(name, parts[0].angle.rad === Math.PI / 2);
  const side = parts.length > 1 ? undefined : sideNames(parts[0], words).heel;
  return facing.picture(name, side, solution.tube.pair);
}
