import { Document, isMap, isScalar, isSeq, type Node, Pair, Scalar, visit, YAMLMap, YAMLSeq } from 'yaml';
import { isPlace, KEYS, type KeyPlace } from '../../job/text/keys.ts';
import { type DocPath, docOf, type JobDoc, type Value } from './job-doc.ts';

/**
 * The text of the job with one value put in place of what is at the path; undefined takes it away. What else is in the file stays as it
 * is written, comments and all, and a new key takes its usual place. Throws `Refusal` where the text is no YAML.
 */
export function withValue(text: string, path: DocPath, value: Value | undefined): string {
  return replaced(text, docOf(text), path, value) ?? rewritten(text, path, value);
}

/** The same where words take the place of words; undefined where they don't. `doc` is of this text, and stays as it is. */
export function replaced(
  text: string,
  doc: JobDoc,
  path: DocPath,
  value: Value | undefined,
): string | undefined {
  const standing = doc.getIn(path, true);
  if (typeof value === 'string' && isScalar(standing) && typeof standing.value === 'string') {
    const [from, to] = standing.range ?? [];
    // Rewriting the whole would move comments that stand beside keys.
    if (from !== undefined && to !== undefined) {
      // An empty value begins at its colon or dash.
      const gap = /[:-]$/.test(text.slice(0, from)) ? ' ' : '';
      return text.slice(0, from) + gap + spelled(value) + text.slice(to);
    }
  }
  return undefined;
}

function rewritten(text: string, path: DocPath, value: Value | undefined): string {
  const doc = docOf(text);
  if (value !== undefined) put(doc, path, value);
  else if (doc.hasIn(path)) takeAway(doc, path);
  return doc.toString({ lineWidth: 0 });
}

/** What is at a path, and the list that it leaves empty. */
function takeAway(doc: Document.Parsed, path: DocPath): void {
  doc.deleteIn(path);
  const round = path.slice(0, -1);
  const list = doc.getIn(round);
  if (isSeq(list) && list.items.length === 0) doc.deleteIn(round);
}

/** The same for several values, one after the other. */
export function withValues(text: string, values: readonly (readonly [DocPath, Value | undefined])[]): string {
  return values.reduce((each, [path, value]) => withValue(each, path, value), text);
}

/** Words as a value of a job file: bare where they can't be taken for anything else, else quoted. */
function spelled(words: string): string {
  return /^[\p{L}\p{N}.][^\n\r\t#:,[\]{}&*!|>%@`]*$/u.test(words) && !words.endsWith(' ')
    ? words
    : JSON.stringify(words);
}

function put(doc: Document.Parsed, path: DocPath, value: Value): void {
  const last = path.at(-1);
  if (last === undefined) return;
  const parent = collectionAt(doc, path.slice(0, -1), typeof last === 'number');
  const node = doc.createNode(value);
  quoteEmptyItems(isSeq(parent) ? doc.createNode([node]) : node);
  if (isSeq(parent) || parent.has(last)) parent.set(last, node);
  else insert(parent, new Pair(doc.createNode(last), node), placeOf(path.slice(0, -1)));
}

/** A bare list in brackets can't hold an empty item: it would be a comma too many. */
function quoteEmptyItems(node: Node): void {
  visit(node, {
    Scalar(key, scalar) {
      if (typeof key === 'number' && scalar.value === '') scalar.type = Scalar.QUOTE_DOUBLE;
    },
  });
}

/** The map or list at a path; where nothing is, one is made for a key or for a place. */
function collectionAt(doc: Document.Parsed, path: DocPath, listed = false): YAMLMap | YAMLSeq {
  if (path.length === 0) {
    if (isMap(doc.contents) || isSeq(doc.contents)) return doc.contents;
    throw new Error('a job is a map');
  }
  const last = path.at(-1) ?? '';
  const parent = collectionAt(doc, path.slice(0, -1), typeof last === 'number');
  const standing = parent.get(last, true);
  if (isMap(standing) || isSeq(standing)) return standing;
  const made = listed ? new YAMLSeq(doc.schema) : new YAMLMap(doc.schema);
  if (isSeq(parent) || parent.has(last)) parent.set(last, made);
  else insert(parent, new Pair(doc.createNode(last), made), placeOf(path.slice(0, -1)));
  return made;
}

/** Before the first key that usually comes after it. */
function insert(map: YAMLMap, pair: Pair, place: KeyPlace | undefined): void {
  const usual: readonly string[] = place === undefined ? [] : KEYS[place];
  const rank = (key: unknown): number => usual.indexOf(isScalar(key) ? String(key.value) : '');
  const own = rank(pair.key);
  const at = own < 0 ? -1 : map.items.findIndex(({ key }) => rank(key) > own);
  map.items.splice(at < 0 ? map.items.length : at, 0, pair);
}

/** What stands under a key of another name. */
const PLACES: Readonly<Record<string, KeyPlace>> = { A: 'end', B: 'end', od: 'girth' };

/** Which keys a map at this path holds. */
function placeOf(path: DocPath): KeyPlace | undefined {
  const last = path.at(-1);
  if (last === undefined) return 'file';
  if (typeof last === 'string') return PLACES[last] ?? (isPlace(last) ? last : undefined);
  const list = path.at(-2);
  if (list === 'tubes') return 'tube';
  return list === 'A' || list === 'B' ? 'part' : placeOf(path.slice(0, -1));
}

/** A new job: the unit, the paper, and one end with nothing said about it yet. */
export function emptyJob(units: 'mm' | 'in', paper: string): string {
  const doc = new Document(
    { copeleaf: '1', units, tube: { ends: { A: {} } }, paper },
    { schema: 'failsafe' },
  );
  return doc.toString({ lineWidth: 0 });
}
