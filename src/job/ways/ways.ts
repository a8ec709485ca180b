import { isSeq } from 'yaml';
import type { Said } from '../../measure/said.ts';
import type { Language } from '../../words/language.ts';
import { complain, type Spot } from '../text/desk.ts';
import { type Fields, fieldsOf, itemsOf } from '../text/fields.ts';
import type { KeyPlace } from '../text/keys.ts';
import { missing } from '../text/values.ts';

/** One way of measuring a value: the key that names it, the keys that go with it, and how it is read. */
export interface Way<Value> {
  readonly key: keyof Language['job']['ways']['examples'];
  /** Needed beside the key. */
  readonly companions?: readonly string[];
  /** May stand beside the key. */
  readonly options?: readonly string[];
  /** Undefined where it was misread, which is told. */
  read(fields: Fields): Value | undefined;
}

/** Reads a measuring object: a map with the key of one way. Undefined where it was misread, which is told. */
export function measuredAt<Value>(
  spot: Spot,
  place: KeyPlace,
  ways: readonly Way<Value>[],
): Value | undefined {
  const fields = fieldsOf(spot, place);
  if (fields === undefined) return undefined;
  const [way, another] = ways.filter((each) => keysOf(each).some((key) => fields.has(key)));
  if (way === undefined) return fields.strange ? undefined : nothingMeasured(spot, ways);
  if (another !== undefined) return twoWays(fields, way, another);
  const lacks = [way.key, ...(way.companions ?? [])].filter((key) => !fields.has(key));
  if (lacks.length > 0) return fields.strange ? undefined : lacking(fields, way, lacks);
  return way.read(fields);
}

function keysOf({ key, companions = [], options = [] }: Way<unknown>): readonly string[] {
  return [key, ...companions, ...options];
}

function nothingMeasured(spot: Spot, ways: readonly Way<unknown>[]): undefined {
  const keys = ways.map(({ key }) => key);
  return complain(spot, 'no-reading', spot.desk.words.job.ways.nothingMeasured(keys));
}

function twoWays(fields: Fields, way: Way<unknown>, another: Way<unknown>): undefined {
  const key = keysOf(another).find((each) => fields.has(each));
  const at = key === undefined ? fields.spot : fields.at(key);
  return complain(at, 'two-ways', fields.desk.words.job.ways.twoWays(way.key, another.key));
}

function lacking(fields: Fields, way: Way<unknown>, lacks: readonly string[]): undefined {
  const has = keysOf(way).find((key) => fields.has(key)) ?? way.key;
  return missing(fields.spot, lacks[0] ?? way.key, fields.desk.words.job.ways.goesWith(has, lacks, way.key));
}

const MOST_READINGS = 9;

/** One value given once, or in a list as often as it was measured. Undefined where any was misread, which is told. */
export function givenAt<Value>(
  spot: Spot,
  wanted: Said,
  read: (way: Spot) => Value | undefined,
): readonly [Value, ...Value[]] | undefined {
  if (spot.misread) return undefined;
  const spots = isSeq(spot.node) ? itemsOf(spot, wanted) : [spot];
  if (spots === undefined) return undefined;
  const words = spot.desk.words.job.ways;
  if (spots.length > MOST_READINGS) {
    return complain(spot, 'shape', words.tooMany(spots.length, MOST_READINGS));
  }
  if (spots.length === 0) return complain(spot, 'no-reading', words.emptyList(wanted));
  // A message about one of a list names the key that the list belongs to.
  const values = spots.map((each) => read({ ...each, key: spot.key }));
  const [first, ...others] = values.filter((value) => value !== undefined);
  return first === undefined || others.length + 1 < spots.length ? undefined : [first, ...others];
}
