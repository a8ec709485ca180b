import { isMap, isScalar, isSeq } from 'yaml';
import type { KEYS, KeyPlace } from '../../job/text/keys.ts';
import type { Said } from '../../measure/said.ts';
import type { Language } from '../../words/language.ts';
import { type DocPath, docWordsAt, type JobDoc, nodeAt } from '../job/job-doc.ts';

type Words = Language['page']['measures'];
export type FieldName = keyof Words['fields'];
export type WayName = keyof Words['ways'];
export type Choice = keyof Words['choices'];

/** The keys that the job file knows at a place. */
export type KeyAt<Place extends KeyPlace> = (typeof KEYS)[Place][number];

/** The keys of the map under a key. */
type Under<Key> = Key extends 'od' ? KeyAt<'girth'> : Key extends KeyPlace ? KeyAt<Key> : never;

/** Leads to a value under one of these keys, or within it. */
type To<Key> =
  | readonly [Key]
  | (Key extends unknown ? readonly [Key, Under<Key>] | readonly [Key, Under<Key>, number] : never);

/** How what is written is read, and so what is echoed of it; `lengths` is a list in one text. */
export type Reads =
  | 'length'
  | 'lengths'
  | 'angle'
  | 'pipe'
  | 'wall'
  | 'station'
  | 'count'
  | 'words'
  | readonly Choice[];

/** One text to fill in; `at` leads to it from what the measure belongs to. */
export interface BlankField<At extends DocPath = DocPath> {
  readonly at: At;
  readonly name: FieldName;
  readonly reads: Reads;
  /** Left out of the file where it is empty. */
  readonly optional?: true;
  /** The id of a list of words to choose from. */
  readonly list?: string;
}

/** A text under one of these keys. */
export type BlankOf<Key extends string> = BlankField<To<Key>>;

/** One way of measuring a value. */
export interface FormWay<Key extends string = string, At extends DocPath = DocPath> {
  readonly name: WayName;
  readonly blanks: readonly BlankField<At>[];
  /** A word in place of a number, with nothing to fill in, and its key. */
  readonly word?: { readonly key: Key; readonly says: string };
}

/** One value of a tube, an end or a header, and the ways in which a person may have measured it. */
export interface Measure<Key extends string = string, At extends DocPath = DocPath> {
  readonly name: FieldName;
  /** The keys it may be written under; the first is also that of a list of its readings. */
  readonly keys: readonly [Key, ...Key[]];
  readonly ways: readonly [FormWay<Key, At>, ...FormWay<Key, At>[]];
}

/** A value under one of these keys. */
export type MeasureOf<Key extends string> = Measure<Key, To<Key>>;
export type WayOf<Key extends string> = FormWay<Key, To<Key>>;

/** A value of the form: where it stands, what of the picture it belongs to, and whose it is for those who hear the form, as `end A`. */
export interface MeasureProps {
  readonly base: DocPath;
  readonly measure: Measure;
  readonly part: string;
  readonly of: Said;
}

/** The way in which a value is written in the file, the first where nothing is. */
export function wayAt(doc: JobDoc, base: DocPath, { ways }: Measure): FormWay {
  const byWord = ways.find(({ word }) => word && isWord(doc, [...base, word.key], word.says));
  if (byWord) return byWord;
  const filled = ways.find(({ blanks }) =>
    blanks.some(({ at, reads }) => {
      const node = nodeAt(doc, [...base, ...at]);
      return node !== undefined && !isMap(node) && (reads === 'lengths' || !isSeq(node));
    }),
  );
  return filled ?? ways[0];
}

function isWord(doc: JobDoc, path: DocPath, word: string): boolean {
  const node = nodeAt(doc, path);
  return isScalar(node) && docWordsAt(doc, path).trim().toLowerCase() === word;
}
