import type { Box, Mark, Point } from '../../draw/drawing.ts';
import { distance, point, type Segment } from '../../draw/path.ts';
import type { EndName, Part } from '../../job/job.ts';
import { headerFactsOf } from '../../job/kinds.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import { sawnAt } from '../../saddle/sawn.ts';
import type { TubeSolution } from '../../saddle/solve.ts';
import { exactCosine } from '../../space/round.ts';
import type { Language } from '../../words/language.ts';
import { joined } from '../../words/said.ts';
import { type HeaderSide, sideOfPart } from '../wrap/sides.ts';
import { drawn, lineOf, type Picture, type PictureWord } from './picture.ts';

const STEPS = 72;

/** How far a header is drawn from the tube's axis, on the heel's side and on the toe's, in the tube's reach. */
const OUT = { heel: 1.5, toe: 1.25 } as const;

/**
 * The tube seen from end A along its axis, its spine up, and each header as it runs across it, solid with the end's letter on the heel's
 * side, of several on that of its stretch of the cut: a turn to the right is one to the right in it too, so that a tube and its opposite hand can't be taken for one another.
 * Undefined where there is nothing to tell: of one header alone without a twin, or where no header's clocking is known.
 */
export function heelsPicture(solution: TubeSolution, words: Language): ((box: Box) => Mark[]) | undefined {
  const { section, tube } = solution;
  const headers = linesAcross(solution, words);
  if (headers.length === 0 || !(tube.pair || headers.length > 1)) return undefined;
  const ring = Array.from({ length: STEPS + 1 }, (_, i) => {
    const { x, y } = section.at((i * section.turn) / STEPS);
    return onPage(x, y);
  });
  const top = section.at(0).x;
  const picture: Picture = {
    lines: [lineOf(ring), [onPage(0.8 * top, 0), onPage(top, 0)], ...headers.map(({ line }) => line)],
    axes: headers.flatMap(({ axis }) => axis),
    words: joinedWords(headers.map(({ word }) => word)),
  };
  return (box) => drawn(picture, box);
}

/** Each header as it lies across the tube, A's before B's; none of an end that is turned by a mark, nor of one that is sawn square or on a square plate, which lies alike all round. */
export function linesAcross(solution: TubeSolution, words: Language): HeaderAcross[] {
  const { ends, section } = solution;
  return (['A', 'B'] as const).flatMap((end) => {
    const own = ends[end];
    if (own?.kind !== 'coped' || own.fitUp?.clock || sawnAt(solution, end) !== undefined) return [];
    const { parts } = own.end;
    return parts.flatMap((part, i) => {
      const letter = words.picture.letter(end, parts.length > 1 ? i + 1 : undefined);
      return headerAcross(part, section.reach, letter, end, sideOfPart(own, i));
    });
  });
}

/** Looking from A to B with the spine up, stations grow to the right: they are right-handed about that way. */
function onPage(x: Mm, y: Mm): Point {
  return point(y, x);
}

/** Headers that lie on one line have their letters in one word. */
function joinedWords(words: readonly PictureWord[]): PictureWord[] {
  const apart: PictureWord[] = [];
  for (const word of words) {
    const same = apart.findIndex(({ at }) => distance(at, word.at) < ON_ONE_LINE);
    const other = apart[same];
    if (other) apart[same] = { ...other, text: joined([other.text, word.text], ', ') };
    else apart.push(word);
  }
  return apart;
}

/** Nearer than this, mm in the tube's size, two headers' lines are one. */
const ON_ONE_LINE: Mm = 0.5;

interface HeaderAcross {
  readonly end: EndName;
  readonly line: readonly [Point, Point];
  readonly axis: readonly Segment[];
  readonly word: PictureWord;
}

/**
 * A header's way across the tube, through the middle, so that it meets the rim at the station of the heel, where the leaf has it: how far
 * it lies beside is another picture's. Of a plate and a mitre, which have no axis, the heel's side alone, where they lean; of one of several
 * the side on which the cut meets it, and that alone where it ends at the joint.
 */
function headerAcross(part: Part, reach: Mm, text: Said, end: EndName, met?: HeaderSide): HeaderAcross[] {
  const { onto, angle, clock, stops } = part;
  const flat = headerFactsOf(onto).shape().kind === 'plane';
  if (flat && angle.rad === Math.PI / 2) return [];
  const side = met ?? (angle.rad <= Math.PI / 2 ? 1 : -1);
  const [c, s] = [exactCosine(clock.rad), Math.sin(clock.rad)];
  const at = (out: Mm): Point => {
    const along = out * side;
    return onPage(along * c, along * s);
  };
  const tip = at(OUT.heel * reach);
  return [
    {
      end,
      line: [at(reach), tip],
      axis: flat || (met && stops) ? [] : [{ from: at(-OUT.toe * reach), to: at(reach) }],
      word: { text, fact: 'picture', at: tip, way: point(tip.x, tip.y) },
    },
  ];
}
