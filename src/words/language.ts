import type { ENGLISH } from './english.ts';
import type { Objection } from './said.ts';

/** How everything is said, by subject. Another language says the same: it has the phrases that the first has. */
export type Language = typeof ENGLISH;

/** An objection that waits for the language in which it is said. */
export type Wording = (words: Language) => Objection;
