import type { Said } from '../../measure/said.ts';
import type { Objection } from '../../words/said.ts';

/** Why something a person wrote was not taken: what was read, why not, what to write instead. */
export interface Misreading extends Objection {
  readonly read: Said;
}

/** One mistake in what was asked, with its place. Lines and columns count from 1. */
export interface Complaint extends Misreading {
  /** A short fixed word for programs, e.g. `unknown-key`. */
  readonly code: string;
  readonly file: string;
  readonly line?: number;
  readonly column?: number;
  /**
   * The key that it is about, as the job file writes it, for what shows a mistake beside its value: the key whose value can't
   * be taken, or the one that is not there. Left out where it is about no one key. Not a part of the JSON of errors.
   */
  readonly key?: string;
  /** Nothing is written there yet: the key is not there, or it has no value. Not a part of the JSON of errors. */
  readonly missing?: true;
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
