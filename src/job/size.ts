import type { TubeSize } from './section.ts';
import { SECTIONS } from './sections.ts';
import { complain, type Desk, type Spot } from './text/desk.ts';
import type { Fields } from './text/fields.ts';
import { missing } from './text/values.ts';
import { readWall } from './wall.ts';

/** The tube's size, by the one key that says it, and its wall. */
export function readSize(desk: Desk, tube: Spot, fields: Fields): TubeSize {
  const [kind, another] = Object.keys(SECTIONS).filter((key) => fields.has(key));
  const spot = fields.get(kind ?? '');
  const wall = fields.get('wall');
  if (kind === undefined || !spot) {
    return { section: sizeMissing(desk, tube), wall: readWall(desk, wall, undefined) };
  }
  if (another === undefined) return SECTIONS[kind]?.(desk, spot, wall) ?? UNCLEAR;
  const objection = desk.words.tubes.sizeTwice(desk.say.key(kind));
  complain(desk, fields.get(another) ?? spot, 'size-twice', objection);
  return UNCLEAR;
}

const UNCLEAR: TubeSize = { section: undefined, wall: 'unclear' };

function sizeMissing(desk: Desk, tube: Spot): undefined {
  return missing(desk, tube, 'od', desk.words.tubes.noSize(desk.say.setting('pipe', 'NPS 1-1/2')));
}
