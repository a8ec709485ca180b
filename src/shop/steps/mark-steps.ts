import type { Said } from '../../measure/said.ts';
import type { NamedEnd, Piece } from '../piece.ts';

/** The marks that a fitted end is laid on, made with the first one in its place. */
export function markSteps({ first, units, words }: Piece, { cope, name }: NamedEnd): Said[] {
  const { fitUp } = cope;
  const { marks } = words.steps;
  if (!fitUp || !first) return [];
  const [{ angle, offset }] = cope.end.parts;
  const heel =
    angle.rad === Math.PI / 2 ? marks.squareSide(words.card.sideTaken(offset.mm, units)) : marks.heel;
  const line = marks.line(name, first.name, fitUp.clock, heel);
  return [line, ...(fitUp.lengthSetback === undefined ? [] : [marks.length(words.check.squareAcross)])];
}
