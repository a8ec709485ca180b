import { isMap, isScalar, isSeq, type Pair, type YAMLMap } from 'yaml';
import { readLength } from '../../measure/length.ts';
import type { Said } from '../../measure/said.ts';
import { asWritten } from '../../words/said.ts';
import { complain, complainOf, type Desk, isEmpty, placeOf, type Spot } from './desk.ts';
import { KEYS, type KeyPlace, placesOf, presentName } from './keys.ts';
import { nearest } from './nearest.ts';
import { clipped } from './quoting.ts';

/** The known keys of a map with their values. A value that was misread is there too, as a misread spot. */
export interface Fields {
  readonly desk: Desk;
  /** The map itself. */
  readonly spot: Spot;
  get(key: string): Spot | undefined;
  has(key: string): boolean;
  /** What stands at a key, or the map where the key is not there. */
  at(key: string): Spot;
  /** There are keys, told already, that nobody could make anything of. */
  readonly strange: boolean;
}

/** Takes a map apart, complaining about keys that are unknown, doubled or no words; undefined where it is no map. */
export function fieldsOf(spot: Spot, place: KeyPlace): Fields | undefined {
  if (spot.misread) return undefined;
  if (!isMap(spot.node)) return notA(spot, spot.desk.words.job.text.mapOf(KEYS[place]));
  const { desk } = spot;
  const found = new Map<string, Spot>();
  const slips = new Map<string, Spot>();
  let strange = false;
  const { items } = spot.node;
  for (const [i, pair] of items.entries()) {
    if (isRestOfNumber(spot.node, items[i - 1], pair)) continue;
    const key = keyOf(spot, pair);
    if (key === undefined) continue;
    const name = presentName(key.name);
    const field = fieldOf(spot, key, pair);
    const known = KEYS[place].some((each) => each === name);
    const first = known ? found.get(name) : undefined;
    if (first) {
      doubled(field, first);
      continue;
    }
    const value = { ...field, misread: splitAtComma(desk, spot.node, pair, items[i + 1]) };
    if (known) {
      found.set(name, value);
      desk.places.set(field.path, placeOf(desk.text.lines, field.at));
      continue;
    }
    const meant = unknown(field, place);
    if (meant === undefined) strange = true;
    else slips.set(meant, value);
  }
  // What a misspelt key holds is read as what was meant, so that its own mistakes are told in the same go.
  const get = (key: string) => found.get(key) ?? slips.get(key);
  return { desk, spot, get, has: (key) => get(key) !== undefined, at: (key) => get(key) ?? spot, strange };
}

function doubled(field: Spot, first: Spot): void {
  const { words, say, text } = field.desk;
  const { keyTwice, twoNames } = words.job.text;
  const { key } = say;
  const { line } = placeOf(text.lines, first.at);
  const objection =
    field.key === first.key
      ? keyTwice(field.key, line)
      : twoNames(key(field.key), key(first.key), key(presentName(field.key)));
  complain(field, 'duplicate-key', objection);
}

/** Complains of a key; gives back the one that was probably meant. */
function unknown(field: Spot, place: KeyPlace): string | undefined {
  const elsewhere = placesOf(presentName(field.key));
  const meant = elsewhere.length > 0 ? undefined : nearest(field.key, KEYS[place]);
  const quoted = asWritten(clipped(field.key));
  const known = { elsewhere, meant, here: KEYS[place] };
  complain(field, 'unknown-key', field.desk.words.job.text.unknownKey(quoted, field.key, place, known));
  return meant;
}

interface Key {
  readonly name: string;
  readonly at: number;
}

function keyOf(spot: Spot, pair: Pair): Key | undefined {
  const { key } = pair;
  if (isScalar(key) && typeof key.value === 'string' && key.value !== '') {
    return { name: key.value, at: key.range?.[0] ?? spot.at };
  }
  const at = (isScalar(key) || isMap(key) || isSeq(key) ? key.range?.[0] : undefined) ?? spot.at;
  complainOf(spot.desk, at, { code: 'key', ...spot.desk.words.job.text.keyIsNoWord });
  return undefined;
}

