import type { Box, Mark, Point } from '../../draw/drawing.ts';
import { point } from '../../draw/path.ts';
import type { Mm } from '../../measure/units.ts';
import type { Segmented } from '../bend-pieces.ts';
import { drawn, lineOf, type PictureLine } from './picture.ts';

/** A bend as its pieces make it, in the plane of its centre line, in a tube that reaches so far from its axis. */
export function wholeBendPicture({ turn, segments }: Segmented, reach: Mm): (box: Box) => Mark[] {
  const { pieces, radius } = segments;
  const step = turn.rad / (pieces - 1);
  const joints = Array.from({ length: pieces - 1 }, (_, i) => (i + 0.5) * step);
  const at = (far: Mm, angle: number): Point => point(-far * Math.cos(angle), far * Math.sin(angle));
  const cut = (far: Mm, joint: number): Point => at(far / Math.cos(step / 2), joint);
  const side = (far: Mm): PictureLine =>
    lineOf([at(far, 0), ...joints.map((joint) => cut(far, joint)), at(far, turn.rad)]);
  const [near, far] = [radius.mm - reach, radius.mm + reach];
  const seams = joints.map((joint): PictureLine => [cut(near, joint), cut(far, joint)]);
  const ends = [0, turn.rad].map((angle): PictureLine => [at(near, angle), at(far, angle)]);
  return (box) => drawn({ lines: [side(near), side(far), ...seams, ...ends], axes: [], words: [] }, box);
}
