import { sideTaken } from '../../leaf/card/fit-up-facts.ts';
import { check } from '../../words/english/check.ts';
import type { NamedEnd, Piece } from '../piece.ts';

/** The marks that a fitted end is laid on, made with the first one in its place. */
export function markSteps({ first, units }: Piece, { cope, name }: NamedEnd): string[] {
  const { fitUp } = cope;
  if (!fitUp || !first) return [];
  const held = `With end ${first.name} seated, hold the tube close beside end ${name}’s header, along where it is to go`;
  const [{ angle, offset }] = cope.end.parts;
  const heel =
    angle.rad === Math.PI / 2
      ? `the middle of a side that faces along the header${sideTaken(offset.mm, units)}`
      : 'the middle of its heel side, which faces the acute corner';
  const line = fitUp.clock
    ? `${held}. Scribe the rotation mark along ${heel}.`
    : `${held}, and find ${heel}.`;
  const length = `On that line mark the length: ${check.squareAcross}.`;
  return [line, ...(fitUp.lengthSetback === undefined ? [] : [length])];
}
