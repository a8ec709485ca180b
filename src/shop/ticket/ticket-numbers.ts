import type { EndName } from '../../job/job.ts';
import type { Fact } from '../../leaf/card/fact.ts';
import type { LeafContext } from '../../leaf/draw-leaf.ts';
import { landings, numbersOfFootprint } from '../../leaf/footprint/leaf.ts';
import { askedNumbers, hundredths, leafNumbers, servesBothHands } from '../../leaf/numbers.ts';
import type { TubeSolution } from '../../saddle/solve.ts';

/** What is printed with a ticket: on which paper, and whether the footprints too and where in a frame these go. */
export interface PrintedWith extends Pick<LeafContext, 'paperThickness' | 'placeOf'> {
  readonly footprints: boolean;
}

/**
 * What the ticket of a tube of these hands is made from: its leaves and footprints, what was asked, its lengths, how many, and the
 * numbers that its lines of places have, wherever these lines come from.
 */
export function ticketNumbers(
  hands: readonly TubeSolution[],
  printed: PrintedWith,
  places: readonly (readonly Fact[])[],
): string {
  const own = hands.map((solution) => handNumbers(solution, hands, printed));
  const said = places.flatMap((lines) => lines.map(({ text }) => (text.match(/\p{N}+/gu) ?? []).join(' ')));
  return ['ticket', ...own, ...said].join(' / ');
}

function handNumbers(solution: TubeSolution, hands: readonly TubeSolution[], printed: PrintedWith): string {
  const { tube, ends, lengths, twist } = solution;
  const leaves = (['A', 'B'] as const).map((end) =>
    ends[end]?.kind === 'coped' ? leafNumbers(solution, end, printed.paperThickness) : '',
  );
  const footprints = (['A', 'B'] as const).flatMap((end) => footprintsAt(solution, hands, end, printed));
  const { overall, between, blank } = lengths ?? { overall: 0, between: 0, blank: 0 };
  return [
    ...leaves,
    askedNumbers(tube),
    hundredths([overall, between, blank, 100 * (twist ?? 0)]),
    ...footprints,
  ].join(' / ');
}

/** The numbers of each footprint that is printed of an end: where one serves both hands and tells no place, of the one as drawn. */
export function footprintsAt(
  solution: TubeSolution,
  [drawn = solution]: readonly TubeSolution[],
  end: EndName,
  { footprints, ...context }: PrintedWith,
): readonly string[] {
  const cope = solution.ends[end];
  if (!footprints || cope?.kind !== 'coped') return [];
  const printed = !context.placeOf && servesBothHands(solution, end) ? drawn : solution;
  return landings(cope).map((part) => numbersOfFootprint(printed, end, part, context));
}
