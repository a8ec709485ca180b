import type { EndName } from '../../job/job.ts';
import { type Fact, factOf } from '../../leaf/card/fact.ts';
import { leafNumbers, markOf } from '../../leaf/numbers.ts';
import type { Said } from '../../measure/said.ts';
import { sawnAt } from '../../saddle/sawn.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
import { joined } from '../../words/said.ts';
import type { Ticket } from './ticket.ts';
import { footprintsAt, type PrintedWith, ticketNumbers } from './ticket-numbers.ts';

/**
 * The ticket with the mark of its numbers, and with the marks that its leaves and footprints must have: with its end's facts, or with its
 * hand's where the hands' differ.
 */
export function marked(ticket: Ticket, printed: PrintedWith): Ticket {
  const hands = ticket.hands.map(({ solution }) => solution);
  const { labels, footprintMarks } = ticket.words.ticket;
  const marksOf = (solution: TubeSolution, end: EndName): readonly Said[] => {
    const isSawn = sawnAt(solution, end) !== undefined;
    const leaf = isSawn ? [] : [markOf(leafNumbers(solution, end, printed.paperThickness))];
    const footprints = footprintsAt(solution, hands, end, printed).map(markOf);
    return [...leaf, ...(footprints.length > 0 ? [footprintMarks(footprints)] : [])];
  };
  const factsOf = (solution: TubeSolution, end: EndName): readonly Fact[] => {
    const marks = marksOf(solution, end);
    return marks.length > 0 ? [factOf('mark', labels.mark, joined(marks, ', '))] : [];
  };
  const ends = ticket.ends.map((end) => {
    const facts = hands.map((solution) => factsOf(solution, end.name));
    return { end, facts, alike: facts.every(([fact]) => fact?.text === facts[0]?.[0]?.text) };
  });
  return {
    ...ticket,
    mark: markOf(ticketNumbers(hands, printed, ticket.places)),
    ends: ends.map(({ end, facts, alike }) => ({
      ...end,
      facts: [...end.facts, ...(alike ? (facts[0] ?? []) : [])],
    })),
    hands: ticket.hands.map((hand, i) => ({
      ...hand,
      facts: [
        ...hand.facts,
        ...ends.flatMap(({ end, facts, alike }) =>
          alike ? [] : (facts[i] ?? []).map((fact) => ({ end: end.name, fact })),
        ),
      ],
    })),
  };
}
