import { isMap, isScalar, isSeq } from 'yaml';
import { type DocPath, hasAt, type JobDoc } from '../job/job-doc.ts';
import type { BlankField } from './measure.ts';
import * as measures from './measures.ts';

/** A length of the job that is written without a unit. */
export interface BareLength {
  readonly path: DocPath;
  readonly text: string;
}

/** Whether a text is a number with no unit of its own, or nothing yet. */
export function isBare(text: string): boolean {
  return /^[-+−\d\s.,/]*$/u.test(text);
}

/** Every length of the job that takes its unit from the file, in the file's order. */
export function bareLengths(doc: JobDoc): readonly BareLength[] {
  const found: BareLength[] = [];
  const walk = (node: unknown, path: DocPath): void => {
    if (isMap(node))
      for (const { key, value } of node.items) walk(value, [...path, isScalar(key) ? String(key.value) : '']);
    else if (isSeq(node)) for (const [i, item] of node.items.entries()) walk(item, [...path, i]);
    else if (isScalar(node) && isLength(doc, path)) {
      const text = String(node.value ?? '');
      if (isBare(sizeOf(text, path)) && /\d/.test(text)) found.push({ path, text });
    }
  };
  walk(doc.contents, []);
  return found;
}

/** The same with this unit written behind its number. */
export function unitWritten({ path, text }: BareLength, unit: 'mm' | 'in'): string {
  const size = sizeOf(text, path);
  return `${size.trimEnd()}${unit}${text.slice(size.length)}`;
}

/** The length of a stock may be followed by how many there are. */
function sizeOf(text: string, path: DocPath): string {
  return path[0] === 'stock' ? (/^[^x×*]*(?=\s[x×*]|[x×*]|$)/u.exec(text)?.[0] ?? text) : text;
}

const BLANKS: readonly BlankField[] = Object.values(measures).flatMap((each) =>
  'ways' in each ? each.ways.flatMap(({ blanks }): readonly BlankField[] => blanks) : [each],
);
const READ_AS: ReadonlyMap<string | undefined, BlankField['reads']> = new Map(
  BLANKS.map(({ at, reads }) => [lastKey(at), reads]),
);

/** Those of the whole job, which the form asks for beside its measures. */
const OF_THE_JOB: ReadonlySet<string | undefined> = new Set(['stock', 'kerf', 'margin', 'paper-thickness']);

function isLength(doc: JobDoc, path: DocPath): boolean {
  if (OF_THE_JOB.has(String(path[0])) || isOfFrame(path)) return true;
  // One value may be read in several ways: a list in place of the value.
  const reads = isPoint(path) ? undefined : READ_AS.get(lastKey(path));
  if (reads === 'station') return hasAt(doc, [...tubeOf(path), 'section']);
  return reads === 'length' || reads === 'lengths' || reads === 'wall';
}

function isPoint([head, part]: DocPath): boolean {
  return head === 'frame' && part === 'points';
}

/** Whether a value of a frame is a length that no tube by itself has: where a point is, and how far a tube runs past one. */
function isOfFrame(path: DocPath): boolean {
  const [head, part, which, key] = path;
  if (head !== 'frame' || which === undefined) return head === 'frame' && part === 'snap';
  if (isPoint(path)) return typeof key === 'number' || key === 'at' || key === 'by';
  const isPlace = key === 'along' && path.length === 6;
  return part === 'mirror' || isPlace || path.at(-1) === 'past';
}

function tubeOf(path: DocPath): DocPath {
  return path.slice(0, path[0] === 'tubes' ? 2 : 1);
}

function lastKey(path: DocPath): string | undefined {
  return path.findLast((step): step is string => typeof step === 'string');
}
