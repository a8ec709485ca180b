import { partOf, type Said } from '../measure/said.ts';
import type { Mm } from '../measure/units.ts';
import { widthOf } from './letters.ts';

/** A text broken into lines no wider than `width`: between words where it can be, inside one that is wider itself. */
export function broken(text: Said, size: Mm, width: Mm): Said[] {
  return brokenTo(measured(wordsIn(text), size), width);
}

interface Word {
  readonly text: Said;
  readonly wide: Mm;
}

/** Words measured once, to be broken to many widths. */
export interface MeasuredWords {
  readonly size: Mm;
  readonly words: readonly Word[];
}

/** Words of this size, each with its width. */
export function measured(words: readonly Said[], size: Mm): MeasuredWords {
  return { size, words: words.map((text) => ({ text, wide: widthOf(text, size) })) };
}

/** The words of a text. A lone capital, such as an end's letter, stays with the word before it, and a unit with its number. */
export function wordsIn(text: Said): Said[] {
  const words = text.trim().replace(/ +/g, ' ').split(BREAKS);
  return words.map((word) => partOf(text, word));
}

/** A space that a line may be broken at. */
const BREAKS = / (?!\p{Lu}[.,:;)]*(?: |$))(?!(?<=\d )(?:mm|in)\b)/u;

/** Words in lines no wider than `width`, as `broken` does it. */
export function brokenTo({ size, words }: MeasuredWords, width: Mm): Said[] {
  const space = widthOf(' ', size);
  const fitting = words.every(({ wide }) => wide <= width)
    ? words
    : words.flatMap((word) => (word.wide <= width ? [word] : parted(word.text, size, width)));
  const lines: Said[] = [];
  let line: Said | undefined;
  let long = 0;
  for (const { text, wide } of fitting) {
    if (line !== undefined && long + space + wide > width) {
      lines.push(line);
      line = undefined;
    }
    long = line === undefined ? wide : long + space + wide;
    line = line === undefined ? text : partOf(line, `${line} ${text}`);
  }
  return line === undefined ? lines : [...lines, line];
}

/** What stays together only where it can: its words, and those that are wider than a line in pieces. */
function parted(text: Said, size: Mm, width: Mm): Word[] {
  return text.split(' ').flatMap((each) => {
    const word = partOf(text, each);
    const wide = widthOf(word, size);
    return wide <= width ? [{ text: word, wide }] : chopped(word, size, width);
  });
}

/** A word in pieces of which each is no wider than `width`, or one sign: behind a hyphen where there is one to break at. */
function chopped(word: Said, size: Mm, width: Mm): Word[] {
  const pieces: Word[] = [];
  const put = (text: string): void => {
    pieces.push({ text: partOf(word, text), wide: widthOf(text, size) });
  };
  let text = '';
  for (const sign of word) {
    if (text !== '' && widthOf(text + sign, size) > width) {
      const hyphen = text.lastIndexOf('-') + 1;
      put(hyphen > 0 ? text.slice(0, hyphen) : text);
      text = hyphen > 0 ? text.slice(hyphen) : '';
    }
    text += sign;
  }
  put(text);
  return pieces;
}

/** The text where it fits `width` mm; else as much of its beginning as does, with an ellipsis. */
export function shortened(text: Said, size: Mm, width: Mm): Said {
  if (widthOf(text, size) <= width) return text;
  const signs = Array.from(text);
  while (signs.length > 0 && widthOf(`${signs.join('').trimEnd()}…`, size) > width) signs.pop();
  return partOf(text, `${signs.join('').trimEnd()}…`);
}
