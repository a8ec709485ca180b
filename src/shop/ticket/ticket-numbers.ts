import { askedNumbers, hundredths, leafNumbers } from '../../leaf/numbers.ts';
import type { Mm } from '../../measure/units.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
import type { StandingFrame } from '../../together/frame-notes.ts';

/** What the ticket of a tube of these hands is made from: its leaves, what was asked, its lengths, how many, and what lands where on it. */
export function ticketNumbers(
  hands: readonly TubeSolution[],
  paperThickness: Mm,
  frame: StandingFrame | undefined,
): string {
  return ['ticket', ...hands.map((solution) => handNumbers(solution, paperThickness, frame))].join(' / ');
}

function handNumbers(solution: TubeSolution, paperThickness: Mm, frame: StandingFrame | undefined): string {
  const { tube, ends, lengths, twist, places = [] } = solution;
  const leaves = (['A', 'B'] as const).map((end) =>
    ends[end]?.kind === 'coped' ? leafNumbers(solution, end, paperThickness) : '',
  );
  const { overall, between, blank } = lengths ?? { overall: 0, between: 0, blank: 0 };
  const laid = places.map(
    ({ tube: place, spineAt, swapped }) =>
      `${swapped} ${hundredths([100 * spineAt])} ${landed(place, frame)}`,
  );
  return [
    ...leaves,
    askedNumbers(tube),
    hundredths([overall, between, blank, 100 * (twist ?? 0)]),
    ...laid,
  ].join(' / ');
}

/** What lands on a tube, to a hundredth of a millimetre or of a degree or so. */
function landed(on: number, frame: StandingFrame | undefined): string {
  const its = frame?.marked.filter((landing) => landing.on === on) ?? [];
  return its
    .map(({ from, to, mark, station, end }) => `${end} ${hundredths([from, to, mark ?? 0, 100 * station])}`)
    .join(', ');
}
