import { isMap, isScalar, isSeq } from 'yaml';
import { type JobDoc, nodeAt, type Path, wordsAt } from './job-doc.ts';

/** How what is written is read, and so what is echoed of it. */
export type Reads = 'length' | 'angle' | 'pipe' | 'wall' | 'station' | 'count' | 'words' | readonly string[];

/** One text to fill in; `at` leads to it from what the measure belongs to. */
export interface Blank {
  readonly at: Path;
  readonly label: string;
  readonly reads: Reads;
  readonly example: string;
  /** Left out of the file where it is empty. */
  readonly optional?: true;
  /** The id of a list of words to choose from. */
  readonly list?: string;
}

/** One way of measuring a value. */
export interface Way {
  readonly name: string;
  readonly blanks: readonly Blank[];
  /** A word in place of a number, with nothing to fill in, and its key. */
  readonly word?: { readonly key: string; readonly says: string };
}

/** One value of a tube, an end or a header, and the ways in which a person may have measured it. */
export interface Measure {
  readonly label: string;
  /** The keys it may be written under. */
  readonly keys: readonly string[];
  readonly ways: readonly [Way, ...Way[]];
}

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

/** The way in which a value is written in the file; undefined for a list of readings, which is shown and left as it is. */
export function wayAt(doc: JobDoc, base: Path, { ways, keys }: Measure): Way | undefined {
  if (keys.some((key) => isSeq(nodeAt(doc, [...base, key])))) return undefined;
  const byWord = ways.find(({ word }) => word && isWord(doc, [...base, word.key], word.says));
  if (byWord) return byWord;
  const filled = ways.find(({ blanks }) =>
    blanks.some(({ at }) => {
      const node = nodeAt(doc, [...base, ...at]);
      return node !== undefined && !isMap(node) && !isSeq(node);
    }),
  );
  return filled ?? ways[0];
}

function isWord(doc: JobDoc, path: Path, word: string): boolean {
  const node = nodeAt(doc, path);
  return isScalar(node) && wordsAt(doc, path).trim().toLowerCase() === word;
}
