import type { Header } from './job.ts';
import { KINDS } from './kinds.ts';
import { complain, type Desk, type Spot } from './text/desk.ts';
import { fieldsOf } from './text/fields.ts';
import { missing } from './text/values.ts';

/** Reads what an end lands on. */
export function readHeader(desk: Desk, spot: Spot): Header | undefined {
  const fields = fieldsOf(desk, spot, 'onto');
  if (fields === undefined) return undefined;
  const [kind, another] = Object.keys(KINDS).filter((key) => fields.has(key));
  if (another !== undefined) {
    const objection = desk.words.headers.sizeTwice(desk.say.key(kind ?? ''));
    return complain(desk, fields.get(another) ?? spot, 'size-twice', objection);
  }
  const chosen = kind === undefined ? undefined : fields.get(kind);
  if (kind !== undefined && chosen) return KINDS[kind]?.(desk, chosen);
  if (fields.strange) return undefined;
  return missing(desk, spot, 'od', desk.words.headers.noSize(desk.say.setting('od', '44.5mm')));
}
