import { type Complaint, Refusal } from '../job/text/complaint.ts';
import { clipped, onOneLine } from '../job/text/quoting.ts';
import { partOf, type Said } from '../measure/said.ts';
import type { Language } from '../words/language.ts';
import { asWritten, endedLines, type Objection } from '../words/said.ts';
import { OutputLost, type Shell } from './shell.ts';

export const DONE = 0;
/** Permission, disk, or a fault of the program. */
export const FAILED = 1;
/** The input is wrong: the job, the flags, the usage, a missing file. */
export const WRONG_INPUT = 2;

/** Something outside the input stopped the command: a full disk, a folder that may not be written to. */
export class Obstacle extends Error {
  readonly complaint: Complaint;

  constructor(code: string, path: string, objection: Objection) {
    super(objection.why);
    this.name = 'Obstacle';
    this.complaint = { code, file: path, read: asWritten(path), ...objection };
  }
}

/** A refusal with one complaint about the command line or a file, not about a place inside one. */
export function refuse(
  code: string,
  file: string,
  read: string,
  { why, instead }: Objection,
  { commandFaults }: Language,
): Refusal {
  const quoted = (text: string, most?: number): Said =>
    asWritten(clipped(onOneLine(text), most)) || commandFaults.nothing;
  const complaint = { code, file: quoted(file), read: quoted(read), why: quoted(why, 200) };
  return new Refusal([{ ...complaint, instead: partOf(instead, onOneLine(instead)) }]);
}

/** The same about what stands on the command line. */
export function refuseArgument(code: string, read: string, objection: Objection, words: Language): Refusal {
  return refuse(code, words.commandFaults.commandLine, read, objection, words);
}

/** As many mistakes as a person reads. */
const MOST_TOLD = 50;

/** Says on standard error what went wrong and gives the exit code. Never a stack trace. */
export function tell(error: unknown, { words, err }: Shell, asJson: boolean): number {
  const { complaints, exit } = complaintsOf(error, words);
  const told = complaints.slice(0, MOST_TOLD);
  const more = complaints.length - told.length;
  const { block, andMore } = words.commandFaults;
  err(
    endedLines(
      asJson
        ? [asWritten(JSON.stringify({ errors: told.map(asData), ...(more > 0 && { more }) }))]
        : [...told.map(block), ...(more > 0 ? [andMore(more)] : [])],
    ),
  );
  return exit;
}

/** What programs are told of a complaint. */
function asData({ code, file, line, column, read, why, instead }: Complaint): object {
  return { code, file, ...(line && { line }), ...(column && { column }), read, why, instead };
}

function complaintsOf(
  error: unknown,
  { commandFaults }: Language,
): { complaints: readonly Complaint[]; exit: number } {
  if (error instanceof Refusal) return { complaints: error.complaints, exit: WRONG_INPUT };
  if (error instanceof Obstacle) return { complaints: [error.complaint], exit: FAILED };
  if (error instanceof OutputLost) {
    const { standardOutput, unwritable } = commandFaults;
    const lost = new Obstacle('unwritable', standardOutput, unwritable(error.code));
    return { complaints: [lost.complaint], exit: FAILED };
  }
  const failed = commandFaults.failed(error instanceof Error ? error.message : String(error));
  return { complaints: [{ code: 'fault', file: asWritten('copeleaf'), ...failed }], exit: FAILED };
}