function fieldOf(parent: Spot, key: Key, pair: Pair): Spot {
  const { value } = pair;
  const node = isScalar(value) || isMap(value) || isSeq(value) ? value : null;
  const name = presentName(key.name);
  const path = parent.path === '' ? name : `${parent.path}.${name}`;
  return { desk: parent.desk, path, key: key.name, node, at: key.at, misread: false };
}

/** A comma inside { } ends a value in YAML, so `{ od: 38,1 }` comes as `od: 38` and a key `1` with no value. */
function isRestOfNumber(map: YAMLMap, before: Pair | undefined, pair: Pair): boolean {
  if (map.flow !== true || before === undefined || !isScalar(pair.key)) return false;
  const { key } = pair;
  const value = before.value;
  if (!isScalar(value) || value.type !== 'PLAIN' || key.type !== 'PLAIN') return false;
  return /\d$/.test(value.source ?? '') && /^\d/.test(key.source ?? '') && pair.value === null;
}

function splitAtComma(desk: Desk, map: YAMLMap, pair: Pair, next: Pair | undefined): boolean {
  if (next === undefined || !isRestOfNumber(map, pair, next)) return false;
  const { key, value } = pair;
  if (!isScalar(key) || !isScalar(value) || !isScalar(next.key)) return false;
  const joined = `${value.source},${next.key.source}`;
  const meant = readLength(joined, desk.bareUnit);
  const misread = meant.ok ? undefined : desk.words.faults.said(meant.fault).instead;
  const name = key.source ?? '';
  complainOf(desk, value.range?.[0] ?? 0, {
    code: 'decimal-comma',
    read: asWritten(clipped(`${name}: ${joined}`)),
    ...desk.words.job.text.decimalsSplitOff(name, joined, misread),
    key: name,
  });
  return true;
}

const MOST_TUBES = 20_000;
const MOST_ITEMS = 2000;

/** The items of a list; undefined where it is none, or one of more than any job has. */
export function itemsOf(spot: Spot, wanted: Said): readonly Spot[] | undefined {
  if (spot.misread) return undefined;
  if (!isSeq(spot.node)) return notA(spot, wanted);
  const most = spot.key === 'tubes' ? MOST_TUBES : MOST_ITEMS;
  const { length } = spot.node.items;
  if (length > most) return complain(spot, 'too-many', spot.desk.words.job.text.tooManyItems(length, most));
  const { desk } = spot;
  return spot.node.items.map((item, i) => {
    const node = isScalar(item) || isMap(item) || isSeq(item) ? item : null;
    const path = `${spot.path}[${i}]`;
    const at = node?.range?.[0] ?? spot.at;
    desk.places.set(path, placeOf(desk.text.lines, at));
    return { desk, path, key: '', node, at, misread: false };
  });
}

/** The text of a plain value; undefined where there is none, or a map or list in its place. */
export function textOf(spot: Spot, wanted: Said): string | undefined {
  if (spot.misread) return undefined;
  const { node } = spot;
  if (!isScalar(node) || typeof node.value !== 'string' || isEmpty(spot)) return notA(spot, wanted);
  return node.value;
}

/** Whether a map stands here, as where something was measured in place of a plain value. */
export function isMapAt(spot: Spot): boolean {
  return isMap(spot.node);
}

/** The word that stands here, in small letters; undefined where there is none. */
export function wordOf({ node, misread }: Spot): string | undefined {
  if (misread || !isScalar(node) || typeof node.value !== 'string') return undefined;
  return node.value.trim().toLowerCase();
}

/** Complains that a value has another shape than what is wanted here. */
export function notA(spot: Spot, wanted: Said): undefined {
  complain(spot, 'shape', { why: spot.desk.words.job.text.shape(shapeOf(spot)), instead: wanted });
}

function shapeOf(spot: Spot): 'map' | 'list' | 'value' | 'nothing' | 'comment' {
  const { node, at } = spot;
  if (isMap(node)) return 'map';
  if (isSeq(node)) return 'list';
  if (!isEmpty(spot)) return 'value';
  const { source } = spot.desk.text;
  const line = source.slice(at, source.indexOf('\n', at) < 0 ? undefined : source.indexOf('\n', at));
  return /\s#/.test(line) ? 'comment' : 'nothing';
}
