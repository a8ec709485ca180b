import { diameterAt } from './diameter.ts';
import type { Header } from './job.ts';
import type { HeaderFacts } from './kind.ts';
import { bendFacts, readBend } from './kinds/bend.ts';
import { boxFacts, readBox } from './kinds/box.ts';
import { mitreFacts, readMitre } from './kinds/mitre.ts';
import { plateFacts } from './kinds/plate.ts';
import { roundFacts, roundOf } from './kinds/round.ts';
import { pipeAt } from './pipe.ts';
import { complain, type Spot } from './text/desk.ts';
import { type Fields, fieldsOf } from './text/fields.ts';
import type { KeyPlace } from './text/keys.ts';
import { missing } from './text/values.ts';

/** How each kind of header is read, by the key that says which it is. */
const KINDS: Readonly<Record<string, (spot: Spot) => Header | undefined>> = {
  od: (spot) => roundOf(diameterAt(spot, 'header')),
  pipe: (spot) => roundOf(pipeAt(spot)?.od),
  plate: (spot) => inMap(spot, 'plate', () => ({ kind: 'plate' })),
  mitre: (spot) => inMap(spot, 'mitre', readMitre),
  box: (spot) => inMap(spot, 'box', readBox),
  bend: (spot) => inMap(spot, 'bend', readBend),
};

/** Reads what an end lands on. */
export function readHeader(spot: Spot): Header | undefined {
  const fields = fieldsOf(spot, 'onto');
  if (fields === undefined) return undefined;
  const [kind, another] = Object.keys(KINDS).filter((key) => fields.has(key));
  if (another !== undefined) {
    const objection = spot.desk.words.headers.sizeTwice(spot.desk.say.key(kind ?? ''));
    return complain(fields.at(another), 'size-twice', objection);
  }
  const chosen = kind === undefined ? undefined : fields.get(kind);
  if (kind !== undefined && chosen) return KINDS[kind]?.(chosen);
  if (fields.strange) return undefined;
  return missing(spot, 'od', spot.desk.words.headers.noSize(spot.desk.say.setting('od', '44.5mm')));
}

/** What is asked of a header, by its kind. */
export function headerFactsOf(header: Header): HeaderFacts {
  switch (header.kind) {
    case 'round':
      return roundFacts(header);
    case 'plate':
      return plateFacts(header);
    case 'mitre':
      return mitreFacts(header);
    case 'box':
      return boxFacts(header);
    case 'bend':
      return bendFacts(header);
  }
}

function inMap(
  spot: Spot,
  place: KeyPlace,
  read: (fields: Fields) => Header | undefined,
): Header | undefined {
  const fields = fieldsOf(spot, place);
  return fields && read(fields);
}
