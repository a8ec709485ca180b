import type { Measure, Reads, Way } from './measure.ts';

function plain(key: string, label: string, reads: Reads, example: string, name = 'as a number'): Way {
  return { name, blanks: [{ at: [key], label, reads, example }] };
}

function one(key: string, label: string, reads: Reads, example: string): Measure {
  return { label, keys: [key], ways: [plain(key, label, reads, example)] };
}

function marked(key: string): Way {
  return { name: 'marked at the frame', blanks: [], word: { key, says: 'mark' } };
}

function diameter(what: string): Measure {
  return {
    label: `size of the ${what}`,
    keys: ['od', 'pipe'],
    ways: [
      plain('od', 'outside diameter', 'length', '38.1', 'outside diameter'),
      {
        name: 'girth, by a tape',
        blanks: [
          { at: ['od', 'girth'], label: 'girth', reads: 'length', example: '120' },
          {
            at: ['od', 'tape'],
            label: 'tape’s thickness',
            reads: 'length',
            example: '0',
            optional: true,
          },
        ],
      },
      plain('pipe', 'pipe size', 'pipe', 'NPS 1-1/2 sch 40', 'pipe, by its name'),
    ],
  };
}

export const TUBE_SIZE = diameter('tube');
export const HEADER_SIZE = diameter('header');
export const WALL = one('wall', 'wall', 'wall', '2.4');

export const ANGLE: Measure = {
  label: 'angle',
  keys: ['angle'],
  ways: [
    plain('angle', 'angle', 'angle', '60', 'angle to the header'),
    {
      name: 'lean off square',
      blanks: [{ at: ['angle', 'off-square'], label: 'lean from square', reads: 'angle', example: '30' }],
    },
    {
      name: 'rise and run',
      blanks: [
        { at: ['angle', 'rise'], label: 'rise', reads: 'length', example: '7in' },
        { at: ['angle', 'run'], label: 'run along the header', reads: 'length', example: '12in' },
      ],
    },
    {
      name: 'three tape lengths',
      blanks: [
        { at: ['angle', 'triangle', 0], label: 'along the tube', reads: 'length', example: '200' },
        { at: ['angle', 'triangle', 1], label: 'along the header', reads: 'length', example: '200' },
        { at: ['angle', 'triangle', 2], label: 'between the marks', reads: 'length', example: '208' },
      ],
    },
    {
      name: 'acute angle',
      blanks: [
        { at: ['angle', 'acute'], label: 'acute angle', reads: 'angle', example: '62' },
        { at: ['angle', 'read-at'], label: 'read at', reads: ['heel', 'toe'], example: 'heel' },
      ],
    },
  ],
};

const CLOCK_BY_NUMBER: readonly [Way, Way] = [
  plain('clock', 'clock', 'angle', '0', 'clock of the heel'),
  {
    name: 'arc from the spine',
    blanks: [
      { at: ['clock', 'arc'], label: 'round the tube from the spine', reads: 'length', example: '9.7' },
    ],
  },
];

export const CLOCK: Measure = { label: 'clock', keys: ['clock'], ways: CLOCK_BY_NUMBER };

/** End B's can be marked at the frame with end A seated. */
export const CLOCK_AT_B: Measure = {
  ...CLOCK,
  ways: [...CLOCK_BY_NUMBER, marked('clock')],
};

export const BETWEEN: Measure = {
  label: 'between',
  keys: ['between'],
  ways: [
    plain('between', 'between work points', 'length', '600', 'between work points'),
    {
      name: 'between the faces',
      blanks: [{ at: ['between', 'faces'], label: 'header to header', reads: 'length', example: '560' }],
    },
    {
      name: 'along a straightedge',
      blanks: [
        { at: ['between', 'straightedge'], label: 'along the outside', reads: 'length', example: '560' },
        { at: ['between', 'at'], label: 'at station', reads: 'station', example: '90' },
      ],
    },
    {
      name: 'overall length',
      blanks: [{ at: ['between', 'overall'], label: 'overall', reads: 'length', example: '620' }],
    },
    {
      name: 'from the seated end A',
      blanks: [{ at: ['between', 'seated'], label: 'edge A to the mark', reads: 'length', example: '587' }],
    },
    marked('between'),
  ],
};

export const OFFSET = one('offset', 'offset', 'length', '0');
export const SHIFT = one('shift', 'shift along the tube', 'length', '0');
export const SEAM = one('seam', 'seam at', 'station', 'chosen');
export const BLUNT = one('blunt', 'blunt land', 'length', 'none');
export const ROOT = one('root', 'root gap', 'length', '0');
export const ALLOWANCE = one('allowance', 'allowance', 'length', '10mm');
export const WIDE = one('wide', 'wide', 'length', '50');
export const DEEP = one('deep', 'deep', 'length', '30');
export const CORNER = one('corner', 'corner radius', 'length', 'usual');
export const BOX_WALL = one('wall', 'wall of the box', 'length', '4');
export const ROLL = one('roll', 'roll', 'angle', '0');
export const TURN = one('turn', 'turn', 'angle', '90');
export const PIECES = one('pieces', 'pieces', 'count', '2');
export const RADIUS = one('radius', 'centre line radius', 'length', '150');
export const CENTRE = one('centre', 'centre of the bend at', 'angle', '0');
