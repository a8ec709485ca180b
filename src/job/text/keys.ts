import { nearest } from './nearest.ts';

/** Where a key may stand: the person's name for the place, and the keys it knows. */
export const KEYS = {
  file: [
    'copeleaf',
    'units',
    'job',
    'tube',
    'tubes',
    'pair',
    'copies',
    'stock',
    'kerf',
    'paper',
    'margin',
    'paper-thickness',
  ],
  tube: [
    'name',
    'od',
    'pipe',
    'section',
    'wall',
    'between',
    'edge',
    'blunt',
    'from',
    'root',
    'pair',
    'copies',
    'allowance',
    'ends',
  ],
  ends: ['A', 'B'],
  end: ['onto', 'angle', 'clock', 'offset', 'seam', 'edge', 'blunt', 'from', 'root'],
  part: ['onto', 'angle', 'clock', 'offset', 'shift'],
  onto: ['od', 'pipe', 'plate', 'mitre', 'box', 'bend'],
  section: ['wide', 'deep', 'corner'],
  plate: [],
  mitre: ['turn', 'pieces', 'radius'],
  box: ['wide', 'deep', 'corner', 'wall', 'roll'],
  bend: ['od', 'pipe', 'radius', 'centre'],
  margin: ['left', 'right', 'top', 'bottom'],
  girth: ['girth', 'tape'],
  angle: ['off-square', 'rise', 'run', 'triangle', 'acute', 'read-at'],
  clock: ['arc'],
  between: ['faces', 'straightedge', 'at', 'overall', 'seated'],
} as const satisfies Record<string, readonly string[]>;

export type KeyPlace = keyof typeof KEYS;

/** Whether a key may be followed by a map of keys of its own, which are listed under its name. */
export function isPlace(name: string): name is KeyPlace {
  return name in KEYS;
}

/** Of a place that is not under a key of its own name. */
const PLACE_NAMES: Partial<Record<KeyPlace, string>> = {
  file: 'at the head of the file',
  tube: 'on the tube',
  end: 'on an end',
  part: 'on a header of a list',
  girth: 'under `od`',
};

/** The key that was meant by one that is not known at this place, if it looks like a slip. */
export function meantKey(key: string, place: KeyPlace): string | undefined {
  return placesOf(key).length > 0 ? undefined : nearest(key, KEYS[place]);
}

/** What to write instead of a key that is not known at this place. */
export function insteadOfKey(key: string, place: KeyPlace): string {
  const elsewhere = placesOf(key).map(placeName);
  if (elsewhere.length > 0) return `\`${key}\` belongs ${elsewhere.join(' or ')}`;
  const meant = meantKey(key, place);
  return meant === undefined ? `one of ${KEYS[place].join(', ')}` : `\`${meant}\`, if that is meant`;
}

export function placeName(place: KeyPlace): string {
  return PLACE_NAMES[place] ?? `under \`${place}\``;
}

function placesOf(key: string): KeyPlace[] {
  return Object.keys(KEYS)
    .filter(isPlace)
    .filter((place) => KEYS[place].some((known) => known === key));
}
