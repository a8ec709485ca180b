import type { Misreading } from '../../measure/misreading.ts';

/** One mistake in what was asked, with its place. Lines and columns count from 1. */
export interface Complaint extends Misreading {
  /** A short fixed word for programs, e.g. `unknown-key`. */
  readonly code: string;
  readonly file: string;
  readonly line?: number;
  readonly column?: number;
}

/** Thrown where the input is wrong: all its mistakes at once. Carries data; the cli makes the words. */
export class Refusal extends Error {
  readonly complaints: readonly [Complaint, ...Complaint[]];

  constructor(complaints: readonly [Complaint, ...Complaint[]]) {
    super(complaints.map((complaint) => complaint.why).join('\n'));
    this.name = 'Refusal';
    this.complaints = complaints;
  }
}
