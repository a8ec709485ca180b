import { isSeq } from 'yaml';
import { countAt, type DocPath, type JobDoc, nodeAt, plainAt, type Value } from '../job/job-doc.ts';
import { type FormWay, type Measure, type WayName, wayAt } from './measure.ts';

/** Values to be written, each at its path; undefined takes away. */
export type Edits = readonly (readonly [DocPath, Value | undefined])[];

/** What the choice of ways calls a list of readings. */
export const SEVERAL: WayName = 'several';

/** Whether a value is written as a list of readings; only what can be measured in several ways can be. */
export function isSeveral(doc: JobDoc, base: DocPath, { keys: [key], ways }: Measure): boolean {
  return ways.length > 1 && isSeq(nodeAt(doc, [...base, key]));
}

/** One reading of a list, as a measure of its own: what can be a number, in each way, from its place in the list. */
export function readingOf(
  { name: value, keys: [key], ways: [plain, ...others] }: Measure,
  place: number,
): Measure {
  const moved = ({ name, blanks }: FormWay): FormWay => ({
    name,
    blanks: blanks.map((blank) => ({ ...blank, at: [key, place, ...blank.at.slice(1)] })),
  });
  const numbers = others.filter(({ word, blanks }) => !word && blanks.every(({ at }) => at[0] === key));
  return { name: value, keys: [key], ways: [moved(plain), ...numbers.map(moved)] };
}

/** The changes that turn a value to another way of measuring, or to several; what was measured in that way already is kept. */
export function turnedReading(doc: JobDoc, base: DocPath, measure: Measure, name: string): Edits {
  const { keys, ways } = measure;
  const cleared = keys
    .filter((key) => nodeAt(doc, [...base, key]) !== undefined)
    .map((key): readonly [DocPath, undefined] => [[...base, key], undefined]);
  if (name === SEVERAL)
    return [
      ...cleared,
      [
        [...base, keys[0]],
        [soFar(doc, base, measure), ''],
      ],
    ];
  const way = ways.find((each) => each.name === name) ?? ways[0];
  return [...cleared, ...begun(doc, base, measure, way)];
}

/** What is written now, as the first of several readings; empty where it can't be one. */
function soFar(doc: JobDoc, base: DocPath, measure: Measure): Value {
  const { word, blanks } = wayAt(doc, base, measure);
  const [key] = measure.keys;
  return word || blanks.some(({ at }) => at[0] !== key) ? '' : plainAt(doc, [...base, key]);
}

function begun(doc: JobDoc, base: DocPath, measure: Measure, way: FormWay): Edits {
  const [usual] = measure.keys;
  if (way.word) return [[[...base, way.word.key], way.word.says]];
  const key = way.blanks[0]?.at[0] ?? usual;
  const kept = placesAt(doc, base, measure).find(
    (place) => wayAt(doc, base, readingOf(measure, place)).name === way.name,
  );
  const value = kept === undefined ? unfilled(way) : plainAt(doc, [...base, usual, kept]);
  // A key of its own is written at once, or the choice would be forgotten; the usual one can wait.
  return value === '' && key === usual ? [] : [[[...base, key], value]];
}

/** The places of the readings in their list, counted from 0. */
export function placesAt(doc: JobDoc, base: DocPath, { keys: [key] }: Measure): readonly number[] {
  return Array.from({ length: countAt(doc, [...base, key]) }, (_, place) => place);
}

/** The changes that turn one reading to another way of measuring, with nothing filled in yet. */
export function readingTurned(
  base: DocPath,
  { keys: [key], ways }: Measure,
  place: number,
  name: string,
): Edits {
  const way = ways.find((each) => each.name === name) ?? ways[0];
  return [[[...base, key, place], unfilled(way)]];
}

export function readingAdded(doc: JobDoc, base: DocPath, measure: Measure): Edits {
  return [[[...base, measure.keys[0], placesAt(doc, base, measure).length], '']];
}

/** The changes that take one reading away. The last that is left stands as a value by itself. */
export function readingRemoved(doc: JobDoc, base: DocPath, measure: Measure, place: number): Edits {
  const list = [...base, measure.keys[0]];
  const [left, ...others] = placesAt(doc, base, measure).filter((each) => each !== place);
  if (left === undefined || others.length > 0) return [[[...list, place], undefined]];
  return [[list, plainAt(doc, [...list, left])]];
}

/** What stands under the key of a way before anything is filled in. */
function unfilled({ blanks }: FormWay): Value {
  const inner = blanks.filter(({ optional }) => !optional);
  if (inner.every(({ at }) => at.length === 1)) return '';
  const sides = inner.filter(({ at }) => at.length === 3);
  if (sides.length > 0) return { [String(sides[0]?.at[1])]: sides.map(() => '') };
  return Object.fromEntries(
    inner.map(({ at, reads }) => [String(at[1]), typeof reads === 'string' ? '' : (reads[0] ?? '')]),
  );
}
