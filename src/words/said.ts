import type { Said } from '../measure/said.ts';

/** What may stand inside a phrase: other phrases, numbers, and the letters of the two ends. */
export type Sayable = Said | number | 'A' | 'B';

/**
 * The one way in which a phrase comes to be: `` say`cut ${length} long` ``. Its parts are joined at once, for the engine keeps every step
 * of what is added up: a thousand tickets held three times the memory of their words.
 */
export function say(phrases: TemplateStringsArray, ...values: readonly Sayable[]): Said {
  return phrases.map((phrase, i) => (i === 0 ? phrase : `${values[i - 1]}${phrase}`)).join('') as Said;
}

/** A person's own words, or a program's data, as they were written: a tube's name, a value of the job file, a key. */
export function asWritten(own: string): Said {
  return own as Said;
}

/** Phrases with something between them. */
export function joined(phrases: readonly Said[], between: string): Said {
  return phrases.join(between) as Said;
}

/** Phrases as lines, each ended. */
export function endedLines(phrases: readonly Said[]): Said {
  return phrases.map((phrase) => `${phrase}\n`).join('') as Said;
}

/** In a column so many letters wide, to its left, or to its right as numbers stand. */
export function inColumn(phrase: Said, width: number, side: 'left' | 'right' = 'left'): Said {
  return (side === 'left' ? phrase.padEnd(width) : phrase.padStart(width)) as Said;
}

/** Why something that a person asked for can't be taken, and what to write instead. */
export interface Objection {
  readonly why: Said;
  readonly instead: Said;
}
