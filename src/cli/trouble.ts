import { type Complaint, Refusal } from '../job/text/complaint.ts';
import { onOneLine, shortened } from '../job/text/quoting.ts';
import type { Objection } from '../words/said.ts';
import type { Shell } from './shell.ts';

export const DONE = 0;
/** Permission, disk, or a fault of the program. */
export const FAILED = 1;
/** The input is wrong: the job, the flags, the usage, a missing file. */
export const WRONG_INPUT = 2;

/** Something outside the input stopped the command: a full disk, a folder that may not be written to. */
export class Obstacle extends Error {
  readonly complaint: Complaint;

  constructor(complaint: Complaint) {
    super(complaint.why);
    this.name = 'Obstacle';
    this.complaint = complaint;
  }
}

/** A refusal with one complaint about the command line or a file, not about a place inside one. */
export function refuse(code: string, file: string, read: string, why: string, instead: string): Refusal {
  const said = (text: string, most?: number): string => shortened(onOneLine(text), most) || 'nothing';
  return new Refusal([
    { code, file: said(file), read: said(read), why: said(why, 200), instead: onOneLine(instead) },
  ]);
}

/** The same where it is already said why not, and what to write instead. */
export function objectTo(code: string, file: string, read: string, { why, instead }: Objection): Refusal {
  return refuse(code, file, read, why, instead);
}

/** Says on standard error what went wrong and gives the exit code. Never a stack trace. */
export function tell(error: unknown, shell: Shell, asJson: boolean): number {
  const { complaints, exit } = complaintsOf(error);
  if (asJson) shell.err(`${JSON.stringify({ errors: complaints.map(asData) })}\n`);
  else shell.err(`${complaints.map(inWords).join('\n')}\n`);
  return exit;
}

/** What programs are told of a complaint. */
function asData({
  code,
  file,
  line,
  column,
  read,
  why,
  instead,
}: Complaint): Omit<Complaint, 'key' | 'lacking'> {
  return { code, file, ...(line && { line }), ...(column && { column }), read, why, instead };
}

function complaintsOf(error: unknown): { complaints: readonly Complaint[]; exit: number } {
  if (error instanceof Refusal) return { complaints: error.complaints, exit: WRONG_INPUT };
  if (error instanceof Obstacle) return { complaints: [error.complaint], exit: FAILED };
  const complaint = {
    code: 'fault',
    file: 'copeleaf',
    read: 'what you asked for',
    why: `the program failed: ${error instanceof Error ? error.message : String(error)}`,
    instead: 'the same again will not help; please report it with the job file',
  };
  return { complaints: [complaint], exit: FAILED };
}

function inWords({ file, line, column, read, why, instead }: Complaint): string {
  const place =
    line === undefined ? file : `${file}, line ${line}${column === undefined ? '' : `, column ${column}`}`;
  return [`${place}:`, `  read     ${read}`, `  but      ${why}`, `  instead  ${instead}`].join('\n');
}
