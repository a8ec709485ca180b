import type { End, Header } from '../../job/job.ts';
import { headerFactsOf } from '../../job/kinds.ts';
import type { Said } from '../../measure/said.ts';
import type { Language } from '../../words/language.ts';

/** The setting of an end that is cut square. */
export const SQUARE = 'plain';

/**
 * What an end lands on, as a setting of the saw: the kind and the size of its header, or of all of them where it lands on
 * several. Ends with one setting are cut without a change.
 */
export function settingOf(end: End): string {
  if (end.kind === 'plain') return SQUARE;
  return [...new Set(end.parts.map(({ onto }) => headerFactsOf(onto).setting))].sort().join(' + ');
}

/** `onto the 38.1 mm header`: only what all ends of the setting have alike, not how a box is rolled. */
export function settingName(end: End, words: Language): Said {
  if (end.kind === 'plain' || end.parts[0].onto.kind === 'mitre') return landingInWords(end, words);
  return words.lists.cut.onto(
    [...new Set(end.parts.map(({ onto }) => headerFactsOf(onto).said(words).name))],
    false,
  );
}

/** What an end lands on in full: `onto 38.1 mm (1-1/2 in, 1.500)`, or that it is cut square. */
export function landingInWords(end: End, words: Language): Said {
  if (end.kind === 'plain') return words.lists.cut.square;
  const header = (onto: Header): Said => {
    const { words: said } = headerFactsOf(onto).said(words);
    return words.card.degreeSigns(said);
  };
  const names = [...new Set(end.parts.map(({ onto }) => header(onto)))];
  return words.lists.cut.onto(names, end.parts[0].onto.kind === 'mitre');
}
