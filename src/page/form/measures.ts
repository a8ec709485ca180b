import type { FieldName, KeyAt, MeasureOf, Reads, WayOf } from './measure.ts';

/** A value that is measured in one way; its key is one that each of its places knows. */
function one<Key extends string>(key: Key, name: FieldName, reads: Reads): MeasureOf<Key> {
  return { name, keys: [key], ways: [{ name: 'number', blanks: [{ at: [key], name, reads }] }] };
}

const DIAMETERS: MeasureOf<KeyAt<'tube'> & KeyAt<'onto'> & KeyAt<'bend'>>['ways'] = [
  { name: 'diameter', blanks: [{ at: ['od'], name: 'diameter', reads: 'length' }] },
  {
    name: 'girth',
    blanks: [
      { at: ['od', 'girth'], name: 'girth', reads: 'length' },
      { at: ['od', 'tape'], name: 'tape', reads: 'length', optional: true },
    ],
  },
  { name: 'pipe', blanks: [{ at: ['pipe'], name: 'pipe', reads: 'pipe' }] },
];

export const TUBE_SIZE: MeasureOf<KeyAt<'tube'>> = {
  name: 'tubeSize',
  keys: ['od', 'pipe'],
  ways: DIAMETERS,
};

export const HEADER_SIZE: MeasureOf<KeyAt<'onto'> & KeyAt<'bend'>> = {
  name: 'headerSize',
  keys: ['od', 'pipe'],
  ways: DIAMETERS,
};

type OfBothEnds = KeyAt<'end'> & KeyAt<'part'>;

export const ANGLE: MeasureOf<OfBothEnds> = {
  name: 'angle',
  keys: ['angle'],
  ways: [
    { name: 'angle', blanks: [{ at: ['angle'], name: 'angle', reads: 'angle' }] },
    { name: 'lean', blanks: [{ at: ['angle', 'off-square'], name: 'lean', reads: 'angle' }] },
    {
      name: 'riseAndRun',
      blanks: [
        { at: ['angle', 'rise'], name: 'rise', reads: 'length' },
        { at: ['angle', 'run'], name: 'run', reads: 'length' },
      ],
    },
    {
      name: 'tapeLengths',
      blanks: [
        { at: ['angle', 'triangle', 0], name: 'alongTube', reads: 'length' },
        { at: ['angle', 'triangle', 1], name: 'alongHeader', reads: 'length' },
        { at: ['angle', 'triangle', 2], name: 'betweenMarks', reads: 'length' },
      ],
    },
    {
      name: 'acute',
      blanks: [
        { at: ['angle', 'acute'], name: 'acute', reads: 'angle' },
        { at: ['angle', 'read-at'], name: 'readAt', reads: ['heel', 'toe'] },
      ],
    },
  ],
};

/** Where an end lands on one round header, it follows from lengths to the edge of a cope that the tube has already. */
export const ANGLE_OR_NOTCH: MeasureOf<KeyAt<'end'>> = {
  name: 'angle',
  keys: ['angle', 'notch'],
  ways: [...ANGLE.ways, { name: 'notch', blanks: [{ at: ['notch'], name: 'notch', reads: 'lengths' }] }],
};

const CLOCK_BY_NUMBER: readonly [WayOf<OfBothEnds>, WayOf<OfBothEnds>] = [
  { name: 'clock', blanks: [{ at: ['clock'], name: 'clock', reads: 'angle' }] },
  { name: 'arc', blanks: [{ at: ['clock', 'arc'], name: 'arc', reads: 'length' }] },
];

export const CLOCK: MeasureOf<OfBothEnds> = { name: 'clock', keys: ['clock'], ways: CLOCK_BY_NUMBER };

/** End B's can be marked at the frame with end A seated. */
export const CLOCK_AT_B: MeasureOf<KeyAt<'end'>> = {
  ...CLOCK,
  ways: [...CLOCK_BY_NUMBER, { name: 'marked', blanks: [], word: { key: 'clock', says: 'mark' } }],
};

export const BETWEEN: MeasureOf<KeyAt<'tube'>> = {
  name: 'length',
  keys: ['between'],
  ways: [
    { name: 'workPoints', blanks: [{ at: ['between'], name: 'workPoints', reads: 'length' }] },
    { name: 'faces', blanks: [{ at: ['between', 'faces'], name: 'faces', reads: 'length' }] },
    {
      name: 'straightedge',
      blanks: [
        { at: ['between', 'straightedge'], name: 'straightedge', reads: 'length' },
        { at: ['between', 'at'], name: 'station', reads: 'station' },
      ],
    },
    { name: 'overall', blanks: [{ at: ['between', 'overall'], name: 'overall', reads: 'length' }] },
    { name: 'seated', blanks: [{ at: ['between', 'seated'], name: 'seated', reads: 'length' }] },
    { name: 'marked', blanks: [], word: { key: 'between', says: 'mark' } },
  ],
};

type OfTubeOrEnd = KeyAt<'tube'> & KeyAt<'end'>;

export const WALL = one<KeyAt<'tube'>>('wall', 'wall', 'wall');
export const ALLOWANCE = one<KeyAt<'tube'>>('allowance', 'allowance', 'length');
export const OFFSET = one<OfBothEnds>('offset', 'offset', 'length');
export const SHIFT = one<KeyAt<'part'>>('shift', 'shift', 'length');
export const SEAM = one<KeyAt<'end'>>('seam', 'seam', 'station');
export const LAND = one<OfTubeOrEnd>('land', 'land', 'length');
export const ROOT = one<OfTubeOrEnd>('root', 'root', 'length');
export const WIDE = one('wide', 'wide', 'length');
export const DEEP = one('deep', 'deep', 'length');
export const CORNER = one('corner', 'corner', 'length');
export const BOX_WALL = one<KeyAt<'box'>>('wall', 'boxWall', 'length');
export const ROLL = one<KeyAt<'box'>>('roll', 'roll', 'angle');
export const TURN = one<KeyAt<'mitre'>>('turn', 'turn', 'angle');
export const PIECES = one<KeyAt<'mitre'>>('pieces', 'pieces', 'count');
export const RADIUS = one<KeyAt<'mitre'> & KeyAt<'bend'>>('radius', 'radius', 'length');
export const CENTRE = one<KeyAt<'bend'>>('centre', 'centre', 'angle');

/** How an edge is made, of a tube or of one of its ends. */
export const EDGE = one<OfTubeOrEnd>('edge', 'edge', ['', 'bevel', 'square']);
/** Whether an end on a box is cut to its flat. */
export const TO = one<KeyAt<'end'>>('to', 'to', ['', 'flat']);
/** From which side a square edge is cut. */
export const FROM = one<OfTubeOrEnd>('from', 'from', ['', 'outside', 'inside']);
