import type { BoxHeader, Part, Tube } from '../job/job.ts';
import type { Mm, Radians } from '../measure/units.ts';
import type { Language } from '../words/language.ts';
import { headersApart, onlyPart } from './headers-apart.ts';
import type { Doubt } from './size-as-meant.ts';

/** Lengths and angles that are written alike. */
const SAME = 1e-6;

/** What each end says makes a joint, and both together were mostly meant otherwise: where a mistake undoes another. */
export function endsAsMeant(tube: Tube, words: Language): readonly Doubt[] {
  const [a, b] = [onlyPart(tube.ends.A), onlyPart(tube.ends.B)];
  if (!a || !b) return [];
  return [onTwoSides(tube, a, b, words), turnedOverTwice(a, b, words), boxTurnedTwice(a, b, words)];
}

/** Parallel headers of one size, one as far to the right of the tube as the other is to its left, where a rung mostly lies flush with both. */
function onTwoSides(tube: Tube, a: Part, b: Part, { warnings }: Language): Doubt {
  const apart = headersApart(tube);
  if (apart === undefined || apart > SAME || sizeOf(a) !== sizeOf(b)) return undefined;
  const beside = (part: Part): Mm => part.offset.mm * Math.cos(part.clock.rad - a.clock.rad);
  const isAcross = Math.abs(beside(a)) > SAME && Math.abs(beside(a) + beside(b)) < SAME;
  return isAcross ? warnings.asMeant.onTwoSides(a.offset) : undefined;
}

function sizeOf({ onto }: Part): string {
  if (onto.kind === 'round') return `${onto.od.mm}`;
  return onto.kind === 'box' ? `${onto.wide.mm} ${onto.deep.mm}` : onto.kind;
}

/** Two ends whose headers would be parallel were only the angle taken from the other side, or only the clock turned; here both are. */
function turnedOverTwice(a: Part, b: Part, { warnings }: Language): Doubt {
  const [obtuse, other] = a.angle.rad > b.angle.rad ? [a, b] : [b, a];
  const isSupplement = Math.abs(a.angle.rad + b.angle.rad - Math.PI) < SAME;
  const isSquare = Math.abs(obtuse.angle.rad - other.angle.rad) < SAME;
  if (!isSupplement || isSquare || !isHalfTurn(a.clock.rad - b.clock.rad)) return undefined;
  return warnings.asMeant.turnedOverTwice(obtuse.angle, other.angle);
}

function isHalfTurn(turn: Radians): boolean {
  return Math.cos(turn) < SAME - 1;
}

/** A box whose two sides are changed round and which is rolled by a quarter turn as well stands as it stood. */
function boxTurnedTwice(a: Part, b: Part, { warnings }: Language): Doubt {
  if (a.onto.kind !== 'box' || b.onto.kind !== 'box') return undefined;
  const [one, other]: readonly [BoxHeader, BoxHeader] = [a.onto, b.onto];
  const isSquare = one.wide.mm === one.deep.mm;
  const isChanged = one.wide.mm === other.deep.mm && one.deep.mm === other.wide.mm;
  const isQuarter = Math.abs(Math.cos(one.roll.rad - other.roll.rad)) < SAME;
  return !isSquare && isChanged && isQuarter ? warnings.asMeant.boxTurnedTwice : undefined;
}
