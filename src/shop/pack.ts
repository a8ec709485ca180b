import type { Job } from '../job/job.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import type { FrontPages } from '../tiler/front.ts';
import { cutList } from './lists/cut-list.ts';
import { listBoxes } from './lists/list-pages.ts';
import { firstEnds, orderOfWork } from './lists/order.ts';
import { stockPlan } from './lists/stock.ts';
import { ticketBoxes } from './ticket/page.ts';
import { ticketsOf } from './ticket/ticket.ts';

/**
 * The shop pack of a job: its lists, then a ticket for each tube of each hand, which names the
 * footprints where they are printed. Gives the boxes of them for the room that a sheet's furniture leaves, for `laySheets` to lay
 * before the leaves.
 */
export function shopPack(job: Job, solutions: readonly TubeSolution[], footprints: boolean): FrontPages {
  const stages = orderOfWork(solutions);
  const stock = stockPlan(job, solutions);
  const tickets = ticketsOf(solutions, firstEnds(stages), footprints, job.words);
  const lists = {
    words: job.words,
    units: job.units,
    rows: cutList(solutions, job.words),
    stages,
    ticketOf: ({ solution }: { solution: TubeSolution }) => solutions.indexOf(solution) + 1,
    ...(stock && { stock }),
  };
  return (room) => [...listBoxes(lists, room), ...ticketBoxes(tickets, room)];
}
