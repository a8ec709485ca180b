import type { Fact } from '../../leaf/card/fact.ts';
import { askedNumbers, hundredths, leafNumbers } from '../../leaf/numbers.ts';
import type { Mm } from '../../measure/units.ts';
import type { TubeSolution } from '../../saddle/solve.ts';

/**
 * What the ticket of a tube of these hands is made from: its leaves, what was asked, its lengths, how many, and the numbers that its lines
 * of places have, wherever these lines come from.
 */
export function ticketNumbers(
  hands: readonly TubeSolution[],
  paperThickness: Mm,
  places: readonly (readonly Fact[])[],
): string {
  const own = hands.map((solution) => handNumbers(solution, paperThickness));
  const said = places.flatMap((lines) => lines.map(({ text }) => (text.match(/\p{N}+/gu) ?? []).join(' ')));
  return ['ticket', ...own, ...said].join(' / ');
}

function handNumbers(solution: TubeSolution, paperThickness: Mm): string {
  const { tube, ends, lengths, twist } = solution;
  const leaves = (['A', 'B'] as const).map((end) =>
    ends[end]?.kind === 'coped' ? leafNumbers(solution, end, paperThickness) : '',
  );
  const { overall, between, blank } = lengths ?? { overall: 0, between: 0, blank: 0 };
  return [...leaves, askedNumbers(tube), hundredths([overall, between, blank, 100 * (twist ?? 0)])].join(
    ' / ',
  );
}
