import type { End } from '../../job/job.ts';
import { factsOf } from '../../job/kinds.ts';
import { degreeSigns } from '../../leaf/names.ts';

/** What an end lands on, as a setting of the saw: ends with one key are cut without a change. */
export interface Setting {
  readonly key: string;
  /** `onto the 38.1 mm header`: only what all ends of the setting have alike, not how a box is rolled. */
  readonly name: string;
}

/** The setting of an end: the kind and the size of its header, or of all of them where it lands on several. */
export function settingOf(end: End): Setting {
  if (end.kind === 'plain') return { key: 'plain', name: 'cut square' };
  const facts = end.parts.map(({ onto }) => ({ onto, ...factsOf(onto) }));
  const keys = [...new Set(facts.map(({ setting }) => setting))].sort();
  const [{ onto }] = end.parts;
  if (onto.kind === 'mitre') return { key: keys.join(' + '), name: landingInWords(end) };
  const names = [...new Set(facts.map(({ name }) => name))];
  return { key: keys.join(' + '), name: `onto ${names.join(' and ')}` };
}

/** What an end lands on in full: `onto 38.1 mm (1-1/2 in, 1.500)`, or that it is cut square. */
export function landingInWords(end: End): string {
  if (end.kind === 'plain') return 'cut square';
  const names = [...new Set(end.parts.map(({ onto }) => degreeSigns(factsOf(onto).words)))];
  const [{ onto }] = end.parts;
  return `${onto.kind === 'mitre' ? '' : 'onto '}${names.join(' and ')}`;
}
