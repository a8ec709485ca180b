import type { Job } from '../job/job.ts';
import type { LeafContext } from '../leaf/draw-leaf.ts';
import { numbersOfFootprint } from '../leaf/footprint/leaf.ts';
import { printedOf } from '../leaf/leaves-of.ts';
import { leafNumbers, markOf } from '../leaf/numbers.ts';
import type { Said } from '../measure/said.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import { asWritten } from '../words/said.ts';
import { placeFacts, placesOnHeaders } from './frame/place-facts.ts';
import { handsTogether } from './ticket/ticket.ts';
import { type PrintedWith, ticketNumbers } from './ticket/ticket-numbers.ts';

/** A leaf or a ticket, by what it is made from. */
export interface Numbered {
  readonly numbers: string;
  /** Which it is, and its mark. */
  readonly title: Said;
}

/** Every leaf of a job, and its footprints and tickets where they are asked for. Nothing is drawn. */
export function numberedOf(
  job: Job,
  pieces: readonly TubeSolution[],
  context: LeafContext,
  footprints: boolean,
): readonly Numbered[] {
  const { words } = job;
  const leaves = pieces.flatMap((solution) =>
    printedOf(solution, context, footprints).map(({ end, part }): Numbered => {
      const title = words.leaf.title(asWritten(solution.tube.name), end, solution.hand === 'opposite');
      const [numbers, what] =
        part === undefined
          ? [leafNumbers(solution, end, context.paperThickness), title]
          : [numbersOfFootprint(solution, end, part, context), words.footprint.title(title, undefined)];
      return { numbers, title: words.leaf.marked(what, markOf(numbers)) };
    }),
  );
  if (!context.ticketed) return leaves;
  const tickets = handsTogether(pieces).map((hands): Numbered => {
    const numbers = numbersOfTicket(job, hands, footprints);
    return {
      numbers: withNotes(numbers, job, hands),
      title: words.leaf.marked(words.ticket.named(asWritten(hands[0].tube.name)), markOf(numbers)),
    };
  });
  return [...leaves, ...tickets];
}

/** The tubes, both hands of each, whose tickets do not stand yet. */
export function withNewTicket(
  job: Job,
  pieces: readonly TubeSolution[],
  footprints: boolean,
  stands: (numbers: string) => boolean,
): readonly TubeSolution[] {
  return handsTogether(pieces)
    .filter((hands) => !stands(withNotes(numbersOfTicket(job, hands, footprints), job, hands)))
    .flat();
}

/** What the ticket of a tube of these hands is made from. */
export function numbersOfTicket(job: Job, hands: readonly TubeSolution[], footprints: boolean): string {
  const places = hands.flatMap((hand) => placeFacts(job, hand));
  return ticketNumbers(hands, printedWith(job, footprints), places);
}

/** What a job's tickets are printed with. */
export function printedWith(job: Job, footprints: boolean): PrintedWith {
  return { footprints, paperThickness: job.sheet.paperThickness.mm, ...placesOnHeaders(job) };
}

/** A ticket whose note has other words is another one, though it has no other numbers and so no other mark. */
function withNotes(numbers: string, { tubes }: Job, hands: readonly TubeSolution[]): string {
  const notes = hands.flatMap(({ tube, places }) =>
    (places ?? [{ tube: -1 }]).flatMap((place) => (tubes[place.tube] ?? tube).note ?? []),
  );
  return notes.length > 0 ? `${numbers} / ${JSON.stringify(notes)}` : numbers;
}
