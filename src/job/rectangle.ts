import type { Length } from '../measure/units.ts';
import { usualCorner } from './corner.ts';
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
  desk: Desk,
  spot: Spot,
  fields: Fields,
  wall: Length | undefined,
  of: 'tube' | 'header',
): Rectangle | undefined {
  const side = (key: string): Length | undefined =>
    needed(desk, spot, fields, key, (at) => lengthAt(desk, at, 'positive', of), '40mm');
  const [wide, deep] = [side('wide'), side('deep')];
  const corner = fields.has('corner')
    ? lengthAt(desk, fields.get('corner'), 'zero-or-more')
    : wall && usualCorner(wall, desk.words);
  if (!corner && !fields.has('corner') && !fields.has('wall')) {
    missing(desk, spot, of === 'header' ? 'wall' : 'corner', desk.words.tubes.noCorner);
  }
  if (!wide || !deep || !corner) return undefined;
  const most = Math.min(wide.mm, deep.mm) / 2;
  if (corner.mm <= most + 1e-9) return { wide, deep, corner };
  const objection = desk.words.tubes.cornerTooWide(corner, most, desk.bareUnit);
  return complain(desk, fields.get('corner') ?? spot, 'corner', objection);
}

/** A value that its map can't do without. */
export function needed<Value>(
  desk: Desk,
  spot: Spot,
  fields: Fields,
  key: string,
  read: (at: Spot) => Value | undefined,
  example: string,
): Value | undefined {
  const at = fields.get(key);
  if (at) return read(at);
  if (fields.strange) return undefined;
  return missing(desk, spot, key, desk.words.tubes.needs(desk.say.setting(key, example)));
}
