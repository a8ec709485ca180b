import { Lexer } from 'yaml';
import type { Language } from '../../words/language.ts';
import type { Objection } from '../../words/said.ts';
import { isKnownKey } from './keys.ts';

/** Bytes that a job may have, and signs as well: so many of plain text. */
export const MOST_OF_A_JOB = 8_000_000;
const MOST_VALUES = 700_000;
/** Of keys that no job has: each slip is told with what is near to it, and so many are no slips. */
const MOST_STRANGE_KEYS = 2000;
/** Where the names of a frame's points begin, which are keys of its own, and where they end. */
const BESIDE_POINTS: ReadonlySet<string> = new Set([
  'points',
  'tubes',
  'mirror',
  'snap',
  'density',
  'frame',
  'tube',
]);
/** Longer than any value of a job, and short enough for every pattern that looks at one. */
const MOST_SIGNS_OF_A_VALUE = 200;
/** Deeper than any job, and shallow enough for the parser, which calls itself at each level. */
const DEEPEST_BRACKETS = 40;
const DEEPEST_INDENT = /^(?:[ \t]|[-?:](?=[ \t])){120}(?=[ \t]*[^ \t\r\n])/m;

/** What makes a text too much for a job, and where. */
export interface Excess {
  readonly code: 'too-large' | 'too-deep' | 'too-long' | 'alias';
  readonly at: number;
  readonly said: (text: Language['job']['text']) => Objection;
}

/**
 * What is too much in a text before it is made into values, in one pass over its tokens: a text far from any job is refused in time
 * and memory that are in proportion to its length. Undefined where there is nothing; does not throw.
 */
export function excessOf(source: string): Excess | undefined {
  if (source.length > MOST_OF_A_JOB) return { code: 'too-large', at: 0, said: (text) => text.tooLarge };
  const deep = tooDeep(source);
  if (deep >= 0) return { code: 'too-deep', at: deep, said: (text) => text.tooDeep };
  return excessOfTokens(source);
}

/** What the lexer puts before a value that has no quotes, and its other marks: none is a part of the text. */
const VALUE_FOLLOWS = '\u001f';
const MARKS = new Set([VALUE_FOLLOWS, '\u0002', '\u0018']);

function excessOfTokens(source: string): Excess | undefined {
  let at = 0;
  let values = 0;
  let strange = 0;
  let [before, last] = ['', ''];
  let inPoints = false;
  for (const token of new Lexer().lex(source)) {
    if (!MARKS.has(token)) {
      const isValue = before === VALUE_FOLLOWS || /^["']/.test(token);
      if (!isValue && /^\*./.test(token)) return { code: 'alias', at, said: (text) => text.byReference };
      if (isValue && token.length > MOST_SIGNS_OF_A_VALUE) {
        return { code: 'too-long', at, said: (text) => text.valueTooLong(MOST_SIGNS_OF_A_VALUE) };
      }
      if (isValue || /^[[{-]/.test(token)) values += 1;
      if (values > MOST_VALUES) return { code: 'too-large', at, said: (text) => text.tooManyValues };
      if (isValue) last = token;
      else if (token === ':' && BESIDE_POINTS.has(last)) inPoints = last === 'points';
      else if (token === ':' && !isKnownKey(last)) strange += inPoints ? 0 : 1;
      if (strange > MOST_STRANGE_KEYS) return { code: 'too-large', at, said: (text) => text.strangeKeys };
      at += token.length;
    }
    before = token;
  }
  return undefined;
}

/** Where the text nests too deeply, or -1. Brackets in comments and quotes count too, which does no harm. */
function tooDeep(source: string): number {
  let open = 0;
  for (let i = 0; i < source.length; i++) {
    const sign = source[i];
    if (sign === '[' || sign === '{') open++;
    else if (sign === ']' || sign === '}') open = Math.max(0, open - 1);
    if (open > DEEPEST_BRACKETS) return i;
  }
  return source.search(DEEPEST_INDENT);
}
