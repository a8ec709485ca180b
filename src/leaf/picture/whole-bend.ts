import type { Box, Mark, Point } from '../../draw/drawing.ts';
import { point } from '../../draw/path.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Language } from '../../words/language.ts';
import type { Segmented } from '../bend-pieces.ts';
import { drawn, lineOf, type PictureLine, type PictureWord } from './picture.ts';

/** A bend as its pieces make it, in the plane of its centre line, in a tube that reaches so far from its axis. */
export function wholeBendPicture(
  { turn, segments }: Segmented,
  reach: Mm,
  { picture, ticket }: Language,
): (box: Box) => Mark[] {
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
  const named = (text: Said, angle: number, from: Mm, to: Mm): PictureWord => {
    const [place, next] = [at(from, angle), at(to, angle)];
    return { text, at: place, way: point(next.x - place.x, next.y - place.y) };
  };
  const words = [
    named(ticket.piece('end'), 0.25 * step, far, far + reach),
    ...(pieces > 2 ? [named(ticket.piece('middle'), step, far, far + reach)] : []),
    named(picture.inside, turn.rad / 2, near, near - reach),
  ];
  return (box) => drawn({ lines: [side(near), side(far), ...seams, ...ends], axes: [], words }, box);
}
