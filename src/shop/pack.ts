import type { Box } from '../draw/drawing.ts';
import type { Job } from '../job/job.ts';
import type { Said } from '../measure/said.ts';
import type { TubeSolution } from '../saddle/solve.ts';
import type { FrontBox, FrontPages } from '../tiler/front.ts';
import { type StandingFrame, standingFrame } from '../together/frame-notes.ts';
import { measuresNote, openNote } from '../together/frame-report.ts';
import { inFrameOf } from './frame/place-facts.ts';
import { viewBoxes } from './frame/views.ts';
import { blankRows } from './lists/cut-list.ts';
import { cautionBoxes, listBoxes, stockBoxes } from './lists/list-pages.ts';
import { firstEnds, orderOfWork } from './lists/order.ts';
import { stockPlan } from './lists/stock.ts';
import { printedWith } from './numbered.ts';
import { ticketBoxes } from './ticket/boxes.ts';
import { marked } from './ticket/marks.ts';
import { ticketsOf } from './ticket/ticket.ts';

/**
 * The shop pack of a job: its cautions and lists, then a ticket for each tube, which names the footprints where they are printed; of
 * one tube no list, for its ticket has all of it but the stock. Of a frame its views come first, unless it is not `viewed`. Gives the
 * boxes of them for the room that a sheet's furniture leaves, for `laySheets` to lay before the leaves.
 */
export function shopPack(
  job: Job,
  solutions: readonly TubeSolution[],
  footprints: boolean,
  viewed = true,
): FrontPages {
  const stages = orderOfWork(solutions);
  const stock = stockPlan(job, solutions);
  const frame = standingFrame(job);
  const tickets = ticketsOf(solutions, firstEnds(stages), footprints, job.words, inFrameOf(job)).map(
    (ticket) => marked(ticket, printedWith(job, footprints)),
  );
  const numbers = new Map(
    tickets.flatMap(({ number, hands }) => hands.map(({ solution }) => [solution, number])),
  );
  const lists = {
    words: job.words,
    units: job.units,
    rows: blankRows(solutions, job.units, job.words),
    stages,
    ticketOf: ({ solution }: { solution: TubeSolution }) => numbers.get(solution) ?? 0,
    ...(stock && { stock }),
    ...(frame && { notes: notesOf(job, frame) }),
  };
  const views = (room: Box): readonly FrontBox[] => (frame && viewed ? viewBoxes(job, frame, room) : []);
  if (tickets.length > 1)
    return (room, widest = () => []) => [
      ...views(room),
      ...listBoxes(lists, room),
      ...ticketBoxes(tickets, room, widest),
    ];
  return (room, widest = () => []) => {
    const cautions = cautionBoxes(job.words, job.units, room);
    const above = cautions.reduce((sum, { height }) => sum + height, 0);
    return [
      ...views(room),
      ...cautions,
      ...ticketBoxes(tickets, room, widest, above),
      ...stockBoxes(lists, room),
    ];
  };
}

/** What is told beside the cut list of a frame. */
function notesOf(job: Job, frame: StandingFrame): readonly Said[] {
  const open = openNote(job, frame);
  return [
    measuresNote(job, frame),
    ...(open ? [job.words.frame.openEnds(open)] : []),
    ...frame.warnings.map(({ text }) => text),
  ];
}
