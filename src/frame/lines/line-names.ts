import { plainName } from '../names.ts';

/** Shorter than the longest that a file may have, by what is put behind it. */
const LONGEST = 60;

/** A name that a frame can have: without commas, which part names, and without signs that no text has. */
export function safeName(written: string): string {
  const plain = plainName(
    written.replace(/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u202A-\u202E\u2066-\u2069\uFFFD\uFEFF]/gu, ' '),
  );
  return plain
    .replaceAll(',', ' ')
    .replace(/ +/g, ' ')
    .slice(0, LONGEST)
    .replace(/\p{Cs}$/u, '')
    .trim();
}

/** Gives each name once: one that is taken gets the next number behind it. */
export function onceEach(): (name: string) => string {
  const taken = new Set<string>();
  const last = new Map<string, number>();
  return (name) => {
    let [once, count] = [name, last.get(name) ?? 1];
    while (taken.has(once)) {
      count += 1;
      once = `${name} ${count}`;
    }
    last.set(name, count);
    taken.add(once);
    return once;
  };
}

/** A value of a YAML list in brackets: plain where nothing in it can be taken for anything else. */
export function yamlWord(word: string): string {
  const isPlain = /^\.?[\p{L}\p{N}][\p{L}\p{M}\p{N} ./°"'+_-]*$/u.test(word) && !/[ -]$/.test(word);
  return isPlain ? word : JSON.stringify(word);
}
