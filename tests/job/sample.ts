import type { Job } from '../../src/job/job.ts';
import { readJob } from '../../src/job/read-job.ts';
import { type Complaint, Refusal } from '../../src/job/text/complaint.ts';
import { ENGLISH } from '../../src/words/english.ts';

/** A brace of the trailer, both ends on its rails. */
export const SAMPLE = `copeleaf: 1
units: in
tube: # of the bunk
  name: bunk stay
  od: 1-1/4in
  wall: 0.095in
  between: 24-3/8in # work point to work point
  edge: bevel
  ends:
    A: { onto: { od: 1-1/2in }, angle: 62deg }
    B: { onto: { od: 1-1/2in }, angle: 48deg, clock: 35deg, offset: 3/32in }
pair: true
paper: letter
`;

export const A4 = { name: 'A4', width: 210, height: 297 };

export function readSample(text: string): Job {
  return readJob(text, 'trailer.yaml', { words: ENGLISH, paper: A4 });
}

export function complaintsAbout(text: string): readonly Complaint[] {
  return refusalOf(() => readSample(text));
}

/** The complaints of what is thrown; none where nothing is, and any other error goes on. */
export function refusalOf(read: () => unknown): readonly Complaint[] {
  try {
    read();
  } catch (error) {
    if (error instanceof Refusal) return error.complaints;
    throw error;
  }
  return [];
}
