import { diameterAt } from './diameter.ts';
import type { Header } from './job.ts';
import type { HeaderFacts } from './kind.ts';
import { bendFacts, readBend } from './kinds/bend.ts';
import { boxFacts, readBox } from './kinds/box.ts';
import { mitreFacts, readMitre } from './kinds/mitre.ts';
import { plateFacts } from './kinds/plate.ts';
import { roundFacts, roundOf } from './kinds/round.ts';
import { pipeAt } from './pipe.ts';
import type { Desk, Spot } from './text/desk.ts';
import { type Fields, fieldsOf } from './text/fields.ts';
import type { KeyPlace } from './text/keys.ts';

/** How each kind of header is read, by the key that says which it is. */
export const KINDS: Readonly<Record<string, (desk: Desk, spot: Spot) => Header | undefined>> = {
  od: (desk, spot) => roundOf(diameterAt(desk, spot, 'header')),
  pipe: (desk, spot) => roundOf(pipeAt(desk, spot)?.od),
  plate: (desk, spot) => inMap(desk, spot, 'plate', () => ({ kind: 'plate' })),
  mitre: (desk, spot) => inMap(desk, spot, 'mitre', (fields) => readMitre(desk, spot, fields)),
  box: (desk, spot) => inMap(desk, spot, 'box', (fields) => readBox(desk, spot, fields)),
  bend: (desk, spot) => inMap(desk, spot, 'bend', (fields) => readBend(desk, spot, fields)),
};

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
  desk: Desk,
  spot: Spot,
  place: KeyPlace,
  read: (fields: Fields) => Header | undefined,
): Header | undefined {
  const fields = fieldsOf(desk, spot, place);
  return fields && read(fields);
}
