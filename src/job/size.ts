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
  const why = `${desk.say.key(kind)} says the size already`;
  complain(desk, fields.get(another) ?? spot, 'size-twice', why, 'one of the two');
  return UNCLEAR;
}

const UNCLEAR: TubeSize = { section: undefined, wall: 'unclear' };

function sizeMissing(desk: Desk, tube: Spot): undefined {
  const instead = `its outside diameter, as in 38.1mm or 1-1/2in, or ${desk.say.setting('pipe', 'NPS 1-1/2')}`;
  return missing(desk, tube, 'od', 'the tube needs a size', instead);
}
