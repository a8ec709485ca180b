import { isMap, isScalar, isSeq } from 'yaml';
import { type JobDoc, nodeAt, type Path, wordsAt } from '../job/job-doc.ts';

/** How what is written is read, and so what is echoed of it. */
export type Reads = 'length' | 'angle' | 'pipe' | 'wall' | 'station' | 'count' | 'words' | readonly string[];

/** One text to fill in; `at` leads to it from what the measure belongs to. */
export interface Blank {
  readonly at: Path;
  readonly label: string;
  readonly reads: Reads;
  readonly example: string;
  /** Left out of the file where it is empty. */
  readonly optional?: true;
  /** The id of a list of words to choose from. */
  readonly list?: string;
}

/** One way of measuring a value. */
export interface Way {
  readonly name: string;
  readonly blanks: readonly Blank[];
  /** A word in place of a number, with nothing to fill in, and its key. */
  readonly word?: { readonly key: string; readonly says: string };
}

/** One value of a tube, an end or a header, and the ways in which a person may have measured it. */
export interface Measure {
  readonly label: string;
  /** The keys it may be written under; the first is also that of a list of its readings. */
  readonly keys: readonly [string, ...string[]];
  readonly ways: readonly [Way, ...Way[]];
}

/** The way in which a value is written in the file, the first where nothing is. */
export function wayAt(doc: JobDoc, base: Path, { ways }: Measure): Way {
  const byWord = ways.find(({ word }) => word && isWord(doc, [...base, word.key], word.says));
  if (byWord) return byWord;
  const filled = ways.find(({ blanks }) =>
    blanks.some(({ at }) => {
      const node = nodeAt(doc, [...base, ...at]);
      return node !== undefined && !isMap(node) && !isSeq(node);
    }),
  );
  return filled ?? ways[0];
}

function isWord(doc: JobDoc, path: Path, word: string): boolean {
  const node = nodeAt(doc, path);
  return isScalar(node) && wordsAt(doc, path).trim().toLowerCase() === word;
}
