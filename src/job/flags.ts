import type { Said } from '../measure/said.ts';
import type { Language } from '../words/language.ts';
import { asWritten } from '../words/said.ts';
import type { EndFlags } from './end-flags.ts';
import type { Job } from './job.ts';
import { type JobDefaults, readJobIn } from './read-job.ts';
import { type Complaint, Refusal } from './text/complaint.ts';
import type { Dialect } from './text/desk.ts';
import type { TextPlace } from './text/place.ts';
import { clipped, onOneLine } from './text/quoting.ts';

/** A line of the job file that the flags are written out as, and the flag that it comes from. */
interface Line {
  readonly text: string;
  readonly flag?: keyof EndFlags;
}

const FILE = 'flags';

/**
 * Reads one end from flags, by writing them out as a job file, so that both are read by one code and the file can
 * travel in the PDF. Throws `Refusal` whose complaints name the flags and have no line.
 */
export function jobFromFlags(flags: EndFlags, defaults: JobDefaults): Job {
  const end = (flags.end ?? 'A').trim().toUpperCase();
  const lines = jobLines(flags, end === 'B' ? 'B' : 'A');
  const wrongEnd = end === 'A' || end === 'B' ? [] : [badEnd(flags.end ?? '', defaults.words)];
  const job = readLines(flags, lines, defaults, wrongEnd);
  const [first, ...rest] = wrongEnd;
  if (first) throw new Refusal([first, ...rest]);
  return { ...job, origin: { file: FILE, places: flagPlaces(job, flags, lines) } };
}

function readLines(
  flags: EndFlags,
  lines: readonly Line[],
  defaults: JobDefaults,
  before: readonly Complaint[],
): Job {
  const source = `${lines.map((line) => line.text).join('\n')}\n`;
  try {
    return readJobIn(AS_FLAGS, source, FILE, defaults);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const [first, ...rest] = error.complaints.map((complaint) => ofFlag(complaint, flags, lines));
    throw first ? new Refusal([first, ...before, ...rest]) : error;
  }
}

const AS_FLAGS: Dialect = {
  key: (name) => asWritten(`\`--${name}\``),
  setting: (name, value) => asWritten(`\`--${name} ${value}\``),
};

function jobLines(flags: EndFlags, end: 'A' | 'B'): readonly Line[] {
  const line = (indent: number, flag: keyof EndFlags, key: string = flag): Line[] => {
    const value = flags[flag];
    return value === undefined ? [] : [{ text: `${' '.repeat(indent)}${key}: ${quoted(value)}`, flag }];
  };
  const linesOf = (indent: number, ...keys: (keyof EndFlags)[]): Line[] =>
    keys.flatMap((key) => line(indent, key));
  const onto = line(8, 'onto', 'od');
  const endLines = [
    ...(onto.length > 0 ? [{ text: '      onto:' }, ...onto] : []),
    ...linesOf(6, 'angle', 'clock', 'offset', 'edge', 'land'),
    // Under its own name where both are given, which is an error.
    ...line(6, 'blunt', flags.land === undefined ? 'land' : 'blunt'),
    ...linesOf(6, 'from', 'root'),
  ];
  return [
    { text: 'copeleaf: 1' },
    ...linesOf(0, 'units', 'paper', 'margin'),
    { text: 'tube:' },
    ...linesOf(2, 'od', 'pipe', 'wall'),
    { text: '  ends:' },
    { text: `    ${end}:` },
    // An end is a map even where no flag fills it.
    ...(endLines.length > 0 ? endLines : [{ text: '      {}' }]),
  ];
}

/** Plain where YAML can't take it for anything else, in double quotes otherwise: JSON's quoting is YAML's too. */
function quoted(value: string): string {
  return /^[A-Za-z0-9.][A-Za-z0-9./° "'-]*$/.test(value) && value.trim() === value
    ? value
    : JSON.stringify(value);
}

/** A flag and its words, as a message quotes them. */
function asGiven(flag: string, value = ''): Said {
  return asWritten(clipped(onOneLine(`--${flag} ${value}`).trim()));
}

function ofFlag(complaint: Complaint, flags: EndFlags, lines: readonly Line[]): Complaint {
  const { line, column, ...mistake } = complaint;
  const flag = line === undefined ? undefined : lines[line - 1]?.flag;
  const read = flag === undefined || mistake.code === 'missing' ? complaint.read : asGiven(flag, flags[flag]);
  return { ...mistake, file: FILE, read };
}

function flagPlaces(job: Job, flags: EndFlags, lines: readonly Line[]): ReadonlyMap<string, TextPlace> {
  const places = new Map<string, TextPlace>();
  for (const [path, place] of job.origin?.places ?? []) {
    const flag = 'line' in place ? lines[place.line - 1]?.flag : undefined;
    if (flag !== undefined) places.set(path, { flag: asGiven(flag, flags[flag]) });
  }
  return places;
}

function badEnd(end: string, { job }: Language): Complaint {
  return { code: 'end', file: FILE, read: asGiven('end', end), ...job.ends.noEndOfThatName };
}
