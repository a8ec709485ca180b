import type { NamedEnd, Piece } from '../piece.ts';
import { type Step, step } from './step.ts';

/** The marks that a fitted end is laid on, made with the first one in its place. */
export function markSteps({ first, units, words }: Piece, { cope, name }: NamedEnd): Step[] {
  const { fitUp } = cope;
  const { marks } = words.steps;
  if (!fitUp || !first) return [];
  const [{ angle, offset }] = cope.end.parts;
  const heel =
    angle.rad === Math.PI / 2 ? marks.squareSide(words.card.sideTaken(offset.mm, units)) : marks.heel;
  return [
    step('step:mark', marks.line(name, first.name, fitUp.clock, heel)),
    ...(fitUp.lengthSetback === undefined
      ? []
      : [step('step:length', marks.length(words.check.squareAcross))]),
  ];
}
