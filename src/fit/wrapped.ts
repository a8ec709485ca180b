import { partOf, type Said } from '../measure/said.ts';

/** Lines of so many letters at most, broken between words. */
export function wrapped(text: Said, width: number): readonly Said[] {
  const lines: string[] = [];
  for (const word of text.split(BREAKS)) {
    const line = lines.at(-1);
    if (line !== undefined && line.length + 1 + word.length <= width)
      lines[lines.length - 1] = `${line} ${word}`;
    else lines.push(word);
  }
  return lines.map((line) => partOf(text, line));
}

/** A space, but none between a number and its unit. */
const BREAKS = /(?<!\d) | (?!(?:mm|in)\b|%)/;
