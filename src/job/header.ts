import { complain, type Desk, type Spot } from './desk.ts';
import { type Fields, fieldsOf } from './fields.ts';
import type { Header } from './job.ts';
import { diameterAt, pipeAt } from './size.ts';
import { missing } from './values.ts';

/** The kinds of header, each by the key that says which it is. */
const KINDS: Readonly<Record<string, (desk: Desk, fields: Fields) => Header | undefined>> = {
  od: readRound,
  pipe: readPipeHeader,
};

/** Reads what an end lands on. */
export function readHeader(desk: Desk, spot: Spot): Header | undefined {
  const fields = fieldsOf(desk, spot, 'onto');
  if (fields === undefined) return undefined;
  const [kind, another] = Object.keys(KINDS).filter((key) => fields.has(key));
  if (another !== undefined) {
    const why = `the header's size is given by ${desk.say.key(kind ?? '')} already`;
    return complain(desk, fields.get(another) ?? spot, 'size-twice', why, 'one of the two');
  }
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
  const od = diameterAt(desk, fields.get('od'), 'header');
  return od && { kind: 'round', od };
}

function readPipeHeader(desk: Desk, fields: Fields): Header | undefined {
  const pipe = pipeAt(desk, fields.get('pipe'));
  return pipe && { kind: 'round', od: pipe.od };
}
