import type { TubeSolution } from '../saddle/solve.ts';
import { endAsMade, type Placings } from './as-made.ts';
import type { StandingTube } from './in-space.ts';

/** Whether no tube that is a piece has all its plain ends open, but one goes on in another tube: spliced to it, or inside it. */
export function goesOn(
  { ends, places }: TubeSolution,
  standings: readonly StandingTube[],
  placings: Placings,
): boolean {
  const plain = (['A', 'B'] as const).filter((end) => ends[end]?.kind === 'plain');
  const isOpen = (tube: number): boolean =>
    plain.every((end) => standings[tube]?.seat.ends[endAsMade(placings, tube, end)].open);
  return places !== undefined && !places.some(({ tube }) => isOpen(tube));
}
