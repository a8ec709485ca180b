import type { Cope } from '../../saddle/cope.ts';
import type { Language } from '../../words/language.ts';
import { type Fact, factOf } from './fact.ts';

/** Where the marks are made that a leaf is laid on; none for an end with numbers. */
export function fitUpFacts({ fitUp, end }: Cope, units: 'mm' | 'in', { card, check }: Language): Fact[] {
  if (!fitUp) return [];
  const [{ angle, offset }] = end.parts;
  const side = angle.rad === Math.PI / 2 ? card.sideTaken(offset.mm, units) : undefined;
  const length = factOf('marks', card.labels.length, card.lengthMark(fitUp.clock, check.squareAcross));
  return [
    ...(fitUp.clock ? [factOf('marks', card.labels.rotation, card.rotationMark(side))] : []),
    ...(fitUp.lengthSetback === undefined ? [] : [length]),
  ];
}
