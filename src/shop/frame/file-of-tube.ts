import { jobOfTube } from '../../frame/one-tube.ts';
import { readFrame } from '../../frame/read-frame.ts';
import { frameOfTubes } from '../../frame/tube-in-frame.ts';
import type { Job, NoteLine, TicketNote } from '../../job/job.ts';
import { Refusal } from '../../job/text/complaint.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
import { standingFrame } from '../../together/frame-notes.ts';
import { solvePieces } from '../../together/pieces.ts';
import { piecesNamed } from '../../together/pieces-named.ts';
import { numbersOfTicket } from '../numbered.ts';
import { inFrameOf, placeFacts } from './place-facts.ts';

/** A tube of a frame in a file of its own. */
export interface FileOfTube {
  readonly text: string;
  /** How many more tubes of the frame are the same piece or its mirror image. */
  readonly others: number;
  /** Whether it is a job of that one tube, and no frame. */
  readonly alone: boolean;
}

/**
 * A file from which a tube of a frame is printed as `--only` prints it, with all that is the same piece, its mirror image and where each
 * goes: a job of its own; a frame of it and the tubes that shape it where a header stops or the hands are not as many; or the whole frame,
 * where less would come out otherwise. Throws `Refusal` as `solvePieces` does.
 */
export function fileOfTube(job: Job, name: string): FileOfTube {
  const all = solvePieces(job);
  const pieces = piecesNamed(job, all, new Set([name]));
  const [first, image] = pieces;
  const others = tubesOf(pieces).size - 1;
  const place = first?.places?.[0]?.tube ?? 0;
  const isEven = first && (image === undefined || image.tube.copies === first.tube.copies);
  const alone = isEven && jobOfTube(job, place, { ...first.tube, note: noteOf(job, pieces) });
  if (alone && printsAlike(alone, job, pieces)) return { text: alone, others, alone: true };
  const some = frameOfTubes(job, tubesAbout(job, all, pieces));
  return { text: some && printsAlike(some, job, pieces) ? some : job.source, others, alone: false };
}

/** The lines of a ticket's places, as a person would write them. */
function noteOf(job: Job, pieces: readonly TubeSolution[]): TicketNote {
  const note: [NoteLine, ...NoteLine[]][] = [];
  for (const { fact, label, text } of pieces.flatMap((piece) => placeFacts(job, piece)).flat()) {
    if (fact === 'landing') note.at(-1)?.push({ of: label, says: text });
    else note.push([fact === 'note' ? { says: text } : { of: label, says: text }]);
  }
  return note;
}

/** Whether a file comes to the same leaves and the same ticket, word for word where the places are told. */
function printsAlike(text: string, job: Job, pieces: readonly TubeSolution[]): boolean {
  const told = (whose: Job, hands: readonly TubeSolution[]): string => {
    const { placesOf, goesOn } = inFrameOf(whose);
    return JSON.stringify([numbersOfTicket(whose, hands, false), hands.flatMap(placesOf), hands.map(goesOn)]);
  };
  try {
    const own = readFrame(text, 'job.yaml', { words: job.words, paper: job.sheet.paper });
    const its = piecesNamed(own, solvePieces(own), new Set([pieces[0]?.tube.name ?? '']));
    return told(own, its) === told(job, pieces);
  } catch (error) {
    if (error instanceof Refusal) return false;
    throw error;
  }
}

/**
 * The tubes that have to stand whole for these pieces to come out as they are, by their places in the job: every tube that is such a piece,
 * what lands on it, what it is spliced to, and what it lands on, from whose ends it is measured; and of these each that is the same piece, for by its first a piece has
 * its ends.
 */
function tubesAbout(
  job: Job,
  all: readonly TubeSolution[],
  pieces: readonly TubeSolution[],
): ReadonlySet<number> {
  const { standings = [], landings = [], splices = [] } = standingFrame(job) ?? {};
  const own = tubesOf(pieces);
  const landers = landings.filter(({ on }) => own.has(on)).map(({ tube }) => tube);
  const spliced = splices.filter(({ tube }) => own.has(tube)).map(({ to }) => to);
  const headers = [...own].flatMap((tube) => {
    const { A, B } = standings[tube]?.seat.ends ?? {};
    return [...(A?.headers ?? []), ...(B?.headers ?? [])];
  });
  const names = [...own, ...landers, ...spliced, ...headers].flatMap((tube) => job.tubes[tube]?.name ?? []);
  return tubesOf(piecesNamed(job, all, new Set(names)));
}

function tubesOf(pieces: readonly TubeSolution[]): ReadonlySet<number> {
  return new Set(pieces.flatMap(({ places = [] }) => places.map(({ tube }) => tube)));
}
