import type { Complaint } from '../../job/text/complaint.ts';
import { Refusal } from '../../job/text/complaint.ts';
import { clipped, onOneLine } from '../../job/text/quoting.ts';
import type { Said } from '../../measure/said.ts';
import type { LengthUnit } from '../../measure/units.ts';
import { isMetric } from '../../measure/write.ts';
import type { Vector } from '../../space/vector.ts';
import type { Language } from '../../words/language.ts';
import { asWritten, type Objection } from '../../words/said.ts';

/** A straight line of a list or a drawing that stands for a tube's axis, in mm. */
export interface DrawnLine {
  /** Empty where nothing names it. */
  readonly name: string;
  /** How a message speaks of it: by its line in the list, by what it is in the drawing. */
  readonly label: Said;
  readonly from: Vector;
  readonly to: Vector;
  /** The keys of a frame's tube that say its size; empty where it has none. */
  readonly size: string;
}

/** All the lines of a file, and what is to be told of them. */
export interface DrawnLines {
  readonly lines: readonly DrawnLine[];
  readonly told: readonly Said[];
  readonly units: LengthUnit;
}

/** Where lines are read: the name of their file, and what the person says of them. */
export interface LinesDesk {
  readonly file: string;
  readonly words: Language;
  /** Of numbers without a unit; undefined where only the drawing can say. */
  readonly units: LengthUnit | undefined;
  readonly isUp: 'y' | 'z';
  /** Of lines that have no size of their own. */
  readonly od?: string;
  readonly wall?: string;
}

/** More lines than any frame has. */
export const MOST_LINES = 20_000;

/** The unit in which a frame's file is written: inches for what is drawn in inches or feet. */
export function writtenUnit(units: LengthUnit): 'mm' | 'in' {
  return isMetric(units) ? 'mm' : 'in';
}

/** Throws `Refusal` with one mistake at its line; of what is no text's the line is 0. */
export function refuseLine(
  { file, words }: Pick<LinesDesk, 'file' | 'words'>,
  line: number,
  code: string,
  read: string,
  objection: Objection,
): never {
  const quoted = asWritten(clipped(onOneLine(read).trim())) || words.commandFaults.nothing;
  const complaint: Complaint = { code, file, ...(line > 0 && { line }), read: quoted, ...objection };
  throw new Refusal([complaint]);
}

/** A number as programs write them; undefined of other text. */
export function plainNumber(text: string): number | undefined {
  return /^[-+]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[-+]?\d+)?$/i.test(text) ? Number(text) : undefined;
}

/** Turned so that z is up, y away from the person. */
export function withZUp([x, y, z]: Vector, isUp: 'y' | 'z'): Vector {
  return isUp === 'z' ? [x, y, z] : [x, 0 - z, y];
}
