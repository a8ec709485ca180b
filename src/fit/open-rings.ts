import { tubeFactsOf } from '../job/sections.ts';
import type { Radians } from '../measure/units.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import type { Language } from '../words/language.ts';
import type { Doubt } from './size-as-meant.ts';

/** Of a ring that is bent half round: its first tube, how many there are of it, and the turn of each corner. */
interface Corners {
  readonly first: TubeSolution;
  readonly turn: Radians;
  readonly count: number;
}

/**
 * Tubes that are mitred at both ends to one side, as those of a ring are, and together turn half round: with twice the turn, of which a
 * saw's scale shows the half, they close it. Told of the first of them.
 */
export function openRings(
  solutions: readonly TubeSolution[],
  { warnings }: Language,
): readonly (readonly [TubeSolution, NonNullable<Doubt>])[] {
  const rings = new Map<string, Corners>();
  for (const solution of solutions) {
    const turn = turnOfBoth(solution);
    if (turn === undefined) continue;
    const key = `${turn.toFixed(6)} ${solution.tube.section.kind} ${tubeFactsOf(solution.tube.section).across.mm.toFixed(3)}`;
    const { first, count } = rings.get(key) ?? { first: solution, count: 0 };
    rings.set(key, { first, turn, count: count + solution.tube.copies });
  }
  return [...rings.values()].flatMap(({ first, turn, count }) => {
    const isHalfRound = count > 2 && Math.abs(count * turn - Math.PI) < 1e-6;
    return isHalfRound ? [[first, warnings.asMeant.openRing(count, turn)] as const] : [];
  });
}

/** How far a tube that is mitred alike at both ends turns at each, both to one side. */
function turnOfBoth({ tube: { ends } }: TubeSolution): Radians | undefined {
  const [a, b] = [ends.A, ends.B].map((end) =>
    end?.kind === 'coped' && end.parts.length === 1 ? end.parts[0] : undefined,
  );
  if (a?.onto.kind !== 'mitre' || b?.onto.kind !== 'mitre' || a.onto.segments || b.onto.segments)
    return undefined;
  const isAlike =
    Math.abs(a.onto.turn.rad - b.onto.turn.rad) < 1e-9 && Math.abs(a.clock.rad - b.clock.rad) < 1e-9;
  return isAlike ? a.onto.turn.rad : undefined;
}
