import { Lexer } from 'yaml';
import type { Language } from '../../words/language.ts';
import type { Objection } from '../../words/said.ts';
import { isKnownKey } from './keys.ts';

/** Bytes that a job may have, and signs as well: so many of plain text. */
export const MOST_OF_A_JOB = 8_000_000;
const MOST_VALUES = 700_000;
/** More than so many values stand on, each key on a line of its own; what is empty or a comment is kept by the parser as well. */
const MOST_LINES = 500_000;
/** Of keys that no job has, since each slip is told with what is near to it, of keys said again, and of signs that no job has: so many are no slips. */
const MOST_STRANGE = 2000;
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
  let before = '';
  const tally: Tally = {
    values: 0,
    lines: 0,
    strange: 0,
    odd: 0,
    last: '',
    key: '',
    indent: 0,
    atBegin: true,
    inPoints: false,
    filled: false,
  };
  for (const token of new Lexer().lex(source)) {
    if (!MARKS.has(token)) {
      const isValue = before === VALUE_FOLLOWS || /^["']/.test(token);
      if (!isValue && /^\*./.test(token)) return { code: 'alias', at, said: (text) => text.byReference };
      if (isValue && token.length > MOST_SIGNS_OF_A_VALUE) {
        return { code: 'too-long', at, said: (text) => text.valueTooLong(MOST_SIGNS_OF_A_VALUE) };
      }
      count(tally, token, isValue);
      const said = tooMany(tally);
      if (said) return { code: 'too-large', at, said };
      at += token.length;
    }
    before = token;
  }
  return undefined;
}

/**
 * What was counted so far, and the last value or key, the key before it in the same map, how far the line is indented, whether it is in a
 * frame's points, and whether a comma has something before it.
 */
interface Tally {
  values: number;
  lines: number;
  strange: number;
  odd: number;
  last: string;
  key: string;
  indent: number;
  atBegin: boolean;
  inPoints: boolean;
  filled: boolean;
}

function count(tally: Tally, token: string, isValue: boolean): void {
  const isLine = !isValue && /^[\r\n]/.test(token);
  if (isLine) tally.lines += 1;
  if (isLine || (tally.atBegin && /^ /.test(token))) tally.indent = isLine ? 0 : token.length;
  tally.atBegin = isLine;
  if (isValue || /^[[{-]/.test(token)) tally.values += 1;
  if (!isValue && /^[[{}\]-]/.test(token)) tally.key = '';
  if (isValue) tally.last = token;
  else if (token === ':') countKey(tally);
  else if (/^[&!%?]/.test(token) || (token === ',' && !tally.filled)) tally.odd += 1;
  if (isValue || !/^[\s#]/.test(token)) tally.filled = isValue || /^[\]}]/.test(token);
}

function countKey(tally: Tally): void {
  const key = `${tally.indent} ${tally.last}`;
  if (key === tally.key) tally.odd += 1;
  tally.key = key;
  if (BESIDE_POINTS.has(tally.last)) tally.inPoints = tally.last === 'points';
  else if (!isKnownKey(tally.last) && !tally.inPoints) tally.strange += 1;
}

function tooMany({ values, lines, strange, odd }: Tally): Excess['said'] | undefined {
  if (values > MOST_VALUES) return (text) => text.tooManyValues;
  if (lines > MOST_LINES) return (text) => text.tooManyLines;
  if (strange > MOST_STRANGE) return (text) => text.strangeKeys;
  if (odd > MOST_STRANGE) return (text) => text.strangeSigns;
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
