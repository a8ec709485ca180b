import type { End, Header } from '../job/job.ts';
import { headerInWords } from '../job/shape.ts';
import type { Mm } from '../measure/units.ts';

/** What an end lands on, as a setting of the saw: ends with one key are cut without a change. */
export interface Setting {
  readonly key: string;
  /** `onto 38.1 mm (1-1/2 in, 1.500)`. */
  readonly name: string;
}

/** The setting of an end: the kind and the size of its header, or of all of them where it lands on several. */
export function settingOf(end: End): Setting {
  if (end.kind === 'plain') return { key: 'plain', name: 'cut off square' };
  const keys = [...new Set(end.parts.map(({ onto }) => keyOf(onto)))].sort();
  const names = [...new Set(end.parts.map(({ onto }) => headerInWords(onto)))];
  const [{ onto }] = end.parts;
  return { key: keys.join(' + '), name: `${onto.kind === 'mitre' ? '' : 'onto '}${names.join(' and ')}` };
}

function keyOf(header: Header): string {
  switch (header.kind) {
    case 'round':
      return `round ${size(header.od.mm)}`;
    case 'bend':
      return `bend ${size(header.od.mm)} ${size(header.radius.mm)}`;
    case 'box':
      return `box ${size(header.wide.mm)} ${size(header.deep.mm)} ${size(header.corner.mm)}`;
    case 'plate':
      return 'plate';
    case 'mitre':
      return `mitre ${header.turn.rad.toFixed(9)} ${header.segments?.pieces ?? 2}`;
  }
}

/** Sizes written in different units are one size. */
function size(mm: Mm): string {
  return mm.toFixed(4);
}
