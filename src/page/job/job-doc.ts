import { type Document, isMap, isScalar, isSeq, visit } from 'yaml';
import { presentName } from '../../job/text/keys.ts';
import { parseJobText } from '../../job/text/text.ts';

/** A value as a job file holds it: words, or a map or list of such. */
export type Value = string | readonly Value[] | { readonly [key: string]: Value };

/** The keys and list places that lead to a value of the job file: `['tube', 'ends', 'A', 'angle']`. */
export type DocPath = readonly (string | number)[];

export type JobDoc = Document.Parsed;

/** The job file as it stands, its keys by their names of today, every value the text it was written as. Throws where it is no YAML, which no text at hand is. */
export function docOf(text: string): JobDoc {
  const parsed = parseJobText(text, 'job.yaml');
  if (!parsed.ok) throw new RangeError(`The job is no YAML at ${parsed.read}.`);
  const { document } = parsed.value;
  visit(document, {
    Pair(_, { key }) {
      if (isScalar(key) && typeof key.value === 'string') key.value = presentName(key.value);
    },
  });
  return document;
}

/** One word for a path, for ids and look-ups. */
export function keyOf(path: DocPath): string {
  return path.join('.');
}

/** What is at a path: a scalar, a map, a list, or undefined where there is nothing. */
export function nodeAt(doc: JobDoc, path: DocPath): unknown {
  let node: unknown = doc.contents;
  for (const step of path) {
    if (isMap(node) || isSeq(node)) node = node.get(step, true);
    else return undefined;
  }
  return node ?? undefined;
}

/** The words at a path; empty where there are none. */
export function docWordsAt(doc: JobDoc, path: DocPath): string {
  const node = nodeAt(doc, path);
  return isScalar(node) && typeof node.value === 'string' ? node.value : '';
}

/** The keys of the map at a path, in their order. */
export function keysAt(doc: JobDoc, path: DocPath): readonly string[] {
  const node = nodeAt(doc, path);
  if (!isMap(node)) return [];
  return node.items.flatMap(({ key }) => (isScalar(key) && typeof key.value === 'string' ? [key.value] : []));
}

export function hasAt(doc: JobDoc, path: DocPath): boolean {
  return nodeAt(doc, path) !== undefined;
}

/** How many items the list at a path has; 0 where it is no list. */
export function countAt(doc: JobDoc, path: DocPath): number {
  const node = nodeAt(doc, path);
  return isSeq(node) ? node.items.length : 0;
}

/** Where each tube of the job is. A job without one has its place for one. */
export function tubePaths(doc: JobDoc): readonly DocPath[] {
  const many = countAt(doc, ['tubes']);
  return many > 0 ? Array.from({ length: many }, (_, i) => ['tubes', i]) : [['tube']];
}

/** The unit of bare numbers. */
export function unitsOfDoc(doc: JobDoc): 'mm' | 'in' {
  return /^\s*("|in)/i.test(docWordsAt(doc, ['units'])) ? 'in' : 'mm';
}

/** What is at a path, as a value to be written elsewhere, with these of its keys. */
export function valueAt(
  doc: JobDoc,
  path: DocPath,
  keys: readonly string[],
): { readonly [key: string]: Value } {
  const found = keysAt(doc, path).filter((key) => keys.includes(key));
  return Object.fromEntries(found.map((key) => [key, plainOf(nodeAt(doc, [...path, key]))]));
}

/** What is at a path, whatever it is, as a value to be written elsewhere; empty where there is nothing. */
export function plainAt(doc: JobDoc, path: DocPath): Value {
  return plainOf(nodeAt(doc, path));
}

function plainOf(node: unknown): Value {
  if (isMap(node)) {
    return Object.fromEntries(
      node.items.map(({ key, value }) => [String(isScalar(key) ? key.value : key), plainOf(value)]),
    );
  }
  if (isSeq(node)) return node.items.map(plainOf);
  return isScalar(node) && typeof node.value === 'string' ? node.value : '';
}

/** Whether its tubes follow from points, which are written as text. */
export function isFrame(doc: JobDoc): boolean {
  return keysAt(doc, []).includes('frame');
}
