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
    const why = `${desk.say.key(kind ?? '')} says what the header is already`;
    return complain(desk, fields.get(another) ?? spot, 'size-twice', why, 'one of the two');
  }
  const chosen = kind === undefined ? undefined : fields.get(kind);
  if (kind !== undefined && chosen) return KINDS[kind]?.(desk, chosen);
  if (fields.strange) return undefined;
  const instead = `the outside diameter of the header, as in ${desk.say.setting('od', '44.5mm')}`;
  return missing(desk, spot, 'od', 'the header needs a size', instead);
}
