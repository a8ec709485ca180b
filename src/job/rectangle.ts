import type { Length } from '../measure/units.ts';
import { complain, type Desk, type Spot } from './text/desk.ts';
import type { Fields } from './text/fields.ts';
import { lengthAt, missing } from './text/values.ts';

export interface Rectangle {
  readonly wide: Length;
  readonly deep: Length;
  readonly corner: Length;
}

/** The two sides and the corner of a rectangular tube; without a corner it is the usual one of this wall, which of a header stands beside them. */
export function readRectangle(
  fields: Fields,
  wall: Length | undefined,
  of: 'tube' | 'header',
): Rectangle | undefined {
  const side = (key: string): Length | undefined =>
    needed(fields, key, (at) => lengthAt(at, 'positive', of), '40mm');
  const [wide, deep] = [side('wide'), side('deep')];
  const corner = fields.has('corner')
    ? lengthAt(fields.get('corner'), 'zero-or-more')
    : wall && usualCorner(wall, fields.desk);
  if (!corner && !fields.has('corner') && !fields.has('wall')) {
    missing(fields.spot, of === 'header' ? 'wall' : 'corner', fields.desk.words.tubes.noCorner);
  }
  if (!wide || !deep || !corner) return undefined;
  const most = Math.min(wide.mm, deep.mm) / 2;
  if (corner.mm <= most + 1e-9) return { wide, deep, corner };
  const objection = fields.desk.words.tubes.cornerTooWide(corner, most, fields.desk.bareUnit);
  return complain(fields.at('corner'), 'corner', objection);
}

/**
 * The outside corner radius of a cold-formed hollow section where none is given: the middle of the standard's range,
 * 2 t for walls to 6 mm and 2.5 t above (EN 10219-2, secondary).
 */
function usualCorner(wall: Length, { words: { tubes } }: Desk): Length {
  const times = wall.mm <= 6 ? 2 : 2.5;
  return { mm: times * wall.mm, wrote: tubes.usualCorner(times), unit: wall.unit, byName: true };
}

/** A value that its map can't do without. */
export function needed<Value>(
  fields: Fields,
  key: string,
  read: (at: Spot) => Value | undefined,
  example: string,
): Value | undefined {
  const at = fields.get(key);
  if (at) return read(at);
  if (fields.strange) return undefined;
  return missing(fields.spot, key, fields.desk.words.tubes.needs(fields.desk.say.setting(key, example)));
}
