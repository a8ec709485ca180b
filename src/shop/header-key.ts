import type { End } from '../job/job.ts';
import { factsOf } from '../job/kinds.ts';

/** What an end lands on, as a setting of the saw: ends with one key are cut without a change. */
export interface Setting {
  readonly key: string;
  /** `onto 38.1 mm (1-1/2 in, 1.500)`. */
  readonly name: string;
}

/** The setting of an end: the kind and the size of its header, or of all of them where it lands on several. */
export function settingOf(end: End): Setting {
  if (end.kind === 'plain') return { key: 'plain', name: 'cut off square' };
  const keys = [...new Set(end.parts.map(({ onto }) => factsOf(onto).setting))].sort();
  const names = [...new Set(end.parts.map(({ onto }) => factsOf(onto).words))];
  const [{ onto }] = end.parts;
  return { key: keys.join(' + '), name: `${onto.kind === 'mitre' ? '' : 'onto '}${names.join(' and ')}` };
}
