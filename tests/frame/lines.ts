import { type FrameOfLines, frameOfLines, type LinesAsk } from '../../src/frame/lines/frame-of-lines.ts';
import { readFrame } from '../../src/frame/read-frame.ts';
import type { Job } from '../../src/job/job.ts';
import { paperOfRegion } from '../../src/job/paper/regional-paper.ts';
import { type Complaint, Refusal } from '../../src/job/text/complaint.ts';
import { ENGLISH } from '../../src/words/english.ts';

export type Place = readonly [number, number, number];

/** A line as a test knows it. */
export interface PlainLine {
  readonly from: Place;
  readonly to: Place;
}

/** A frame's file from a table or a drawing, as the command makes it. */
export function framed(source: string, more: Partial<LinesAsk> = {}): FrameOfLines {
  return frameOfLines(source, {
    format: 'csv',
    file: 'lines.csv',
    words: ENGLISH,
    units: undefined,
    isUp: 'z',
    keepPieces: false,
    ...more,
  });
}

export function readBack(text: string): Job {
  return readFrame(text, 'lines.yaml', { words: ENGLISH, paper: paperOfRegion('GB') });
}

/** The axes of a frame's tubes, by their names. */
export function axesOf({ tubes, frame }: Job): ReadonlyMap<string, PlainLine> {
  return new Map(
    (frame?.seats ?? []).map(({ from, axis, length }, i) => [
      tubes[i]?.name ?? '',
      {
        from,
        to: [from[0] + length * axis[0], from[1] + length * axis[1], from[2] + length * axis[2]],
      },
    ]),
  );
}

/** The one mistake that is told, or what came of it. */
export function refusalOf(act: () => unknown): Complaint {
  try {
    act();
  } catch (error) {
    if (error instanceof Refusal && error.complaints.length === 1) return error.complaints[0];
    throw error;
  }
  throw new Error('nothing was refused');
}

export function far(a: Place, b: Place): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}
