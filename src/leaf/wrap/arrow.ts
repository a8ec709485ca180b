import type { Mark } from '../../draw/drawing.ts';
import { type Block, LETTER, lettered, TEXT, WORTH } from '../../draw/lettering.ts';
import { ASCENT, CAP_HEIGHT, DESCENT, widthOf } from '../../draw/letters.ts';
import { point } from '../../draw/path.ts';
import { outline, solid } from '../../draw/strokes.ts';
import type { Mm } from '../../measure/units.ts';
import type { Body } from './body.ts';

/** A tag with a solid tip: the tip points from the body to the joint, and the end's letter stands in the tag. */
export interface ArrowShape {
  readonly width: Mm;
  readonly height: Mm;
  readonly letter: Mm;
  /** Whether what it points to is said at its tail. */
  readonly told?: true;
}

export const ARROWS: readonly ArrowShape[] = [
  { width: 13, height: 20, letter: LETTER, told: true },
  { width: 8, height: 14, letter: LETTER },
  { width: 6.2, height: 9.6, letter: WORTH },
];

/** The arrow with its box's lower left corner at (left, bottom). */
export function arrowMarks(
  { flat, words: { leaf } }: Pick<Body, 'flat' | 'words'>,
  shape: ArrowShape,
  left: Mm,
  bottom: Mm,
): Mark[] {
  const { width, height, letter } = shape;
  const tail = shape.told && leaf.toJoint;
  const end = leaf.letter(flat.end);
  const away = -flat.bodyWay;
  const middle = left + width / 2;
  const line = tail ? TEXT * (ASCENT + DESCENT) + 0.5 : 0;
  // Distances are counted from the tail, towards the joint.
  const start = flat.bodyWay === 1 ? bottom + height : bottom;
  const at = (along: Mm): Mm => start + away * along;
  const half = Math.min(width, 9) / 2;
  const shoulder = height - half;
  const tag = outline(
    'outline',
    point(middle - half + 1, at(line)),
    point(middle + half - 1, at(line)),
    point(middle + half - 1, at(shoulder)),
    point(middle - half + 1, at(shoulder)),
  );
  const tip = solid(
    'outline',
    point(middle - half, at(shoulder)),
    point(middle + half, at(shoulder)),
    point(middle, at(height)),
  );
  const centre = at((line + shoulder) / 2);
  const base = centre - (CAP_HEIGHT * letter) / 2 - DESCENT * letter;
  const marks = [
    tag,
    tip,
    ...lettered({ fact: 'end', lines: [end], size: letter }, middle - widthOf(end, letter) / 2, base),
  ];
  if (!tail) return marks;
  const block: Block = { fact: 'to-joint', lines: [tail], size: TEXT };
  const low = Math.min(at(0), at(line - 0.5));
  return [...marks, ...lettered(block, middle - widthOf(tail, TEXT) / 2, low)];
}
