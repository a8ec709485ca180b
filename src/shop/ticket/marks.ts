import type { Fact } from '../../leaf/card/fact.ts';
import { leafNumbers, markOf } from '../../leaf/numbers.ts';
import type { Mm } from '../../measure/units.ts';
import { sawnAt } from '../../saddle/sawn.ts';
import type { Ticket } from './ticket.ts';
import { ticketNumbers } from './ticket-numbers.ts';

/** The ticket with the mark of its numbers, and with the marks that its leaves must have: with its end's facts, or with its hand's where the hands' differ. */
export function marked(ticket: Ticket, paperThickness: Mm): Ticket {
  const solutions = ticket.hands.map(({ solution }) => solution);
  const leaves = ticket.ends.map((end) => {
    const marks = solutions
      .filter((solution) => sawnAt(solution, end.name) === undefined)
      .map((solution) => markOf(leafNumbers(solution, end.name, paperThickness)));
    return { end, marks, alike: marks.every((mark) => mark === marks[0]) };
  });
  const fact = (text: Fact['text']): Fact => ({ fact: 'mark', label: ticket.words.ticket.labels.mark, text });
  return {
    ...ticket,
    mark: markOf(ticketNumbers(solutions, paperThickness, ticket.places)),
    ends: leaves.map(({ end, marks, alike }) => ({
      ...end,
      facts: [...end.facts, ...marks.slice(0, alike ? 1 : 0).map(fact)],
    })),
    hands: ticket.hands.map((hand, i) => ({
      ...hand,
      facts: [
        ...hand.facts,
        ...leaves.flatMap(({ end, marks, alike }) =>
          alike ? [] : marks.slice(i, i + 1).map((mark) => ({ end: end.name, fact: fact(mark) })),
        ),
      ],
    })),
  };
}
