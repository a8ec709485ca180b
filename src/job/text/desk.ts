import { isMap, isScalar, type LineCounter, type Node } from 'yaml';
import { partOf, type Said } from '../../measure/said.ts';
import type { Language } from '../../words/language.ts';
import { asWritten, type Objection } from '../../words/said.ts';
import type { Complaint } from './complaint.ts';
import type { TextPlace } from './place.ts';
import { clipped, onOneLine } from './quoting.ts';
import type { JobText } from './text.ts';

/** One value of the job file: what it is, what it is called, and where it stands. */
export interface Spot {
  readonly desk: Desk;
  readonly path: string;
  /** The key as a message names it; empty for the whole file. */
  readonly key: string;
  /** Null where nothing was written after the key. */
  readonly node: Node | null;
  readonly at: number;
  /** Complained about already: readers let it pass as if it were absent. */
  readonly misread: boolean;
}

/** How messages name a key or a setting: as the job file writes it, or as a flag. */
export interface Dialect {
  key(name: string): Said;
  setting(name: string, value: string): Said;
}

export const IN_A_FILE: Dialect = {
  key: (name) => asWritten(`\`${name}\``),
  setting: (name, value) => asWritten(`\`${name}: ${value}\``),
};

/** Where a job file is read: its text, the unit of bare numbers, and the mistakes and places found so far. */
export interface Desk {
  readonly text: JobText;
  readonly say: Dialect;
  readonly words: Language;
  readonly bareUnit: 'mm' | 'in';
  /** By place, code and wording, so that one mistake is told once. */
  readonly complaints: Map<string, Complaint>;
  readonly places: Map<string, TextPlace>;
}

/** Notes a mistake. Gives back undefined, which is what a reader gives back for a value it could not read. */
export function complain(spot: Spot, code: string, objection: Objection): undefined {
  const key = spot.key === '' ? {} : { key: spot.key };
  const missing = isEmpty(spot) ? ({ missing: true } as const) : {};
  complainOf(spot.desk, spot.at, { code, read: wording(spot), ...objection, ...key, ...missing });
}

/** Whether nothing is written after a key. */
export function isEmpty({ node }: Spot): boolean {
  return node === null || (isScalar(node) && typeof node.value === 'string' && node.value.trim() === '');
}

/** A complaint that has not its place yet. */
export type Mistake = Omit<Complaint, 'file' | 'line' | 'column'>;

/** The same for a mistake that is not the wording of one value. */
export function complainOf(desk: Desk, at: number, mistake: Mistake): undefined {
  const place = placeOf(desk.text.lines, at);
  const oneLine = (said: Said): Said => partOf(said, onOneLine(said));
  const [read, why, instead] = [oneLine(mistake.read), oneLine(mistake.why), oneLine(mistake.instead)];
  const once = `${place.line}:${place.column} ${mistake.code} ${read}`;
  if (desk.complaints.has(once)) return;
  desk.complaints.set(once, { ...mistake, file: desk.text.file, ...place, read, why, instead });
}

export function placeOf(lines: LineCounter, at: number): { line: number; column: number } {
  const { line, col } = lines.linePos(at);
  return { line: Math.max(1, line), column: Math.max(1, col) };
}

/** The value as it stands in the file, with its key: `angle: 0`. */
function wording({ desk, key, node }: Spot): Said {
  const [begin = 0, end = 0] = node?.range ?? [];
  const value = desk.text.source.slice(begin, Math.min(end, begin + 200)).trim();
  const line = value.split(/[\r\n]/)[0] ?? '';
  const words = isScalar(node) || isMap(node) ? line : value.replace(/\s+/g, ' ');
  const read = clipped(`${key === '' ? '' : `${key}: `}${words}`.trim());
  return read === '' ? desk.words.job.text.nothing : asWritten(read);
}
