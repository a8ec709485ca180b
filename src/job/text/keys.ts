/** Where a key may stand, and the keys that are known there. */
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
    'frame',
  ],
  tube: [
    'name',
    'od',
    'pipe',
    'section',
    'wall',
    'between',
    'edge',
    'land',
    'from',
    'root',
    'to',
    'pair',
    'copies',
    'allowance',
    'note',
    'ends',
  ],
  ends: ['A', 'B'],
  end: ['onto', 'angle', 'clock', 'offset', 'seam', 'edge', 'land', 'from', 'root', 'to', 'notch'],
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
  frame: ['points', 'mirror', 'snap', 'density', 'tubes', 'tapes'],
  point: ['on', 'at', 'out', 'middle', 'share', 'from', 'by', 'tapes', 'fixed', 'side'],
  mirror: ['x', 'y', 'z'],
  'frame-tube': [
    'name',
    'along',
    'od',
    'pipe',
    'section',
    'wall',
    'face',
    'edge',
    'land',
    'from',
    'root',
    'to',
    'allowance',
    'note',
    'through',
    'after',
    'ends',
  ],
  'frame-end': [
    'onto',
    'plain',
    'mitre',
    'flat',
    'past',
    'inside',
    'edge',
    'land',
    'from',
    'root',
    'to',
    'seam',
  ],
} as const satisfies Record<string, readonly string[]>;

export type KeyPlace = keyof typeof KEYS;

/** Places of a frame, which are written as text and have no fields. */
export type FramePlace = 'frame' | 'point' | 'mirror' | 'frame-tube' | 'frame-end';

/** Keys by the names that older files give them, which are read for ever. */
const FORMER: Readonly<Record<string, string>> = { blunt: 'land' };

/** The name of a key today. */
export function presentName(key: string): string {
  return FORMER[key] ?? key;
}

/** Whether a key may be followed by a map of keys of its own, which are listed under its name. */
export function isPlace(name: string): name is KeyPlace {
  return name in KEYS;
}

const KNOWN: ReadonlySet<string> = new Set([
  ...Object.values<readonly string[]>(KEYS).flat(),
  ...Object.keys(FORMER),
]);

/** Whether a key is known anywhere. */
export function isKnownKey(key: string): boolean {
  return KNOWN.has(key);
}

/** The places where a key is known. */
export function placesOf(key: string): KeyPlace[] {
  return Object.keys(KEYS)
    .filter(isPlace)
    .filter((place) => KEYS[place].some((known) => known === key));
}
