import type { Desk, Spot } from './desk.ts';
import { type Fields, fieldsOf } from './fields.ts';
import type { Header } from './job.ts';
import { lengthAt, missing } from './values.ts';

/** The kinds of header, each by the key that says which it is. */
const KINDS: Readonly<Record<string, (desk: Desk, fields: Fields) => Header | undefined>> = {
  od: readRound,
};

/** Reads what an end lands on. */
export function readHeader(desk: Desk, spot: Spot): Header | undefined {
  const fields = fieldsOf(desk, spot, 'onto');
  if (fields === undefined) return undefined;
  const kind = Object.keys(KINDS).find((key) => fields.has(key));
  if (kind === undefined) {
    if (fields.strange) return undefined;
    const example = desk.say.setting('od', '44.5mm');
    return missing(
      desk,
      spot,
      'od',
      'the header needs a size',
      `the outside diameter of the header, as in ${example}`,
    );
  }
  return KINDS[kind]?.(desk, fields);
}

function readRound(desk: Desk, fields: Fields): Header | undefined {
  const od = lengthAt(desk, fields.get('od'), 'positive');
  return od && { kind: 'round', od };
}
