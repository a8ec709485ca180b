import type { Box, Mark, Point } from '../../draw/drawing.ts';
import { point } from '../../draw/path.ts';
import type { EndName } from '../../job/job.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import type { Language } from '../../words/language.ts';
import { headerExtent, headerLines } from './header-picture.ts';
import { visibleParts } from './hidden.ts';
import { breakLine, drawn, type PictureLine, type PictureWord } from './picture.ts';
import { axesOf, type BodyWay, fromSide } from './view.ts';

/**
 * What is marked at the frame: the tube not yet cut, held beside its header and seen from its side, with the mark along its heel side
 * and the one where that meets the header. Undefined for an end that is laid by numbers.
 */
export function marksPicture(cope: Cope, end: EndName, words: Language): ((box: Box) => Mark[]) | undefined {
  const { fitUp, joint } = cope;
  if (!fitUp) return undefined;
  const k: BodyWay = end === 'A' ? 1 : -1;
  const [part] = cope.end.parts;
  const { reach } = joint.section;
  const view = fromSide(k);
  const heel = part.angle.rad <= Math.PI / 2 ? reach : -reach;
  const { fore } = headerExtent(part, reach);
  const [low, high] = [-k * fore, k * (Math.max(cope.throat.setback, 0) + 2.2 * reach)];
  const at = (x: Mm, y: Mm): Point => point(x, y);
  const tube = [at(-reach, low), at(reach, low), at(reach, high), at(-reach, high)];
  const sides = [-reach, reach].map((x): PictureLine => [at(x, low), at(x, high)]);
  const ends = [low, high].map((y) => breakLine(at(-reach, y), at(reach, y)));
  const along: PictureLine = [at(AT * heel, low * NEAR), at(AT * heel, high * NEAR)];
  const across = k * (fitUp.lengthSetback ?? 0);
  const length: PictureLine = [at(heel / 2, across), at(BEYOND * heel, across)];
  const out = point(Math.sign(heel), 0);
  const named = (line: PictureLine, text: Said, place: Point) => ({
    line,
    word: { text, at: place, way: out, led: 'always' } satisfies PictureWord,
  });
  const marked = [
    ...(fitUp.lengthSetback === undefined ? [] : [named(length, words.picture.lengthMark, at(heel, across))]),
    ...(fitUp.clock ? [named(along, words.picture.rotationMark, at(AT * heel, low * FREE))] : []),
  ];
  const header = headerLines(part, axesOf(part, part.clock.rad), view, reach);
  const lines = [
    ...header.lines.flatMap((line) => visibleParts(line, tube)),
    ...sides,
    ...ends,
    ...marked.map(({ line }) => line),
  ];
  return (box) => drawn({ lines, axes: [], words: marked.map(({ word }) => word) }, box);
}

/** Where the mark along the tube is drawn, in from its side, how near its ends, and where it is pointed at, beyond the header; how far the other stands out. */
const AT = 0.75;
const NEAR = 0.85;
const FREE = 0.7;
const BEYOND = 1.3;
