import { paperOfRegion } from '../../job/paper/regional-paper.ts';
import { readJob } from '../../job/read-job.ts';
import { Refusal } from '../../job/text/complaint.ts';
import { namesPipe } from '../../measure/pipe.ts';
import { type Reading, refused, taken } from '../../measure/reading.ts';
import type { Language } from '../../words/language.ts';
import type { Objection } from '../../words/said.ts';
import { yamlWord } from './line-names.ts';

/** What parts the lengths in the name of a size, as in `60x40x3`. */
const BY = /[x×*]/i;
/** Of two lengths the second is a wall where it is less than so much of the first, and else the tube's other side. */
const WALL_UP_TO = 0.25;

/** Reads a size, and a wall beside it that may be empty, as the keys of a frame's tube. */
export type SizeReader = (size: string, wall: string) => Reading<string, Objection>;

/**
 * A reader of tubes' sizes: outside diameter, the name of a pipe, two sides, each with a wall behind it or not (`38.1`, `38.1x2.4`,
 * `60x40x3`, `EN 48.3 x 2.6`). They are judged as a job file's would be, each once. `unit` is that of bare numbers.
 */
export function sizeReader(unit: 'mm' | 'in', words: Language): SizeReader {
  const known = new Map<string, Reading<string, Objection>>();
  return (size, wall) => {
    const keys = keysOf(size.replaceAll('_', ' ').trim(), wall.trim());
    const reading = known.get(keys) ?? judged(keys, unit, words);
    known.set(keys, reading);
    return reading;
  };
}

function judged(keys: string, unit: 'mm' | 'in', words: Language): Reading<string, Objection> {
  const source = `copeleaf: 1\nunits: ${unit}\ntube: { ${keys}, between: 1m, ends: { A: plain, B: plain } }\n`;
  try {
    readJob(source, '', { words, paper: paperOfRegion('') });
    return taken(keys);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const [{ why, instead }] = error.complaints;
    return refused(keys, { why, instead });
  }
}

function keysOf(size: string, wall: string): string {
  const walled = (keys: string, own = ''): string => {
    const thick = own === '' ? wall : own;
    return thick === '' ? keys : `${keys}, wall: ${number(thick)}`;
  };
  if (namesPipe(size)) return walled(`pipe: ${yamlWord(size)}`);
  const plain = size.replace(/^(?:od|chs|rhs|shs|ø|⌀) ?/i, '');
  const parts = withOneUnit(plain.split(BY).map((part) => part.trim()));
  const [first = '', second = '', third] = parts;
  if (parts.length < 2) return walled(`od: ${number(plain)}`);
  const isWall = third === undefined && Number.parseFloat(second) < WALL_UP_TO * Number.parseFloat(first);
  if (isWall) return walled(`od: ${number(first)}`, second);
  return walled(`section: { wide: ${number(first)}, deep: ${number(second)} }`, parts.slice(2).join(' x '));
}

/** A unit behind the last of several lengths is that of all. */
function withOneUnit(parts: readonly string[]): readonly string[] {
  const unit = /(?:mm|cm|in|")$/i.exec(parts.at(-1) ?? '')?.[0] ?? '';
  return parts.map((part) => (/[\d.]$/.test(part) ? `${part}${unit}` : part));
}

/** With a point for its decimals, as a comma would part values; only of thousands could it be anything else. */
function number(length: string): string {
  return yamlWord(/^\d*,\d{1,2}\D*$/.test(length) ? length.replace(',', '.') : length);
}
