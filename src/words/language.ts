import type { ENGLISH } from './english.ts';

/** How everything is said, by subject. Another language says the same: it has the phrases that the first has. */
export type Language = typeof ENGLISH;
